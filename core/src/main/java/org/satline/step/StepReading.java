package org.satline.step;

import java.util.Locale;
import org.satline.charge.margin.Criterion;
import org.satline.quantity.Parts;

/**
 * A settled reading between two steps. Immutable, thread-safe.
 *
 * @param netMassKg net mass moved since the first reading, by the scale, kg; adding is positive
 * @param deviationK deviation towards more charge: subcooling less target, or target less superheat, K
 * @param repeatabilityK standard deviation with which the same state would read again, K; above 0
 * @param signal false where the quantity stands at zero and so no longer follows the charge
 */
public record StepReading(double netMassKg, double deviationK, double repeatabilityK, boolean signal) {
    /** {@inheritDoc} */
    public StepReading {
        if (!(Double.isFinite(netMassKg)
                && Double.isFinite(deviationK)
                && repeatabilityK > 0
                && repeatabilityK < 1e3)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "reading of deviation %s K +/- %s K at %s kg is not usable; give finite numbers and a repeatability above 0 K",
                    deviationK,
                    repeatabilityK,
                    netMassKg));
        }
    }

    /**
     * Makes a reading from a measured superheat or subcooling.
     *
     * @param netMassKg net mass moved since the first reading, kg; adding is positive
     * @param criterion what is judged
     * @param measuredK superheat or subcooling, K
     * @param targetK its target, K
     * @param repeatabilityK standard deviation with which the same state would read again, K
     * @return the reading; without signal where the measured quantity cannot be told from zero
     */
    public static StepReading of(
            double netMassKg, Criterion criterion, double measuredK, double targetK, double repeatabilityK) {
        Parts.required("criterion", criterion);
        return new StepReading(
                netMassKg,
                criterion.directionWithCharge() * (measuredK - targetK),
                repeatabilityK,
                measuredK > Math.max(0.5, 2 * repeatabilityK));
    }
}
