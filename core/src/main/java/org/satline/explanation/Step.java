package org.satline.explanation;

import java.util.Objects;

/**
 * One step of a derivation: what was computed, by which formula, with which numbers, from which source. Immutable, thread-safe.
 *
 * @param name what the step yields, in words
 * @param formula the relation in symbols
 * @param substitution the same relation with the numbers and their units put in
 * @param result the value with its unit
 * @param source the published source of the formula or figure, or {@code common practice, no source}
 */
public record Step(String name, String formula, String substitution, String result, String source) {
    /**
     * Checks that no part is missing.
     *
     * @param name what the step yields, in words
     * @param formula the relation in symbols
     * @param substitution the same relation with the numbers and their units put in
     * @param result the value with its unit
     * @param source the published source of the formula or figure
     */
    public Step {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(substitution, "substitution");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(source, "source");
    }
}
