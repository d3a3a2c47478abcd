package org.satline.visit;

import java.util.List;
import java.util.Objects;
import org.satline.equation.EquationLibrary;
import org.satline.equation.InteractionModel;
import org.satline.equation.PairInteraction;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;

/**
 * Where the properties of a visit come from. Immutable, thread-safe.
 *
 * @param refrigerant what they are of
 * @param equations the published sources
 * @param engine whether solved or read from a table
 * @param interactions how each pair of a blend's components is modelled; none for a pure substance
 */
public record PropertySource(
        Refrigerant refrigerant, String equations, Engine engine, List<PairInteraction> interactions) {
    /**
     * Checks that no part is missing.
     *
     * @param refrigerant what they are of
     * @param equations the published sources
     * @param engine whether solved or read from a table
     * @param interactions how each pair of a blend's components is modelled
     */
    public PropertySource {
        Objects.requireNonNull(refrigerant, "refrigerant");
        Objects.requireNonNull(equations, "equations");
        Objects.requireNonNull(engine, "engine");
        interactions = List.copyOf(interactions);
    }

    static PropertySource of(SaturationCurve curve) {
        return new PropertySource(
                curve.refrigerant(),
                curve.source(),
                curve.engine(),
                EquationLibrary.standard()
                        .of(curve.refrigerant(), InteractionModel.ADJUSTED_OVER_PUBLISHED)
                        .mixture()
                        .pairs());
    }
}
