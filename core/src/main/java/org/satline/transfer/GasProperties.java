package org.satline.transfer;

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
     * Reads a saturation curve. Outside the curve the end of its range answers (vapour below it: in proportion to the pressure), so that
     * vacuum and 65 degC have an answer for every gas; above the critical point the liquid density is then that at the end of the curve.
     *
     * @param curve the curve
     * @return its properties
     */
    static GasProperties of(SaturationCurve curve) {
        double coldest = curve.minTemperatureK();
        double warmest = curve.maxTemperatureK();
        double lowest = curve.dewPressureRange().low();
        double highest = curve.dewPressurePa(warmest);
        return new GasProperties() {
            @Override
            public double vapourDensity(double pressurePa) {
                double within = Math.max(lowest, Math.min(pressurePa, highest));
                return curve.dewVapourDensity(curve.dewTemperatureK(within)) * pressurePa / within;
            }

            @Override
            public double liquidDensity(double temperatureK) {
                return curve.bubbleLiquidDensity(within(temperatureK));
            }

            @Override
            public double bubblePressurePa(double temperatureK) {
                return curve.bubblePressurePa(within(temperatureK));
            }

            private double within(double temperatureK) {
                return Math.max(coldest, Math.min(temperatureK, warmest));
            }
        };
    }
}
