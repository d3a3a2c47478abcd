package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;
import org.satline.refrigerant.GlobalWarmingPotential.Report;

/**
 * A refrigerant: a pure substance or a blend, with what is published about it. Immutable and thread-safe. Two refrigerants are equal if
 * designation and composition are.
 */
public final class Refrigerant {
    private static final int LONGEST_NAME = 400;

    /** What a name stands for. */
    private enum Kind {
        SUBSTANCE,
        BLEND,
        OPEN_BLEND
    }

    /** What an entry is called. */
    record Naming(
            String designation, String name, List<String> otherNames, Optional<String> formula, Optional<String> cas) {}

    private static final String OWN_SOURCE = "composition given by the user";
    private static final String MEAN_SOURCE = "computed: mean of the components by mass";

    /** Heavier than any refrigerant, kg/mol: a molar mass in g/mol is refused. */
    private static final double HEAVIEST = 2;

    private final Naming naming;
    private final Kind kind;
    private final Optional<SafetyGroup> safetyGroup;
    private final double molarMass;
    private final @Nullable Composition composition;
    private final PublishedFacts published;
    private final String source;
    private final String note;

    private Refrigerant(
            Naming naming,
            Kind kind,
            Optional<SafetyGroup> safetyGroup,
            double molarMass,
            @Nullable Composition composition,
            PublishedFacts published,
            String source,
            String note) {
        this.naming = naming;
        this.kind = kind;
        this.safetyGroup = safetyGroup;
        this.molarMass = molarMass;
        this.composition = composition;
        this.published = published;
        this.source = source;
        this.note = note;
    }

    static Refrigerant substance(
            Naming naming,
            Optional<SafetyGroup> safetyGroup,
            double molarMass,
            PublishedFacts published,
            String source,
            String note) {
        return new Refrigerant(naming, Kind.SUBSTANCE, safetyGroup, molarMass, null, published, source, note);
    }

    /**
     * Makes a substance of the caller's own, such as one with an equation of the caller's own. Its safety group is unknown, and so is
     * what else is published.
     *
     * @param designation a name that the standard catalogue does not know; not blank, without control characters
     * @param name chemical name
     * @param molarMassKilogramsPerMole M, kg/mol, in (0, 2]
     * @param source where the figures come from
     * @return the substance
     * @throws IllegalArgumentException if the designation is not of that form, or the molar mass is outside its interval
     */
    public static Refrigerant substance(
            String designation, String name, double molarMassKilogramsPerMole, String source) {
        Parts.required("designation name source", designation, name, source);
        checkOwnName("substance", designation);
        if (!(molarMassKilogramsPerMole > 0 && molarMassKilogramsPerMole <= HEAVIEST)) {
            throw new IllegalArgumentException("molar mass " + molarMassKilogramsPerMole + " kg/mol of " + designation
                    + " is outside (0, " + HEAVIEST + "] kg/mol; give it in kg/mol, not g/mol");
        }
        return substance(
                new Naming(designation.strip(), name, List.of(), Optional.empty(), Optional.empty()),
                Optional.empty(),
                molarMassKilogramsPerMole,
                PublishedFacts.NONE,
                source,
                "");
    }

    static Refrigerant listedBlend(
            String designation,
            String name,
            Optional<SafetyGroup> safetyGroup,
            @Nullable Composition composition,
            PublishedFacts published,
            String source,
            String note) {
        return new Refrigerant(
                new Naming(designation, name, List.of(), Optional.empty(), Optional.empty()),
                composition == null ? Kind.OPEN_BLEND : Kind.BLEND,
                safetyGroup,
                composition == null ? 0 : composition.molarMassKilogramsPerMole(),
                composition,
                published,
                source,
                note);
    }

    /**
     * Makes a blend of the caller's own. Its safety group is unknown: nothing may be concluded from that of its components.
     *
     * @param name a name that the standard catalogue does not know, such as {@code "shop mix"}; not blank, at most 400
     *     characters, none of them hidden ({@link PlainText#isHidden})
     * @param composition what it consists of
     * @return the blend
     * @throws IllegalArgumentException if the name is not of that form; a listed name would pass off one refrigerant as another
     */
    public static Refrigerant blend(String name, Composition composition) {
        Parts.required("name composition", name, composition);
        checkOwnName("blend", name);
        return listedBlend(
                name.strip(),
                composition.toString(),
                Optional.empty(),
                composition,
                PublishedFacts.NONE,
                OWN_SOURCE,
                "");
    }

