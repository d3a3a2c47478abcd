package org.satline.audit.answer;

import java.util.Optional;
import java.util.stream.Collectors;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.refrigerant.Refrigerant;

/** One refrigerant, prepared once for all of its rows. Thread-safe. */
final class Fluid {
    private final FluidModel model;
    private final Points points;
    private final StatedUncertainty uncertainty;
    private final String source;

    private Fluid(FluidModel model) {
        this.model = model;
        this.points = Points.kept(model);
        this.uncertainty = new StatedUncertainty(points);
        this.source = model.equation().mixture().components().stream()
                .map(component -> component.source().citation())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** Prepares a refrigerant; where the reference state does not exist its own default one is kept. */
    static Fluid of(Refrigerant refrigerant, ReferenceState reference) {
        FluidModel model = FluidModel.of(refrigerant);
        return new Fluid(model.has(reference) ? model.with(reference) : model);
    }

    FluidModel model() {
        return model;
    }

    Points points() {
        return points;
    }

    StatedUncertainty uncertainty() {
        return uncertainty;
    }

    String source() {
        return source;
    }

    /** Same fluid counted from another reference state, if it exists and is another. */
    Optional<FluidModel> from(ReferenceState reference) {
        return reference != model.referenceState() && model.has(reference)
                ? Optional.of(model.with(reference))
                : Optional.empty();
    }
}
