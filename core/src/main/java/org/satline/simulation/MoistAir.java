package org.satline.simulation;

import org.satline.quantity.Atmosphere;

/**
 * Moist air at standard pressure, per kilogram of dry air. Saturation pressure over water: WMO-No. 8, Guide to Instruments and Methods of
 * Observation, annex 4.B (constants from memory); humidity from the wet bulb and enthalpy: ASHRAE Handbook Fundamentals, Psychrometrics
 * (constants from memory). Temperatures in degC, enthalpy in J/kg, humidity in kg/kg.
 */
final class MoistAir {
    /** Heat capacity of moist air per kilogram of dry air, J/(kg K): 1006 plus some 10 g of vapour at 1860. */
    static final double HEAT_CAPACITY = 1024;

    static final double DENSITY = 1.2;

    private static final double PRESSURE_PA = Atmosphere.standard().pressure().pascals();
    private static final double MOLAR_MASS_RATIO = 0.621945;

    private MoistAir() {}

    static double saturatedHumidity(double celsius) {
        double pa = 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
        return MOLAR_MASS_RATIO * pa / (PRESSURE_PA - pa);
    }

    static double humidity(double dryBulb, double wetBulb) {
        double saturated = saturatedHumidity(wetBulb);
        double w = ((2501 - 2.326 * wetBulb) * saturated - 1.006 * (dryBulb - wetBulb))
                / (2501 + 1.86 * dryBulb - 4.186 * wetBulb);
        return Math.max(0, w);
    }

    static double enthalpy(double celsius, double humidity) {
        return 1006 * celsius + humidity * (2_501_000 + 1860 * celsius);
    }

    static double saturatedEnthalpy(double celsius) {
        return enthalpy(celsius, saturatedHumidity(celsius));
    }

    /** Temperature at which saturated air has an enthalpy, degC. */
    static double saturationTemperature(double enthalpy) {
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
