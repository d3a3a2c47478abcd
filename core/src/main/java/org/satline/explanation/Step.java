package org.satline.explanation;

import org.satline.quantity.Parts;

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
    /** {@inheritDoc} */
    public Step {
        Parts.required("name formula substitution result source", name, formula, substitution, result, source);
    }
}
