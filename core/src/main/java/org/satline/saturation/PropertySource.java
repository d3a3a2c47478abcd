package org.satline.saturation;

import java.util.List;
import org.satline.equation.MixtureEvidence;
import org.satline.equation.PairInteraction;
import org.satline.explanation.Finding;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * Where properties come from. Immutable, thread-safe.
 *
 * @param refrigerant what they are of
 * @param equations the published sources
 * @param engine whether solved or read from a table
 * @param interactions how each pair of a blend's components is modelled; none for a pure substance
 * @param warnings what the mixture model is known to miss; none if there is nothing to warn of
 */
public record PropertySource(
        Refrigerant refrigerant,
        String equations,
        Engine engine,
        List<PairInteraction> interactions,
        List<Finding> warnings) {
    /** {@inheritDoc} */
    public PropertySource {
        Parts.required("refrigerant equations engine", refrigerant, equations, engine);
        interactions = Parts.list("interactions", interactions);
        warnings = Parts.list("warnings", warnings);
    }

    /**
     * The source of a curve.
     *
     * @param curve the curve
     * @return its source
     */
    public static PropertySource of(SaturationCurve curve) {
        Parts.required("curve", curve);
        return new PropertySource(
                curve.refrigerant(),
                curve.source(),
                curve.engine(),
                MixtureEvidence.of(curve.refrigerant()).pairs(),
                curve.warnings());
    }
}
