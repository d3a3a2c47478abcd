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
 * Gives the equations of substances and mixtures, those of this library and those of the caller's own. Thread-safe; equations are read
 * from their resources when first asked for and kept.
 */
public final class EquationLibrary {
    private static final EquationLibrary STANDARD = new EquationLibrary(OwnEquations.NONE);

    private static final int LONGEST_DESIGNATION = 40;

    private final Map<String, PureEquation> pure = new ConcurrentHashMap<>();
    private final Map<InteractionModel, PairLibrary> pairs =
            new ConcurrentHashMap<>(new EnumMap<>(InteractionModel.class));
    private final OwnEquations own;

    private EquationLibrary(OwnEquations own) {
        this.own = own;
    }

    /**
     * Returns the library of the equations that ship with this jar.
     *
     * @return the library
     */
    public static EquationLibrary standard() {
        return STANDARD;
    }

    /**
     * The same library with a published equation of the caller's own. Its four files have the form of those in this library, which
     * DEVELOPERS.md describes:
     * {@code equation.csv} (constants, range and source), {@code ideal-terms.csv}, {@code residual-terms.csv}, and {@code
     * check-values.csv} with at least one value that the paper prints. What the equation computes is tried when a model is made of it:
     * {@code EquationTrial} of the equilibrium room.
     *
     * @param files the files by name
     * @return a new library
     * @throws org.satline.resource.ResourceFormatException if a file is missing or not of that form, or there is no check value; with
     *     file and line
     * @throws IllegalArgumentException if the library has an equation of that designation: none is replaced
     */
    public EquationLibrary with(Map<String, byte[]> files) {
        return new EquationLibrary(own.with(files, this));
    }

    /**
     * The same library with pair parameters of the caller's own. They stand before those of this library, also where those are adjusted.
     * The file is CSV as {@link org.satline.resource.CsvResource} describes it, with the columns
     * {@code first,second,betaT,gammaT,betaV,gammaV,F,departure,status,source,remark}; the status is {@code fitted} or {@code estimated},
     * the source a citation.
     *
     * @param name name of the file, for messages
     * @param utf8 the whole file
     * @return a new library
     * @throws org.satline.resource.ResourceFormatException if the file is not of that form; with file and line
     */
    public EquationLibrary withPairs(String name, byte[] utf8) {
        return new EquationLibrary(own.withPairs(PairReader.own(name, utf8)));
    }

    /**
     * Tells whether an equation is the caller's own.
     *
     * @param designation designation of a substance
     * @return true if it came by {@link #with}
     */
    public boolean isOwn(String designation) {
        return own.equations().containsKey(designation);
    }

    /**
     * Returns the values that the paper of an equation prints to test it.
     *
     * @param designation designation of a substance
     * @return its check values; empty if none is on record, or there is no equation
     */
    public List<EquationCheck> checks(String designation) {
        List<EquationCheck> checks = own.checks().get(designation);
        return checks == null ? EquationCheck.of(designation) : checks;
    }

    /**
     * Tells whether a substance has an equation here.
     *
     * @param designation ISO 817 designation of a substance, such as {@code R-134a}
     * @return true if {@link #pure} would answer
     */
    public boolean hasEquation(String designation) {
        Objects.requireNonNull(designation, "designation");
        if (pure.containsKey(designation) || isOwn(designation)) {
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
        PureEquation known = isOwn(designation) ? own.equations().get(designation) : pure.get(designation);
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
        PairLibrary library = pairs.computeIfAbsent(model, each -> new PairLibrary(each, own.pairs()));
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
