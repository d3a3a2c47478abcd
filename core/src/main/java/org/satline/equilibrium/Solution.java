package org.satline.equilibrium;

import org.jspecify.annotations.Nullable;

/**
 * A state found: one phase, or two.
 *
 * @param temperature T, K
 * @param molarDensity of the whole, mol/m3
 * @param pressure p, Pa, where it is known better than the equation gives it back from the density of a cold liquid; else NaN
 * @param split the two phases; null where there is one
 */
record Solution(
        double temperature,
        double molarDensity,
        double pressure,
        @Nullable TwoPhaseNewton split) {
    static Solution of(TwoPhaseNewton split) {
        return new Solution(split.temperature(), split.density(), split.pressure(), split);
    }

    static Solution onePhase(double temperature, double molarDensity) {
        return new Solution(temperature, molarDensity, Double.NaN, null);
    }

    Solution at(double knownPressure) {
        return new Solution(temperature, molarDensity, knownPressure, split);
    }
}
