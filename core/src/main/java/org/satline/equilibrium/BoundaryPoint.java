package org.satline.equilibrium;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Parts;

/**
 * A converged point of a bubble or dew line. Immutable and thread-safe.
 *
 * @param temperatureK T, K
 * @param pressurePa p, Pa
 * @param saturated the phase that has the composition of the whole: liquid at a bubble point, vapour at a dew point
 * @param incipientMolarDensity molar density of the other phase, mol/m3
 * @param incipientMoleFractions mole fractions of the other phase
 * @param fugacityResidual largest difference of {@code ln f_i} between the phases
 * @param pressureResidual difference of the pressures over {@code rho R T} of the liquid
 */
@SuppressWarnings("ArrayRecordComponent") // copied on the way in and out
public record BoundaryPoint(
        double temperatureK,
        double pressurePa,
        FluidState saturated,
        double incipientMolarDensity,
        double[] incipientMoleFractions,
        double fugacityResidual,
        double pressureResidual) {
    /** {@inheritDoc} */
    public BoundaryPoint {
        Parts.required("saturated incipientMoleFractions", saturated, incipientMoleFractions);
        Parts.numbers("temperatureK pressurePa", temperatureK, pressurePa);
        Parts.numbers("incipientMolarDensity fugacityResidual", incipientMolarDensity, fugacityResidual);
        Parts.numbers("pressureResidual", pressureResidual);
        incipientMoleFractions = incipientMoleFractions.clone();
    }

    /**
     * Returns a copy of the mole fractions of the other phase.
     *
     * @return mole fractions, in the order of the blend's components
     */
    @Override
    public double[] incipientMoleFractions() {
        return incipientMoleFractions.clone();
    }

    /** All numbers, the array by its contents. */
    private List<Object> parts() {
        return List.of(
                temperatureK,
                pressurePa,
                saturated,
                incipientMolarDensity,
                Arrays.stream(incipientMoleFractions).boxed().toList(),
                fugacityResidual,
                pressureResidual);
    }

    /**
     * Exact equality of all numbers.
     *
     * @param other the object to compare with
     * @return whether both are the same point
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoundaryPoint point && point.parts().equals(parts());
    }

    /**
     * Hash code that goes with equality.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return parts().hashCode();
    }
}
