package org.satline.program.pictures;

import java.util.Objects;

/**
 * One corner of a refrigeration cycle. Immutable.
 *
 * @param name what it is, such as suction line
 * @param measured true if pressure and temperature were read, false if the state rests on an assumption
 * @param basis what was read, or what is assumed
 * @param pressurePa p, Pa
 * @param temperatureK T, K
 * @param specificEnthalpy h, J/kg
 */
public record CycleCorner(
        String name, boolean measured, String basis, double pressurePa, double temperatureK, double specificEnthalpy) {
    /** {@inheritDoc} */
    public CycleCorner {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(basis, "basis");
    }
}
