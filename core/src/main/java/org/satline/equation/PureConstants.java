package org.satline.equation;

import org.satline.quantity.Parts;

/**
 * Constants printed with the equation of a pure substance.
 *
 * @param designation ISO 817 designation, such as {@code R-134a}
 * @param chemicalName chemical name
 * @param molarMass M, kg/mol
 * @param gasConstant R of the paper, J/(mol K)
 * @param reducingTemperature Tr, K
 * @param reducingDensity rhor, mol/m3
 * @param criticalTemperature published critical temperature, K; the equation's own may differ
 * @param criticalPressure published critical pressure, Pa
 * @param criticalDensity published critical density, mol/m3
 * @param tripleTemperature triple-point temperature, K
 * @param minTemperature lowest temperature of the equation, K
 * @param maxTemperature highest temperature of the equation, K
 * @param maxPressure highest pressure of single-phase states, Pa
 * @param acentricFactor computed from the equation at 0.7 of its critical temperature; starting values only
 */
public record PureConstants(
        String designation,
        String chemicalName,
        double molarMass,
        double gasConstant,
        double reducingTemperature,
        double reducingDensity,
        double criticalTemperature,
        double criticalPressure,
        double criticalDensity,
        double tripleTemperature,
        double minTemperature,
        double maxTemperature,
        double maxPressure,
        double acentricFactor) {
    /** {@inheritDoc} */
    public PureConstants {
        Parts.required("designation chemicalName", designation, chemicalName);
        Parts.numbers("molarMass gasConstant reducingTemperature", molarMass, gasConstant, reducingTemperature);
        Parts.numbers("reducingDensity criticalTemperature", reducingDensity, criticalTemperature);
        Parts.numbers("criticalPressure criticalDensity", criticalPressure, criticalDensity);
        Parts.numbers("tripleTemperature minTemperature", tripleTemperature, minTemperature);
        Parts.numbers("maxTemperature maxPressure acentricFactor", maxTemperature, maxPressure, acentricFactor);
    }

    /**
     * Returns where the saturation line begins: the warmer of the triple point and the equation's lower limit.
     *
     * @return temperature, K
     */
    public double saturationStart() {
        return Math.max(tripleTemperature, minTemperature);
    }
}
