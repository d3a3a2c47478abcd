package org.satline.charge;

import java.util.Optional;
import org.satline.charge.margin.Margins;
import org.satline.saturation.SaturationCurve;

/**
 * What the pressure at rest says about foreign gas: how far its saturation temperature stands over the temperature of the system.
 *
 * @param excessK saturation temperature less temperature, K; 0 between dew and bubble point
 * @param standardUncertaintyK of gauge and thermometer together, K
 */
record RestEvidence(double excessK, double standardUncertaintyK) {
    /** Excess that counts as typical of foreign gas, K; our choice. */
    private static final double TYPICAL_K = 2;

    static Optional<RestEvidence> of(SaturationCurve curve, OperatingConditions conditions) {
        return conditions.standing().map(standing -> {
            double pa = standing.pressure().value().pascals();
            double kelvins = standing.temperature().value().kelvins();
            double excess = pa > curve.bubblePressurePa(kelvins)
                    ? curve.bubbleTemperatureK(pa) - kelvins
                    : Math.min(0, curve.dewTemperatureK(pa) - kelvins);
            double u = Math.hypot(
                    standing.pressure().budget().combined() * Margins.bubbleSlope(curve, pa),
                    standing.temperature().standardUncertainty());
            return new RestEvidence(excess, u);
        });
    }

    /** How much likelier the reading is with foreign gas than without; 1 where the instruments are stated as exact. */
    double ratio() {
        double u = standardUncertaintyK;
        if (!(u > 0)) {
            return 1;
        }
        double without = Residual.normal(excessK, u);
        double with = Residual.oneSided(excessK, TYPICAL_K, u);
        return without > 0 ? Math.min(1e6, with / without) : 1e6;
    }
}
