package org.satline.program.pictures;

import java.util.Objects;

/**
 * One corner of a refrigeration cycle. Immutable.
 *
 * @param place what it is, in the word of its key: suction, discharge, liquid or expanded
 * @param measured true if pressure and temperature were read, false if the state rests on an assumption
 * @param basis what was read, or what is assumed, in the word of its key
 * @param pressurePa p, Pa
 * @param temperatureK T, K
 * @param specificEnthalpy h, J/kg
 */
public record CycleCorner(
        String place, boolean measured, String basis, double pressurePa, double temperatureK, double specificEnthalpy) {
    /** {@inheritDoc} */
    public CycleCorner {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(basis, "basis");
    }
}
