package org.satline.cylinder;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Temperature;

/**
 * One published or customary rule on how much a cylinder may hold. The rules are data: see {@link FillRules}. Immutable, thread-safe.
 */
public final class FillRule {
    /** Whether a rule is law or custom. */
    public enum Basis {
        /** Regulation. */
        LAW,
        /** Guideline or rule of the trade. */
        PRACTICE
    }

    /** Whether the rule's text was read. */
    public enum Confirmation {
        /** Read in the text named, or in a reprint of it. */
        READ,
        /** From memory: look at the text named before relying on it. */
        MEMORY,
        /** A rule of the trade without a published source. */
        PRACTICE
    }

    /** The gases and receptacles to which a rule applies. */
    enum Scope {
        ANY,
        LOW,
        HIGH,
        COMPRESSED,
        TANK,
        RECEPTACLE
    }

    private final String name;
    private final Basis basis;
    private final String inequality;
    private final String citation;
    private final Confirmation confirmation;
    private final FillMethod method;
    private final Scope scope;
    private final OptionalDouble factor;
    private final Optional<Temperature> temperature;

    FillRule(
            String name,
            Basis basis,
            String inequality,
            String citation,
            Confirmation confirmation,
            FillMethod method,
            Scope scope,
            OptionalDouble factor,
            Optional<Temperature> temperature) {
        this.name = name;
        this.basis = basis;
        this.inequality = inequality;
        this.citation = citation;
        this.confirmation = confirmation;
        this.method = method;
        this.scope = scope;
        this.factor = factor;
        this.temperature = temperature;
    }

    /**
     * Returns the name by which the rule is asked for.
     *
     * @return such as {@code liquid-80-warmest}
     */
    public String name() {
        return name;
    }

    /**
     * Tells whether the rule is law or custom.
     *
     * @return the basis
     */
    public Basis basis() {
        return basis;
    }

    /**
     * Returns the rule as an inequality.
     *
     * @return in the symbols of {@link FillRules}
     */
    public String inequality() {
        return inequality;
    }

    /**
     * Returns where the rule stands.
     *
     * @return the citation, or {@code common practice, no source}
     */
    public String citation() {
        return citation;
    }

    /**
     * Tells whether the text of the rule was read.
     *
     * @return the confirmation
     */
    public Confirmation confirmation() {
        return confirmation;
    }

    /**
     * Returns the temperature at which the rule looks at the refrigerant; nothing where it takes the stated warmest temperature or none.
     *
     * @return the temperature that the rule itself names
     */
    public Optional<Temperature> temperature() {
        return temperature;
    }

    FillMethod method() {
        return method;
    }

    Scope scope() {
        return scope;
    }

    /** The number in the inequality. */
    double factor() {
        return factor.orElseThrow(() -> new IllegalStateException("rule " + name + " has no factor"));
    }

    /** The citation, with a word where the text was not read. */
    String source() {
        return confirmation == Confirmation.MEMORY ? citation + " (from memory)" : citation;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FillRule rule && rule.name.equals(name);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name);
    }

    @Override
    public String toString() {
        return name + ": " + inequality + " [" + source() + "]";
    }
}
