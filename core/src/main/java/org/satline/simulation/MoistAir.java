package org.satline.simulation;

import org.satline.quantity.Atmosphere;

/**
 * Moist air at standard pressure, per kilogram of dry air. Saturation pressure over water: WMO-No. 8, Guide to Instruments and Methods of
 * Observation, annex 4.B; humidity from the wet bulb and enthalpy: ASHRAE Handbook Fundamentals, Psychrometrics. Temperatures in degC,
 * enthalpy in J/kg, humidity in kg/kg.
 *
 * @param heatCapacity of moist air as it passes a coil, J/(kg K)
 * @param density of dry air, kg/m3
 * @param dryHeatCapacity of dry air, J/(kg K)
 * @param vapourHeatCapacity of water vapour, J/(kg K)
 * @param waterHeatCapacity of water, J/(kg K)
 * @param latentHeat of water at 0 degC, J/kg
 * @param molarMassRatio water over dry air
 * @param vapourPressure of water at 0 degC, Pa
 * @param slope dimensionless constant of the vapour pressure's exponent
 * @param pole temperature in its denominator, K
 */
record MoistAir(
        double heatCapacity,
        double density,
        double dryHeatCapacity,
        double vapourHeatCapacity,
        double waterHeatCapacity,
        double latentHeat,
        double molarMassRatio,
        double vapourPressure,
        double slope,
        double pole) {
    private static final double PRESSURE_PA = Atmosphere.standard().pressure().pascals();

    double saturatedHumidity(double celsius) {
        double pa = vapourPressure * Math.exp(slope * celsius / (pole + celsius));
        return molarMassRatio * pa / (PRESSURE_PA - pa);
    }

    double humidity(double dryBulb, double wetBulb) {
        double saturated = saturatedHumidity(wetBulb);
        double w = ((latentHeat - (waterHeatCapacity - vapourHeatCapacity) * wetBulb) * saturated
                        - dryHeatCapacity * (dryBulb - wetBulb))
                / (latentHeat + vapourHeatCapacity * dryBulb - waterHeatCapacity * wetBulb);
        return Math.max(0, w);
    }

    double enthalpy(double celsius, double humidity) {
        return dryHeatCapacity * celsius + humidity * (latentHeat + vapourHeatCapacity * celsius);
    }

    double saturatedEnthalpy(double celsius) {
        return enthalpy(celsius, saturatedHumidity(celsius));
    }

    /** Temperature at which saturated air has an enthalpy, degC. */
    double saturationTemperature(double enthalpy) {
        double low = -60;
        double high = 60;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (saturatedEnthalpy(middle) < enthalpy) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
