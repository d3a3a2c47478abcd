package org.satline.equilibrium;

import org.satline.quantity.Parts;

/**
 * A critical point of one composition: where liquid and vapour of that composition become one phase. Immutable and thread-safe.
 *
 * @param temperatureK T, K
 * @param pressurePa p, Pa
 * @param molarDensity mol/m3
 * @param density kg/m3
 */
public record CriticalPoint(double temperatureK, double pressurePa, double molarDensity, double density) {
    /** {@inheritDoc} */
    public CriticalPoint {
        Parts.numbers("temperatureK pressurePa molarDensity", temperatureK, pressurePa, molarDensity);
        Parts.numbers("density", density);
    }
}
