package org.satline.charge.belief;

import org.satline.charge.margin.Margins;
import org.satline.measurement.Reading;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/**
 * What the pressure at rest says about foreign gas: how far its saturation temperature stands over the temperature of
 * the system.
 *
 * @param excessK saturation temperature less temperature, K; 0 between dew and bubble point
 * @param budget errors of gauge and thermometer, K
 */
public record RestEvidence(double excessK, UncertaintyBudget budget) {
    /** {@inheritDoc} */
    public RestEvidence {
        Parts.numbers("excessK", excessK);
        Parts.required("budget", budget);
    }

    /**
     * What a pressure at rest says.
     *
     * @param curve saturation curve of the refrigerant of the plate
     * @param pressure absolute pressure, the same in the whole system
     * @param temperature temperature of the whole system
     * @return the excess
     * @throws org.satline.quantity.OutOfValidityException if the pressure is outside the saturation curve
     */
    public static RestEvidence of(SaturationCurve curve, Reading<Pressure> pressure, Reading<Temperature> temperature) {
        Parts.required("curve pressure temperature", curve, pressure, temperature);
        double pa = pressure.value().pascals();
        double kelvins = temperature.value().kelvins();
        double excess = pa > curve.bubblePressurePa(kelvins)
                ? curve.bubbleTemperatureK(pa) - kelvins
                : Math.min(0, curve.dewTemperatureK(pa) - kelvins);
        return new RestEvidence(
                excess, pressure.budget().scaled(Margins.bubbleSlope(curve, pa)).minus(temperature.budget()));
    }
}
