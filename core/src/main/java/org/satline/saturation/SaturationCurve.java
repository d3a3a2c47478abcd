package org.satline.saturation;

import java.util.List;
import org.satline.equation.MixtureEvidence;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Finding;

/**
 * Bubble and dew lines of one refrigerant with the saturated liquid of the bubble line and the saturated vapour of the dew line.
 * Implementations are immutable and thread-safe. For a pure substance both lines coincide.
 *
 * <p>By capability: {@link SaturationLines} are the lines alone, {@link SaturationNumbers} adds the saturated phases in SI doubles (K, Pa,
 * kg/m3, J/kg, J/(kg K)), {@link SaturationQuantities} knows their units; this type adds how they are found. Every method throws
 * {@link org.satline.quantity.OutOfValidityException} outside its range, for NaN too.
 */
public interface SaturationCurve extends SaturationQuantities {
    /**
     * Returns how numbers are found.
     *
     * @return the engine
     */
    Engine engine();

    /**
     * Returns what every result of this curve should say about the mixture model behind it, such as a known difference from published
     * points. Looked up when asked for: it reads the equations, which a first answer from a table does not need.
     *
     * @return cautions with a {@link org.satline.equation.ModelCode}; none if there is nothing to warn of
     */
    default List<Finding> warnings() {
        return MixtureEvidence.of(refrigerant()).warnings();
    }

    /**
     * Returns where enthalpy and entropy count from.
     *
     * @return the reference state
     */
    ReferenceState referenceState();

    /**
     * Tells how {@link #value} finds one answer: a curve that reads a table solves the equation where the table stops.
     *
     * @param property which property
     * @param at T, K, or p, Pa
     * @return the engine of that answer
     */
    default Engine engineAt(SaturationProperty property, double at) {
        return engine();
    }
}
