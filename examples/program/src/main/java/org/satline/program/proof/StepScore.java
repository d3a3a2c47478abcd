package org.satline.program.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.satline.charge.margin.MeteringDevice;
import org.satline.simulation.NoSteadyStateException;
import org.satline.step.StepReading;

/**
 * One way to bring many charges to target: steps, overshoots that force a change of cylinder, and the error that is
 * left.
 */
final class StepScore {
    private static final int MOST_STEPS = 20;

    private final Way way;
    private final List<Double> steps = new ArrayList<>();
    private final List<Double> errors = new ArrayList<>();
    /** Overshoots and visits by metering device. */
    private final Map<MeteringDevice, int[]> overshoots = new EnumMap<>(MeteringDevice.class);

    private int left;
    private int outside;

    StepScore(Way way) {
        this.way = way;
    }

    /** Charges a plant in its first state; the supplier makes the same one, with the same noise, for every way. */
    void add(Supplier<Plant> made) {
        Plant plant = made.get();
        List<StepReading> readings = new ArrayList<>();
        int count = 0;
        boolean overshot = false;
        try {
            readings.add(plant.read());
            while (count < MOST_STEPS) {
                double step = way.next(plant, readings);
                if (step == 0) {
                    break;
                }
                plant.move(step);
                count++;
                overshot |= Math.signum(step) * plant.deviationK() > plant.toleranceK();
                readings.add(plant.read());
            }
            outside += Math.abs(plant.deviationK()) > plant.toleranceK() ? 1 : 0;
        } catch (NoSteadyStateException | IllegalArgumentException e) {
            left++; // moved so far that the model has no steady state: counted as an overshoot
            overshot = true;
            outside++;
        }
        steps.add((double) count);
        errors.add(Math.abs(plant.chargeError()));
        int[] counts = overshoots.computeIfAbsent(plant.metering(), device -> new int[2]);
        counts[0] += overshot ? 1 : 0;
        counts[1]++;
    }

    int visits() {
        return steps.size();
    }

    double medianSteps() {
        return quantile(steps, 0.5);
    }

    private double oneStepShare() {
        return (double) steps.stream().filter(each -> each <= 1).count() / Math.max(1, steps.size());
    }

    double overshootShare() {
        return (double) overshoots.values().stream().mapToInt(each -> each[0]).sum() / Math.max(1, steps.size());
    }

    private double overshootShare(MeteringDevice device) {
        int[] counts = overshoots.getOrDefault(device, new int[2]);
        return (double) counts[0] / Math.max(1, counts[1]);
    }

    double error95() {
        return quantile(errors, 0.95);
    }

    String text() {
        StringBuilder text = new StringBuilder();
        VerdictScore.line(
                text,
                "%-42s%8d%8.0f%8.0f%8.1f %%%10.1f %%%8.1f %%%8.1f %%%8.1f %%%12.1f %%%8.1f %%%s",
                way.label(),
                steps.size(),
                medianSteps(),
                quantile(steps, 0.95),
                100 * oneStepShare(),
                100 * overshootShare(),
                100 * overshootShare(MeteringDevice.EXPANSION_VALVE),
                100 * overshootShare(MeteringDevice.FIXED_ORIFICE),
                100.0 * outside / Math.max(1, steps.size()),
                100 * quantile(errors, 0.5),
                100 * error95(),
                left == 0 ? "" : "  (" + left + " beyond the model)");
        return text.toString();
    }

    static String head() {
        StringBuilder text = new StringBuilder();
        VerdictScore.line(
                text,
                "%-42s%8s%8s%8s%10s%12s%10s%10s%10s%14s%10s",
                "way to charge",
                "visits",
                "median",
                "95 %",
                "one step",
                "overshoot",
                "valve",
                "orifice",
                "outside",
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
