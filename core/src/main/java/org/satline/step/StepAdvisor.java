package org.satline.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * Advises how much refrigerant to move next, from the answers to the steps so far. Immutable, thread-safe.
 *
 * <p>Before the first step the response is a typical one, or what was fitted on the unit; each settled reading sharpens it. The step is the
 * largest one, meant to end a little short of the target, whose probability of carrying the next reading past the far edge of the band
 * stays within the accepted risk: passing it costs a cylinder swap, another purge and a start over. No step is larger than half of the full
 * charge. The probability is that of the response as believed; what it came to on simulated systems stands in the guide of the core module.
 */
public final class StepAdvisor {
    /** No single step is larger than this share of the full charge; our choice, no source. */
    private static final double LARGEST_SHARE = 0.5;

    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

    private final Mass fullCharge;
    private final Criterion criterion;
    private final double toleranceK;
    private final ExpectedResponse expected;

    private StepAdvisor(Mass fullCharge, Criterion criterion, double toleranceK, ExpectedResponse expected) {
        Parts.required("fullCharge", fullCharge);
        if (!(fullCharge.kilograms() > 0 && toleranceK > 0 && toleranceK < 1e3)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "full charge %s and tolerance %s K must be above 0, the tolerance below 1000 K",
                    fullCharge,
                    toleranceK));
        }
        this.fullCharge = fullCharge;
        this.criterion = criterion;
        this.toleranceK = toleranceK;
        this.expected = expected;
    }

    /**
     * Returns an advisor for a unit that nothing was fitted on: it expects 33.5 K for the whole charge behind an expansion valve and 39 K
     * at a fixed orifice, with wide doubt; our choice, no source.
     *
     * @param fullCharge full charge, from the plate
     * @param metering metering device
     * @param toleranceK half-width of the band, K
     * @return the advisor
     */
    public static StepAdvisor typical(Mass fullCharge, MeteringDevice metering, double toleranceK) {
        Parts.required("metering", metering);
        return new StepAdvisor(fullCharge, metering.judgedBy(), toleranceK, ExpectedResponse.typical(metering));
    }

    /**
     * Returns an advisor for a unit whose constants were fitted, which it believes within 15 %.
     *
     * @param fullCharge full charge, from the plate
     * @param metering metering device
     * @param toleranceK half-width of the band, K
     * @param constants fitted on this unit; their ratio above 0 for a fixed orifice
     * @return the advisor
     * @throws IllegalArgumentException if the constants were not fitted, or the ratio is 0 for a fixed orifice
     */
    public static StepAdvisor fitted(
            Mass fullCharge, MeteringDevice metering, double toleranceK, ChargeEstimate.Constants constants) {
        Parts.required("metering constants", metering, constants);
        return new StepAdvisor(
                fullCharge, metering.judgedBy(), toleranceK, ExpectedResponse.fitted(metering, constants));
    }

    /**
     * Advises.
     *
     * @param readings settled readings in order, the first before any step; at least one
     * @param limits what bounds a step
     * @return what to do next
     */
    public StepAdvice next(List<StepReading> readings, StepLimits limits) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("advice needs the reading before the first step");
        }
        StepReading now = readings.get(readings.size() - 1);
        double prior = expected.kelvins(readings.get(0).deviationK() / toleranceK) / fullCharge.kilograms();
        LearnedResponse learned = learned(readings, prior);
        double onTarget = onTarget(learned);
        if (now.signal() && inside(now) && onTarget >= limits.confidence()) {
            return new StepAdvice.Done(
                    onTarget,
                    List.of(
                            StepFindings.standing(criterion, now, toleranceK),
                            StepFindings.chance(StepCode.CHANCE_ON_TARGET, onTarget)));
        }
        StepAnswers answers = new StepAnswers(readings, informative(readings), fullCharge);
        if (answers.none(prior) || answers.tooMuchMoved()) {
            return new StepAdvice.NotCharge(List.of(StepFindings.of(Severity.FORBIDS, StepCode.NO_ANSWER)));
        }
        if (answers.contradictory(prior, learned)) {
            return new StepAdvice.Blocked(List.of(
                    StepFindings.of(Severity.FORBIDS, StepCode.READINGS_APART),
                    StepFindings.standing(criterion, now, toleranceK)));
        }
        double step = learned.largestStepKg(toleranceK, now.repeatabilityK(), limits.risk());
        return bounded(readings, now, learned, step, onTarget, limits);
    }

    private LearnedResponse learned(List<StepReading> readings, double prior) {
        List<StepReading> teaching = informative(readings);
        StepReading first = teaching.get(0);
        int before = readings.size() - teaching.size() - 1;
        Optional<StepReading> atZero = Optional.of(readings.get(Math.max(before, 0)))
                .filter(each -> before >= 0 && first.signal() && !each.signal());
        ResponsePrior sharpened =
                new ResponsePrior(prior, expected.relativeDoubt() * prior).given(first, atZero, fullCharge.kilograms());
        return LearnedResponse.from(teaching, sharpened.mean(), sharpened.deviation());
    }

    private StepAdvice bounded(
            List<StepReading> readings,
            StepReading now,
            LearnedResponse learned,
            double step,
            double onTarget,
            StepLimits limits) {
        List<Finding> reasons = new ArrayList<>();
        reasons.add(StepFindings.standing(criterion, now, toleranceK));
        reasons.add(StepFindings.of(
                Severity.CAUTION,
                StepCode.RESPONSE,
                Figure.of("response", learned.kelvinsPerKilogram(), "K/kg"),
                Figure.of("u", Math.sqrt(learned.responseVariance()), "K/kg"),
                Figure.of("readings", learned.informativeReadings(), "1")));
        if (!now.signal()) {
            reasons.add(StepFindings.of(Severity.CAUTION, StepCode.NO_SIGNAL));
        }
        boolean adds = learned.deviationK() < 0;
        boolean turns = turns(readings, adds);
        if (inside(now) && (turns || Math.abs(step) < limits.smallest().kilograms())) {
            reasons.add(StepFindings.of(Severity.CAUTION, StepCode.WITHIN_BAND));
            return new StepAdvice.Done(onTarget, reasons);
        }
        double most = (adds ? limits.available() : limits.room()).kilograms();
        if (most < limits.smallest().kilograms()) {
            reasons.add(StepFindings.of(Severity.FORBIDS, adds ? StepCode.SOURCE_SPENT : StepCode.NO_ROOM_FOR_STEP));
            return new StepAdvice.Blocked(reasons);
        }
        double wanted = Math.min(Math.abs(step), LARGEST_SHARE * fullCharge.kilograms());
        double amount = Math.min(Math.max(wanted, limits.smallest().kilograms()), most);
        double passing = learned.passing(adds ? amount : -amount, toleranceK, now.repeatabilityK());
        if (passing > limits.risk() && Math.abs(step) < limits.smallest().kilograms()) {
            reasons.add(StepFindings.of(Severity.FORBIDS, StepCode.TOO_COARSE));
            return new StepAdvice.Blocked(reasons);
        }
        if (turns) {
            reasons.add(StepFindings.of(Severity.CAUTION, StepCode.TURNS_ROUND));
        }
        reasons.add(StepFindings.chance(StepCode.CHANCE_OF_PASSING, passing));
        return new StepAdvice.Move(
                adds ? StepAdvice.Direction.ADD : StepAdvice.Direction.REMOVE,
                Mass.ofKilograms(amount),
                passing,
                limits.settlingTime(),
                turns,
                reasons);
    }

    /** Readings that teach the response: from the last one without signal only the present state can be taken. */
    private static List<StepReading> informative(List<StepReading> readings) {
        int last = readings.size() - 1;
        int from = last;
        while (from > 0 && readings.get(from).signal() && readings.get(from - 1).signal()) {
            from--;
        }
        return readings.subList(from, last + 1);
    }

    private static boolean turns(List<StepReading> readings, boolean adds) {
        if (readings.size() < 2) {
            return false;
        }
        double last = readings.get(readings.size() - 1).netMassKg()
                - readings.get(readings.size() - 2).netMassKg();
        return last != 0 && (last > 0) != adds;
    }

    private boolean inside(StepReading now) {
        return Math.abs(now.deviationK()) <= toleranceK;
    }

    private double onTarget(LearnedResponse learned) {
        double spread = Math.sqrt(Math.max(learned.deviationVariance(), 1e-12));
        return STANDARD.cumulativeProbability((toleranceK - learned.deviationK()) / spread)
                - STANDARD.cumulativeProbability((-toleranceK - learned.deviationK()) / spread);
    }
}
