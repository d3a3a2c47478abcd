package org.satline.saturation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.MassTolerance;
import org.satline.refrigerant.Refrigerant;

/** The blend with one component at an end of its mass tolerance and the rest in unchanged proportions, ready to be solved. Immutable. */
final class ToleranceVariants {
    /** Smallest mass fraction that a variant keeps of a component whose tolerance would remove it. */
    private static final double TRACE = 1e-6;

    private final List<Variant> variants;

    /**
     * One component at both ends of its tolerance.
     *
     * @param component its designation
     * @param tolerance its tolerance
     * @param fewer the blend with the least of it
     * @param more the blend with the most of it
     */
    record Variant(String component, MassTolerance tolerance, FluidModel fewer, FluidModel more) {}

    ToleranceVariants(FluidModel model) {
        Refrigerant blend = model.refrigerant();
        List<MassTolerance> tolerances = blend.published().tolerances();
        List<Variant> made = new ArrayList<>();
        for (int i = 0; i < tolerances.size(); i++) {
            MassTolerance tolerance = tolerances.get(i);
            Composition.Component component = blend.composition().components().get(i);
            double fraction = component.massFraction();
            made.add(new Variant(
                    component.substance().designation(),
                    tolerance,
                    variant(model, i, Math.max(TRACE, fraction - tolerance.below()), "least"),
                    variant(model, i, Math.min(1 - TRACE, fraction + tolerance.above()), "most")));
        }
        variants = List.copyOf(made);
    }

    private static FluidModel variant(FluidModel model, int moved, double fraction, String end) {
        List<Composition.Component> components =
                model.refrigerant().composition().components();
        double rest = (1 - fraction) / (1 - components.get(moved).massFraction());
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        for (int i = 0; i < components.size(); i++) {
            Composition.Component component = components.get(i);
            fractions.put(component.substance(), i == moved ? fraction : component.massFraction() * rest);
        }
        String name = model.refrigerant().designation() + " with the " + end + " "
                + components.get(moved).substance().designation();
        return FluidModel.of(Refrigerant.blend(name, Composition.ofMassFractions(fractions)), model.interactionModel());
    }

    List<Variant> variants() {
        return variants;
    }
}
