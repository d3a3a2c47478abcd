package org.satline.transfer.hookup;

import org.satline.quantity.Parts;
import org.satline.saturation.SaturationCurve;

/** The three saturation properties that a hook-up needs. Implementations are stateless or immutable, and thread-safe. */
public interface GasProperties {
    /**
     * Returns the density of saturated vapour. It must rise with the pressure.
     *
     * @param pressurePa absolute pressure, Pa, above zero
     * @return density, kg/m3
     */
    double vapourDensity(double pressurePa);

    /**
     * Returns the density of saturated liquid.
     *
     * @param temperatureK temperature, K
     * @return density, kg/m3
     */
    double liquidDensity(double temperatureK);

    /**
     * Returns the bubble-point pressure.
     *
     * @param temperatureK temperature, K
     * @return absolute pressure, Pa
     */
    double bubblePressurePa(double temperatureK);

    /**
     * Reads a saturation curve into a table of even steps. Outside the curve the end of its range answers (vapour: in proportion to the
     * pressure), so that vacuum and 65 degC have an answer for every gas; above the critical point the liquid density is that at the end of
     * the curve. Make it once for a gas: it reads the curve some hundred times.
     *
     * @param curve the curve
     * @return its properties
     */
    static GasProperties of(SaturationCurve curve) {
        Parts.required("curve", curve);
        return new TabulatedGas(curve);
    }
}
