package org.satline.filling;

import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.explanation.Coded;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/**
 * One published or customary rule on how much a cylinder may hold. The rules are data: see {@link FillRules}. Immutable, thread-safe.
 *
 * @param name the name by which it is asked for, such as {@code liquid-80-warmest}
 * @param basis whether it is law or custom
 * @param inequality the rule in the symbols of {@link FillRules}
 * @param citation where it stands, or {@code common practice, no source}
 * @param confirmation whether its text was read
 * @param method how it arrives at its limit
 * @param scope the gases and receptacles to which it applies
 * @param factor the number in the inequality, where there is one
 * @param temperature the temperature that the rule itself names; nothing where it takes the stated warmest one or none
 * @param orWarmer whether a stated warmest temperature above that of the rule stands in its place
 */
public record FillRule(
        String name,
        Basis basis,
        String inequality,
        String citation,
        Confirmation confirmation,
        Method method,
        Scope scope,
        OptionalDouble factor,
        Optional<Temperature> temperature,
        boolean orWarmer) {
    /** Whether a rule is law or custom. */
    public enum Basis implements Coded {
        /** Regulation. */
        LAW,
        /** Guideline or rule of the trade. */
        PRACTICE
    }

    /** Whether the rule's text was read. */
    public enum Confirmation implements Coded {
        /** Read in the text named, or in a reprint of it. */
        READ,
        /** From memory: look at the text named before relying on it. */
        MEMORY,
        /** A rule of the trade without a published source. */
        PRACTICE
    }

    /** The gases and receptacles to which a rule applies. */
    public enum Scope {
        /** All. */
        ANY,
        /** Gases of critical temperature above 65 degC. */
        LOW,
        /** Gases of critical temperature from -50 to 65 degC. */
        HIGH,
        /** Gases of critical temperature below -50 degC. */
        COMPRESSED,
        /** Portable tanks. */
        TANK,
        /** All receptacles but portable tanks. */
        RECEPTACLE
    }

    /** How a rule arrives at its limit. The names in {@code fill-rules.csv} are these, in lower case with hyphens. */
    public enum Method {
        /** Largest mass: liquid at a stated temperature fills at most a fraction of the volume. */
        LIQUID_FRACTION,
        /** The same with a strict inequality. */
        LIQUID_FRACTION_BELOW,
        /** Largest mass: a fraction of the water capacity, whatever the refrigerant. */
        WATER_FRACTION,
        /** Largest mass: a fraction of the mass for which the container is rated. */
        RATING_FRACTION,
        /** Largest mass: printed filling density by gas and cylinder type. */
        FILLING_DENSITY_TABLE,
        /** Largest mass: printed filling density by specific gravity of liquefied petroleum gas. */
        LPG_TABLE,
        /** Largest mass: printed filling ratio by gas and test pressure. */
        FILLING_RATIO_TABLE,
        /** Largest mass: printed figure for portable tanks. */
        TANK_TABLE,
        /** Largest mass: settled pressure at a stated temperature within a fraction of the test pressure. */
        SETTLED_PRESSURE,
        /** Largest mass: formula for a low-pressure liquefied gas without an entry. */
        LOW_PRESSURE_FORMULA,
        /** Largest mass: formula for a high-pressure liquefied gas without an entry. */
        HIGH_PRESSURE_FORMULA,
        /** Pass or fail: vapour pressure against the marked service pressure. */
        SERVICE_PRESSURE,
        /** Pass or fail: vapour pressure against the test pressure. */
        TEST_PRESSURE,
        /** Pass or fail: a least test pressure. */
        LEAST_TEST_PRESSURE
    }

    /** {@inheritDoc} */
    public FillRule {
        Parts.required("name basis inequality citation", name, basis, inequality, citation);
        Parts.required("confirmation method scope factor", confirmation, method, scope, factor);
        Parts.required("temperature", temperature);
    }

    /** The number in the inequality of a rule that has one. */
    double number() {
        return factor.orElseThrow(() -> new IllegalStateException("rule " + name + " has no factor"));
    }

    /**
     * The citation, with a word where the text was not read.
     *
     * @return where the rule stands
     */
    public String source() {
        return confirmation == Confirmation.MEMORY ? citation + " (from memory)" : citation;
    }
}
