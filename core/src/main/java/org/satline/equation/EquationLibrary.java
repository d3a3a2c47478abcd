package org.satline.equation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.SealedResources;

/**
 * Gives the equations of substances and mixtures. Thread-safe; equations are read from their resources when first asked for and kept.
 */
public final class EquationLibrary {
    private static final EquationLibrary STANDARD = new EquationLibrary();

    private static final int LONGEST_DESIGNATION = 40;

    private final Map<String, PureEquation> pure = new ConcurrentHashMap<>();
    private final Map<InteractionModel, PairLibrary> pairs =
            new ConcurrentHashMap<>(new EnumMap<>(InteractionModel.class));

    private EquationLibrary() {}

    /**
     * Returns the library of the equations that ship with this jar.
     *
     * @return the library
     */
    public static EquationLibrary standard() {
        return STANDARD;
    }

    /**
     * Tells whether a substance has an equation here.
     *
     * @param designation ISO 817 designation of a substance, such as {@code R-134a}
     * @return true if {@link #pure} would answer
     */
    public boolean hasEquation(String designation) {
        Objects.requireNonNull(designation, "designation");
        if (pure.containsKey(designation)) {
            return true;
        }
        // a designation names no folder: nothing else in the jar can be taken for an equation
        return designation.length() <= LONGEST_DESIGNATION
                && designation.indexOf('/') < 0
                && SealedResources.core()
                        .lists(
                                EquationLibrary.class,
                                PureEquationReader.folder(designation) + PureEquationReader.CONSTANTS)
                // the folder alone does not tell R-32 from r-32, which pure would refuse
                && PureEquationReader.designationIn(PureEquationReader.folder(designation))
                        .equals(designation);
    }

    /**
     * Returns the equation of a substance.
     *
     * @param designation ISO 817 designation of a substance, such as {@code R-134a}
     * @return its equation
     * @throws MissingEquationException if the substance has none here
     */
    public PureEquation pure(String designation) {
        Objects.requireNonNull(designation, "designation");
        PureEquation known = pure.get(designation);
        if (known != null) {
            return known;
        }
        if (!hasEquation(designation)) {
            throw new MissingEquationException(designation, List.of(designation));
        }
        return pure.computeIfAbsent(designation, PureEquationReader::read);
    }

    /**
     * Returns the mixture model of some substances.
     *
     * @param designations ISO 817 designations, in the order of the composition arrays; one or more, no two alike
     * @param model which pair parameters to use
     * @return the model
     * @throws IllegalArgumentException if there is none, or one stands twice
     * @throws MissingEquationException if a substance has no equation here
     */
    public MixtureEquation mixture(List<String> designations, InteractionModel model) {
        if (designations.isEmpty() || Set.copyOf(designations).size() < designations.size()) {
            throw new IllegalArgumentException(
                    "components " + designations
                            + ": expected one or more substances, no two alike; add up the shares of a substance that is there twice");
        }
        List<PureEquation> components = designations.stream().map(this::pure).toList();
        PairLibrary library = pairs.computeIfAbsent(model, PairLibrary::new);
        List<PairInteraction> found = new ArrayList<>();
        for (int i = 0; i < designations.size(); i++) {
            for (int j = i + 1; j < designations.size(); j++) {
                found.add(library.pair(designations.get(i), designations.get(j)));
            }
        }
        return new MixtureEquation(components, found, library);
    }

    /**
     * Returns the equation of a refrigerant at its own composition.
     *
     * @param refrigerant substance or blend
     * @param model which pair parameters to use for a blend
     * @return the equation
     * @throws MissingEquationException if a component has no equation here; the message names it
     */
    public FixedComposition of(Refrigerant refrigerant, InteractionModel model) {
        List<String> designations = refrigerant.composition().components().stream()
                .map(component -> component.substance().designation())
                .toList();
        List<String> missing =
                designations.stream().filter(d -> !hasEquation(d)).toList();
        if (!missing.isEmpty()) {
            throw new MissingEquationException(refrigerant.designation(), missing);
        }
        double[] moleFractions = refrigerant.composition().components().stream()
                .mapToDouble(component -> component.moleFraction())
                .toArray();
        return mixture(designations, model).at(moleFractions);
    }
}
