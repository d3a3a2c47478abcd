package org.satline.examples.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.ChargeEstimate.Constants;
import org.satline.charge.Criterion;
import org.satline.charge.Margins;
import org.satline.charge.StepAdvice;
import org.satline.charge.StepAdvisor;
import org.satline.charge.StepLimits;
import org.satline.charge.StepReading;
import org.satline.quantity.Mass;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;
import org.satline.simulation.SteadyState;

/** Ways to bring the same charges to target: steps, overshoots that force a change of cylinder, and the error that is left. */
final class StepScore {
    private static final int MOST_STEPS = 20;
    private static final double SMALLEST_KG = 0.02;

    /** Next signed step, kg; 0 to stop. */
    interface Way {
        double next(Visit visit, double toleranceK, List<StepReading> readings);
    }

    private final String name;
    private final Way way;
    private final List<Double> steps = new ArrayList<>();
    private final List<Double> errors = new ArrayList<>();
    private int overshoots;
    private int left;

    StepScore(String name, Way way) {
        this.name = name;
        this.way = way;
    }

    /** Plays a visit; the noise of the readings is the same for every way. */
    void add(Visit visit, long noiseSeed) {
        Random noise = new Random(noiseSeed);
        double repeatability = 0.1 + 0.2 * noise.nextDouble();
        double rated = visit.system().ratedCharge().kilograms();
        double tolerance = tolerance(visit);
        double error = visit.chargeError();
        double moved = 0;
        List<StepReading> readings = new ArrayList<>();
        int count = 0;
        boolean overshot = false;
        try {
            readings.add(read(visit, error, moved, repeatability, noise));
            while (count < MOST_STEPS) {
                double step = way.next(visit, tolerance, readings);
                if (step == 0) {
                    break;
                }
                moved += step;
                error += step / rated;
                count++;
                overshot |= Math.signum(step) * deviation(visit, error) > tolerance;
                readings.add(read(visit, error, moved, repeatability, noise));
            }
        } catch (NoSteadyStateException | IllegalArgumentException e) {
            left++; // moved so far that the model has no steady state: counted as an overshoot
            overshot = true;
        }
        steps.add((double) count);
        errors.add(Math.abs(error));
        overshoots += overshot ? 1 : 0;
    }

    static double tolerance(Visit visit) {
        return (visit.metering().judgedBy() == Criterion.SUPERHEAT ? 5 : 3) / 1.8;
    }

    /** Towards more charge, K, exact. */
    static double deviation(Visit visit, double chargeError) {
        return visit.metering().judgedBy().directionWithCharge() * (judged(visit, chargeError) - visit.target());
    }

    static double judged(Visit visit, double chargeError) {
        SteadyState state =
                visit.system().steadyState(VisitMaker.charge(visit.system(), chargeError), visit.air(), visit.fault());
        return visit.metering().judgedBy() == Criterion.SUPERHEAT
                ? state.superheat().kelvins()
                : state.subcooling().kelvins();
    }

    private static StepReading read(Visit visit, double error, double moved, double repeatability, Random noise) {
        double shown = judged(visit, error) + repeatability * noise.nextGaussian();
        return StepReading.of(moved, visit.metering().judgedBy(), shown, visit.target(), repeatability);
    }

    static double advised(Visit visit, double toleranceK, List<StepReading> readings) {
        StepAdvisor advisor = StepAdvisor.of(
                visit.system().ratedCharge(), visit.metering(), toleranceK, Constants.typical(ratedSubcooling(visit)));
        Mass ample = Mass.ofKilograms(50);
        StepAdvice advice = advisor.next(readings, StepLimits.usual(ample, ample, Mass.ofKilograms(SMALLEST_KG)));
        if (!(advice instanceof StepAdvice.Move move)) {
            return 0;
        }
        return move.direction() == StepAdvice.Direction.ADD
                ? move.amount().kilograms()
                : -move.amount().kilograms();
    }

    static double equalShots(Visit visit, double toleranceK, List<StepReading> readings) {
        double deviation = readings.get(readings.size() - 1).deviationK();
        return Math.abs(deviation) <= toleranceK
                ? 0
                : -Math.signum(deviation) * 0.05 * visit.system().ratedCharge().kilograms();
    }

    /** The charge estimate from exact superheat and subcooling, against what the right charge shows in the same weather. */
    static double oneCorrection(Visit visit, double toleranceK, List<StepReading> readings) {
        if (readings.size() > 1) {
            return 0;
        }
        SteadyState now = visit.system()
                .steadyState(VisitMaker.charge(visit.system(), visit.chargeError()), visit.air(), visit.fault());
        SteadyState right = visit.system().steadyState(visit.system().ratedCharge(), visit.air(), ImposedFault.none());
        Margins margins =
                Margins.of(SaturationCurves.of(visit.system().design().refrigerant()), now.exactReadings(visit.air()));
        ChargeEstimate estimate = ChargeEstimate.of(
                margins.superheat().orElseThrow(),
                right.superheat().kelvins(),
                margins.subcooling().orElseThrow(),
                right.subcooling().kelvins(),
                Constants.typical(ratedSubcooling(visit)));
        return -estimate.fraction() * visit.system().ratedCharge().kilograms();
    }

    private static double ratedSubcooling(Visit visit) {
        return visit.system().design().subcooling().kelvins();
    }

    String text() {
        StringBuilder text = new StringBuilder();
        VerdictScore.line(
                text,
                "%-42s%8d%8.0f%8.0f%12.1f %%%12.1f %%%10.1f %%%s",
                name,
                steps.size(),
                quantile(steps, 0.5),
                quantile(steps, 0.95),
                100.0 * overshoots / Math.max(1, steps.size()),
                100 * quantile(errors, 0.5),
                100 * quantile(errors, 0.95),
                left == 0 ? "" : "  (" + left + " beyond the model)");
        return text.toString();
    }

    static String head() {
        StringBuilder text = new StringBuilder();
        VerdictScore.line(
                text,
                "%-42s%8s%8s%8s%14s%14s%12s",
                "way to charge",
                "visits",
                "median",
                "95 %",
                "overshoot",
                "error median",
                "95 %");
        return text.toString();
    }

    private static double quantile(List<Double> values, double share) {
        double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }
}
