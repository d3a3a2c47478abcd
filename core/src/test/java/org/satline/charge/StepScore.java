package org.satline.charge;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.satline.quantity.Mass;

/** Scores ways of charging on {@link SaturatingPlant}: steps, overshoots that force a cylinder swap, final error. */
final class StepScore {
    static final int MOST_STEPS = 20;

    /** Next signed step, kg; 0 to stop. */
    interface Strategy {
        double next(SaturatingPlant plant, List<StepReading> readings);
    }

    record Score(
            int visits,
            double medianSteps,
            double p95Steps,
            double overshootShare,
            double medianError,
            double p95Error) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%d visits: steps median %.0f, 95 %% %.0f; overshoot %.1f %%; final error median %.1f %%, 95 %% %.1f %% of charge",
                    visits,
                    medianSteps,
                    p95Steps,
                    100 * overshootShare,
                    100 * medianError,
                    100 * p95Error);
        }
    }

    private StepScore() {}

    /** Visits that begin off target; with or without a signal at the start. */
    static Score run(long seed, int visits, boolean signal, Strategy strategy) {
        List<Double> steps = new ArrayList<>();
        List<Double> errors = new ArrayList<>();
        int overshoots = 0;
        for (long visit = 0; steps.size() < visits; visit++) {
            SaturatingPlant plant = new SaturatingPlant(new Random(seed * 1_000_003 + visit));
            if (Math.abs(plant.deviationK()) <= plant.toleranceK || plant.hasSignal() != signal) {
                continue;
            }
            List<StepReading> readings = new ArrayList<>(List.of(read(plant)));
            int count = 0;
            boolean overshot = false;
            while (count < MOST_STEPS) {
                double step = strategy.next(plant, readings);
                if (step == 0) {
                    break;
                }
                plant.move(step);
                count++;
                readings.add(read(plant));
                overshot |= Math.signum(step) * plant.deviationK() > plant.toleranceK;
            }
            steps.add((double) count);
            errors.add(Math.abs(plant.chargeErrorFraction));
            overshoots += overshot ? 1 : 0;
        }
        return new Score(
                visits,
                quantile(steps, 0.5),
                quantile(steps, 0.95),
                (double) overshoots / visits,
                quantile(errors, 0.5),
                quantile(errors, 0.95));
    }

    static double advised(SaturatingPlant plant, List<StepReading> readings) {
        StepAdvisor advisor = StepAdvisor.of(
                Mass.ofKilograms(plant.fullChargeKg),
                plant.metering,
                plant.toleranceK,
                ChargeEstimate.Constants.typical(plant.ratedSubcoolingK));
        StepLimits limits = new StepLimits(
                Mass.ofKilograms(50), Mass.ofKilograms(50), Mass.ofGrams(20), 0.05, 0.8, Duration.ofMinutes(15));
        if (!(advisor.next(readings, limits) instanceof StepAdvice.Move move)) {
            return 0;
        }
        return move.direction() == StepAdvice.Direction.ADD
                ? move.amount().kilograms()
                : -move.amount().kilograms();
    }

    /** Baseline: equal shots of 5 % of the charge until the reading is in the band. */
    static double equalShots(SaturatingPlant plant, List<StepReading> readings) {
        double deviation = readings.get(readings.size() - 1).deviationK();
        return Math.abs(deviation) <= plant.toleranceK ? 0 : -Math.signum(deviation) * 0.05 * plant.fullChargeKg;
    }

    /** Baseline: one correction by the typical constants. */
    static double oneCorrection(SaturatingPlant plant, List<StepReading> readings) {
        if (readings.size() > 1) {
            return 0;
        }
        double response =
                ChargeEstimate.Constants.typical(plant.ratedSubcoolingK).kelvinsPerFraction()
                        * (plant.metering == MeteringDevice.FIXED_ORIFICE ? 1.25 : 1);
        return -readings.get(0).deviationK() / response * plant.fullChargeKg;
    }

    private static StepReading read(SaturatingPlant plant) {
        return StepReading.of(
                plant.movedKg, plant.metering.judgedBy(), plant.readK(), plant.targetK, plant.repeatabilityK);
    }

    private static double quantile(List<Double> values, double share) {
        double[] sorted =
                values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return Arrays.copyOf(sorted, sorted.length)[
                (int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }
}
