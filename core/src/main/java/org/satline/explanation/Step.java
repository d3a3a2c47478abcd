package org.satline.explanation;

import java.util.List;
import org.satline.quantity.Parts;

/**
 * One step of a derivation: what was computed, by which formula, with which numbers, from which source. Immutable, thread-safe.
 *
 * @param key what the step yields, as a word under which texts find its name
 * @param formula the relation in symbols
 * @param given the numbers that were put in, each under the symbol or name that it has in the formula
 * @param result what came out
 * @param source the published source of the formula or figure, or {@code common practice, no source}
 */
public record Step(String key, String formula, List<Figure> given, Figure result, String source) {
    /** {@inheritDoc} */
    public Step {
        Parts.required("key formula result source", key, formula, result, source);
        given = Parts.list("given", given);
    }
}
