package org.satline.program.proof;

import java.util.EnumMap;
import java.util.Map;
import org.satline.charge.margin.MeteringDevice;
import org.satline.simulation.NoSteadyStateException;

/**
 * Charge errors estimated with typical constants from exact readings, against what the right charge shows in the same
 * weather, held against
 * the true ones. A published evaluation of the estimate reports it within 10 % of the charge on several unitary
 * machines; that is an
 * outside measure of the simulated systems too.
 */
final class EstimateScore {
    private static final double PUBLISHED = 0.10;

    private final Map<MeteringDevice, int[]> withinOfAll = new EnumMap<>(MeteringDevice.class);

    void add(Plant plant) {
        int[] counts = withinOfAll.computeIfAbsent(plant.metering(), device -> new int[2]);
        try {
            counts[0] += Math.abs(plant.estimatedError() - plant.chargeError()) <= PUBLISHED ? 1 : 0;
            counts[1]++;
        } catch (NoSteadyStateException e) {
            // the right charge has no steady state in this weather: nothing to hold the estimate against
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        withinOfAll.forEach((device, counts) -> VerdictScore.line(
                text,
                "%-42s%8d visits, within 10 %% of the charge on %.0f %%",
                device.label(),
                counts[1],
                100.0 * counts[0] / Math.max(1, counts[1])));
        return text.toString();
    }
}
