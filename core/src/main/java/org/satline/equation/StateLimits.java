package org.satline.equation;

import org.satline.quantity.OutOfValidityException;

/**
 * Limits beyond which no state of any substance lies that could be meant: our choice. What lies outside is NaN, a sign lost, or a unit
 * mistaken.
 *
 * @param what name of the quantity
 * @param unit its unit
 * @param low lowest value
 * @param high highest value
 */
record StateLimits(String what, String unit, double low, double high) {
    static final StateLimits TEMPERATURE = new StateLimits("temperature", "K", 1e-3, 1e5);
    static final StateLimits DENSITY = new StateLimits("molar density", "mol/m3", 1e-100, 1e7);

    boolean contains(double value) {
        return value >= low && value <= high;
    }

    static void check(double temperature, double density) {
        if (!HelmholtzEquation.isState(temperature, density)) {
            throw (TEMPERATURE.contains(temperature) ? DENSITY : TEMPERATURE)
                    .outside(TEMPERATURE.contains(temperature) ? density : temperature);
        }
    }

    private OutOfValidityException outside(double value) {
        return OutOfValidityException.of(
                what, value, unit, low, high, "every equation of state", "check the value and its unit");
    }
}