    private static void checkOwnName(String what, String name) {
        PlainText.require(name, LONGEST_NAME, "name of the " + what);
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of the " + what + " is blank; give it a name of one line");
        }
        if (Catalogue.standard().lists(name)) {
            throw new IllegalArgumentException(
                    "name of the " + what + " " + PlainText.quoted(name)
                            + " is that of a listed refrigerant; give it a name of its own, or take the listed one from the catalogue");
        }
    }

    /**
     * Returns the listed refrigerant of the same composition: what is published and computed of that holds of this one too, whatever it
     * is called.
     *
     * @return the listed one; this one if it is listed itself, or none has its composition
     */
    public Refrigerant asListed() {
        return hasComposition() ? Catalogue.standard().asListed(this) : this;
    }

    /**
     * Returns the designation.
     *
     * @return ISO 817 designation such as {@code R-410A}, or the name of a user's blend
     */
    public String designation() {
        return naming.designation;
    }

    /**
     * Returns the chemical name of a substance, or the components of a blend.
     *
     * @return name
     */
    public String name() {
        return naming.name;
    }

    /**
     * Returns further names under which the catalogue finds it, such as {@code CO2}.
     *
     * @return names; may be empty
     */
    public List<String> otherNames() {
        return naming.otherNames;
    }

    /**
     * Returns the chemical formula.
     *
     * @return formula such as {@code CH2F2}; empty for blends
     */
    public Optional<String> formula() {
        return naming.formula;
    }

    /**
     * Returns the CAS registry number.
     *
     * @return number; empty for blends
     */
    public Optional<String> cas() {
        return naming.cas;
    }

    /**
     * Returns the safety group.
     *
     * @return group; empty where none is on record, which is no sign of safety
     */
    public Optional<SafetyGroup> safetyGroup() {
        return safetyGroup;
    }

    /**
     * Tells whether this is a blend.
     *
     * @return true for blends
     */
    public boolean isBlend() {
        return kind != Kind.SUBSTANCE;
    }

    /**
     * Tells whether the composition is fixed: true except for designations such as R-400 whose proportions the user must state.
     *
     * @return true if {@link #composition()} answers
     */
    public boolean hasComposition() {
        return kind != Kind.OPEN_BLEND;
    }

    /**
     * Returns the composition; a substance consists of itself.
     *
     * @return the composition
     * @throws IllegalArgumentException if the designation does not fix one
     */
    public Composition composition() {
        if (kind == Kind.SUBSTANCE) {
            return Composition.pure(this);
        }
        if (composition == null) {
            throw new IllegalArgumentException(naming.designation + " (" + naming.name
                    + ") has no fixed composition; make a blend of its components in the proportions at hand");
        }
        return composition;
    }

    /**
     * Returns the molar mass.
     *
     * @return M, kg/mol
     * @throws IllegalArgumentException if the composition is not fixed
     */
    public double molarMassKilogramsPerMole() {
        return kind == Kind.OPEN_BLEND ? composition().molarMassKilogramsPerMole() : molarMass;
    }

    /**
     * Returns the figures printed in the sources.
     *
     * @return published figures
     */
    public PublishedFacts published() {
        return published;
    }

    /**
     * Returns the global warming potential by an assessment report: the printed one of a substance; for a blend the mean by mass of its
     * components, labelled so.
     *
     * @param report the assessment report
     * @return the potential; empty where it is not known for every component
     */
    public Optional<GlobalWarmingPotential> gwp(Report report) {
        if (kind == Kind.SUBSTANCE) {
            return published.gwp().stream().filter(g -> g.report() == report).findFirst();
        }
        if (composition == null) {
            return Optional.empty();
        }
        double sum = 0;
        boolean bound = false;
        for (Composition.Component component : composition.components()) {
            Optional<GlobalWarmingPotential> part = component.substance().gwp(report);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            sum += component.massFraction() * part.get().value();
            bound |= part.get().isUpperBound();
        }
        return Optional.of(new GlobalWarmingPotential(sum, report, MEAN_SOURCE, bound));
    }

    /**
     * Returns the ozone depletion potential: the published one of a substance; for a blend the mean by mass of its components.
     *
     * @return ODP, R-11 = 1; empty where it is not known for every component
     */
    public OptionalDouble ozoneDepletionPotential() {
        if (kind == Kind.SUBSTANCE) {
            return published.ozoneDepletionPotential();
        }
        if (composition == null) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (Composition.Component component : composition.components()) {
            OptionalDouble part = component.substance().ozoneDepletionPotential();
            if (part.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += component.massFraction() * part.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /**
     * Returns all known global warming potentials.
     *
     * @return one for each assessment report that covers this refrigerant
     */
    public List<GlobalWarmingPotential> gwp() {
        List<GlobalWarmingPotential> known = new ArrayList<>();
        for (Report report : Report.values()) {
            gwp(report).ifPresent(known::add);
        }
        return List.copyOf(known);
    }

    /**
     * Returns where the entry comes from.
     *
     * @return sources of its figures, with what is from memory
     */
    public String source() {
        return source;
    }

    /**
     * Returns remarks on the figures.
     *
     * @return remarks; may be empty
     */
    public String note() {
        return note;
    }

    /**
     * Returns the version of the data set that the entry belongs to.
     *
     * @return version
     */
    public String dataVersion() {
        return Catalogue.DATA_VERSION;
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Refrigerant that
                        && naming.designation.equals(that.naming.designation)
                        && Objects.equals(composition, that.composition));
    }

    @Override
    public int hashCode() {
        return naming.designation.hashCode();
    }

    @Override
    public String toString() {
        return naming.designation;
    }
}
