package org.satline.charge;

import java.util.Optional;
import org.satline.charge.margin.Margins;
import org.satline.measurement.UncertaintyBudget;
import org.satline.saturation.SaturationCurve;

/**
 * What the pressure at rest says about foreign gas: how far its saturation temperature stands over the temperature of the system.
 *
 * @param excessK saturation temperature less temperature, K; 0 between dew and bubble point
 * @param budget errors of gauge and thermometer, K
 */
record RestEvidence(double excessK, UncertaintyBudget budget) {
    static Optional<RestEvidence> of(SaturationCurve curve, OperatingConditions conditions) {
        return conditions.standing().map(standing -> {
            double pa = standing.pressure().value().pascals();
            double kelvins = standing.temperature().value().kelvins();
            double excess = pa > curve.bubblePressurePa(kelvins)
                    ? curve.bubbleTemperatureK(pa) - kelvins
                    : Math.min(0, curve.dewTemperatureK(pa) - kelvins);
            UncertaintyBudget budget = standing.pressure()
                    .budget()
                    .scaled(Margins.bubbleSlope(curve, pa))
                    .minus(standing.temperature().budget());
            return new RestEvidence(excess, budget);
        });
    }
}
