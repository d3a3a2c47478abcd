package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.refrigerant.GlobalWarmingPotential.Report;

/**
 * A refrigerant: a pure substance or a blend, with what is published about it. Immutable and thread-safe. Two refrigerants are equal if designation and
 * composition are.
 */
public final class Refrigerant {
    /** What a name stands for. */
    private enum Kind {
        SUBSTANCE,
        BLEND,
        OPEN_BLEND
    }

    private final String designation;
    private final String name;
    private final Kind kind;
    private final Optional<String> cas;
    private final Optional<SafetyGroup> safetyGroup;
    private final double molarMass;
    private final @Nullable Composition composition;
    private final PublishedFacts published;
    private final String source;
    private final String note;

    private Refrigerant(
            String designation,
            String name,
            Kind kind,
            Optional<String> cas,
            Optional<SafetyGroup> safetyGroup,
            double molarMass,
            @Nullable Composition composition,
            PublishedFacts published,
            String source,
            String note) {
        this.designation = designation;
        this.name = name;
        this.kind = kind;
        this.cas = cas;
        this.safetyGroup = safetyGroup;
        this.molarMass = molarMass;
        this.composition = composition;
        this.published = published;
        this.source = source;
        this.note = note;
    }

    static Refrigerant substance(
            String designation,
            String name,
            Optional<String> cas,
            Optional<SafetyGroup> safetyGroup,
            double molarMass,
            PublishedFacts published,
            String source,
            String note) {
        return new Refrigerant(
                designation, name, Kind.SUBSTANCE, cas, safetyGroup, molarMass, null, published, source, note);
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
                designation,
                name,
                composition == null ? Kind.OPEN_BLEND : Kind.BLEND,
                Optional.empty(),
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
     * @param name a name, not blank
     * @param composition what it consists of
     * @return the blend
     */
    public static Refrigerant blend(String name, Composition composition) {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(composition, "composition");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of the blend is blank; give it a name");
        }
        return listedBlend(
                name.strip(),
                "blend " + composition,
                Optional.empty(),
                composition,
                PublishedFacts.NONE,
                "composition given by the user",
                "");
    }

    /**
     * Returns the designation.
     *
     * @return ISO 817 designation such as {@code R-410A}, or the name of a user's blend
     */
    public String designation() {
        return designation;
    }

    /**
     * Returns the chemical name of a substance, or the components of a blend.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Returns the CAS registry number.
     *
     * @return number; empty for blends
     */
    public Optional<String> cas() {
        return cas;
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
            throw new IllegalArgumentException(designation + " (" + name
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
     * Returns the global warming potential by an assessment report: the printed one of a substance; for a blend the mean by mass of its components,
     * labelled so.
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
        for (Composition.Component component : composition.components()) {
            Optional<GlobalWarmingPotential> part = component.substance().gwp(report);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            sum += component.massFraction() * part.get().value();
        }
        return Optional.of(new GlobalWarmingPotential(sum, report, "mean of the components by mass"));
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
        return other instanceof Refrigerant that
                && designation.equals(that.designation)
                && Objects.equals(composition, that.composition);
    }

    @Override
    public int hashCode() {
        return designation.hashCode();
    }

    @Override
    public String toString() {
        return designation;
    }
}
