package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.quantity.Mass;

/**
 * Advises how much refrigerant to move next, from the answers to the steps so far. Immutable, thread-safe.
 *
 * <p>Before the first step the response is a prior next to the typical constants of {@link ChargeEstimate}; each settled reading sharpens it
 * ({@link LearnedResponse}). The step is the largest one, not meant to go beyond the target, whose probability of carrying the next reading past
 * the far edge of the band stays within the accepted risk: passing it costs a cylinder swap, another purge and a start over.
 *
 * @param fullCharge full charge of the system, from the plate
 * @param criterion what is judged
 * @param toleranceK half-width of the band, K
 * @param priorKelvins response to the whole charge before any step, K
 * @param priorRelativeDoubt relative standard deviation of that response
 */
public record StepAdvisor(
        Mass fullCharge, Criterion criterion, double toleranceK, double priorKelvins, double priorRelativeDoubt) {
    /** Subcooling behind an expansion valve, K for the whole charge, and the relative doubt of it. */
    private static final double TYPICAL_SUBCOOLING = 40;

    private static final double DOUBT_OF_SUBCOOLING = 0.2;
    /** Superheat at a fixed orifice, K for the whole charge, and the relative doubt of it. */
    private static final double TYPICAL_SUPERHEAT = 50;

    private static final double DOUBT_OF_SUPERHEAT = 0.4;
    private static final double DOUBT_OF_FITTED = 0.15;
    /** Subcooling levels off: below its target it answers by this share more to charge, above it by as much less. From simulated systems. */
    private static final double LEVELLING = 0.1;
    /** A response below this share of the expected one, beyond doubt, is none. */
    private static final double NO_RESPONSE = 0.15;
    /** Without any signal after this share of the charge moved, the charge is not what is wrong. */
    private static final double MOST_WITHOUT_SIGNAL = 0.5;

    private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);

    /**
     * Checks the numbers.
     *
     * @param fullCharge full charge of the system, from the plate
     * @param criterion what is judged
     * @param toleranceK half-width of the band, K
     * @param priorKelvins response to the whole charge before any step, K
     * @param priorRelativeDoubt relative standard deviation of that response
     */
    public StepAdvisor {
        Objects.requireNonNull(criterion, "criterion");
        if (!(fullCharge.kilograms() > 0
                && toleranceK > 0
                && priorKelvins > 0
                && priorRelativeDoubt > 0
                && priorRelativeDoubt <= 1)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "full charge %s, tolerance %s K, response %s K and its relative doubt %s must be above 0, the doubt at most 1",
                    fullCharge,
                    toleranceK,
                    priorKelvins,
                    priorRelativeDoubt));
        }
    }

    /**
     * Returns an advisor for a unit that nothing was fitted on: 40 K for the whole charge with a relative doubt of 0.2 for subcooling behind an expansion
     * valve, 50 K and 0.4 for superheat at a fixed orifice. Chosen on simulated systems ({@code org.satline.simulation}) and a second, unlike plant; they show
     * no dependence on the rated subcooling. The typical constants of {@link ChargeEstimate} say, at a rated subcooling of 5.6 K, 31 K for subcooling, and
     * for superheat between 38 K, where subcooling takes half the effect, and 77 K, where it takes none.
     *
     * @param fullCharge full charge, from the plate
     * @param metering metering device
     * @param toleranceK half-width of the band, K
     * @return the advisor
     */
    public static StepAdvisor typical(Mass fullCharge, MeteringDevice metering, double toleranceK) {
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        return new StepAdvisor(
                fullCharge,
                metering.judgedBy(),
                toleranceK,
                valve ? TYPICAL_SUBCOOLING : TYPICAL_SUPERHEAT,
                valve ? DOUBT_OF_SUBCOOLING : DOUBT_OF_SUPERHEAT);
    }

    /**
     * Returns an advisor with constants fitted on the unit, with a relative doubt of 0.15. With an expansion valve superheat stays and subcooling takes the whole
     * effect k_ch. With a fixed orifice superheat moves by k_ch / (2 k_sh/k_sc) where subcooling takes half the effect, and by k_ch / (k_sh/k_sc) where
     * it takes none; the prior is the geometric mean of the two.
     *
     * @param fullCharge full charge, from the plate
     * @param metering metering device
     * @param toleranceK half-width of the band, K
     * @param constants constants of {@link ChargeEstimate}, fitted on this unit; their ratio above 0 for a fixed orifice
     * @return the advisor
     */
    public static StepAdvisor fitted(
            Mass fullCharge, MeteringDevice metering, double toleranceK, ChargeEstimate.Constants constants) {
        boolean valve = metering == MeteringDevice.EXPANSION_VALVE;
        if (!constants.fitted() || (!valve && constants.ratio() == 0)) {
            throw new IllegalArgumentException(
                    constants
                            + " are not usable here: give constants fitted on this unit, with a ratio above 0 for a fixed orifice, or take the typical advisor");
        }
        return new StepAdvisor(
                fullCharge,
                metering.judgedBy(),
                toleranceK,
                constants.kelvinsPerFraction() / (valve ? 1 : Math.sqrt(2) * constants.ratio()),
                DOUBT_OF_FITTED);
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
        double prior = prior(readings.get(0));
        LearnedResponse learned = learned(readings, prior);
        double onTarget = onTarget(learned);
        if (now.signal() && onTarget >= limits.confidence()) {
            return new StepAdvice.Done(onTarget, List.of(standing(now), percent("probability on target", onTarget)));
        }
        if (contradicts(readings, prior)) {
            return new StepAdvice.NotCharge(List.of(
                    criterion.label()
                            + " does not answer to the refrigerant moved as it would to an error of the charge",
                    "look for another fault before moving more"));
        }
        double step = learned.largestStepKg(toleranceK, now.repeatabilityK(), limits.risk());
        return bounded(readings, now, learned, step, onTarget, limits);
    }

    private double prior(StepReading first) {
        double levelling = criterion == Criterion.SUBCOOLING ? -Math.copySign(LEVELLING, first.deviationK()) : 0;
        return (1 + levelling) * priorKelvins / fullCharge.kilograms();
    }

    private LearnedResponse learned(List<StepReading> readings, double prior) {
        List<StepReading> teaching = informative(readings);
        StepReading first = teaching.get(0);
        int before = readings.size() - teaching.size() - 1;
        Optional<StepReading> atZero = Optional.of(readings.get(Math.max(before, 0)))
                .filter(each -> before >= 0 && first.signal() && !each.signal());
        ResponsePrior sharpened =
                new ResponsePrior(prior, priorRelativeDoubt * prior).given(first, atZero, fullCharge.kilograms());
        return LearnedResponse.from(teaching, sharpened.mean(), sharpened.deviation());
    }

    private StepAdvice bounded(
            List<StepReading> readings,
            StepReading now,
            LearnedResponse learned,
            double step,
            double onTarget,
            StepLimits limits) {
        List<String> reasons = new ArrayList<>();
        reasons.add(standing(now));
        reasons.add(
                String.format(
                        Locale.ROOT,
                        "one kilogram moves it by %.2f K (u = %.2f K), from %d reading(s)%s",
                        learned.kelvinsPerKilogram(),
                        Math.sqrt(learned.responseVariance()),
                        learned.informativeReadings(),
                        now.signal()
                                ? ""
                                : "; it stands at zero as far as can be told, so the true error may be larger: a coarse step first"));
        boolean adds = learned.deviationK() < 0;
        boolean turns = turns(readings, adds);
        boolean inside = Math.abs(now.deviationK()) <= toleranceK;
        if (inside && (turns || Math.abs(step) < limits.smallest().kilograms())) {
            reasons.add("within the band as read; a further step would cost more than it gains");
            return new StepAdvice.Done(onTarget, reasons);
        }
        double most = (adds ? limits.available() : limits.room()).kilograms();
        if (most < limits.smallest().kilograms()) {
            reasons.add(
                    adds
                            ? "the source cylinder is empty: bring another one"
                            : "no room is left: bring another cylinder");
            return new StepAdvice.Blocked(reasons);
        }
        double amount = Math.min(Math.max(Math.abs(step), limits.smallest().kilograms()), most);
        double passing = learned.passing(adds ? amount : -amount, toleranceK, now.repeatabilityK());
        if (passing > limits.risk() && Math.abs(step) < limits.smallest().kilograms()) {
            reasons.add(
                    "the smallest step that scale and hose resolve would be too coarse: read again, longer, or use a finer scale");
            return new StepAdvice.Blocked(reasons);
        }
        if (turns) {
            reasons.add("this turns the direction: another cylinder and another purge");
        }
        reasons.add(percent("probability of passing the far edge", passing));
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

    private boolean contradicts(List<StepReading> readings, double prior) {
        StepReading first = readings.get(0);
        StepReading now = readings.get(readings.size() - 1);
        double moved = Math.abs(now.netMassKg() - first.netMassKg());
        if (!first.signal() && !now.signal()) {
            return moved > MOST_WITHOUT_SIGNAL * fullCharge.kilograms();
        }
        List<StepReading> teaching = informative(readings);
        StepReading start = teaching.get(0);
        double mass = now.netMassKg() - start.netMassKg();
        if (mass == 0) {
            return false;
        }
        double slope = (now.deviationK() - start.deviationK()) / mass;
        double doubt = Math.hypot(now.repeatabilityK(), start.repeatabilityK()) / Math.abs(mass);
        return slope + 1.645 * doubt < NO_RESPONSE * prior;
    }

    private static boolean turns(List<StepReading> readings, boolean adds) {
        if (readings.size() < 2) {
            return false;
        }
        double last = readings.get(readings.size() - 1).netMassKg()
                - readings.get(readings.size() - 2).netMassKg();
        return last != 0 && (last > 0) != adds;
    }

    private double onTarget(LearnedResponse learned) {
        double spread = Math.sqrt(Math.max(learned.deviationVariance(), 1e-12));
        return STANDARD.cumulativeProbability((toleranceK - learned.deviationK()) / spread)
                - STANDARD.cumulativeProbability((-toleranceK - learned.deviationK()) / spread);
    }

    private String standing(StepReading now) {
        double actual = criterion.directionWithCharge() * now.deviationK();
        return String.format(
                Locale.ROOT, "%s is %+.1f K from its target, band +/- %.1f K", criterion.label(), actual, toleranceK);
    }

    private static String percent(String what, double probability) {
        return String.format(Locale.ROOT, "%s %.0f %%", what, 100 * probability);
    }
}
