package org.satline.wording;

import java.util.List;
import org.satline.quantity.Parts;

/**
 * A step of a derivation in words. Immutable, thread-safe.
 *
 * @param name what the step yields
 * @param formula the relation in symbols
 * @param given the numbers that were put in, each as {@code symbol = number unit}
 * @param result what came out
 * @param source the source
 */
public record StepText(String name, String formula, List<String> given, String result, String source) {
    /** {@inheritDoc} */
    public StepText {
        Parts.required("name formula result source", name, formula, result, source);
        given = Parts.list("given", given);
    }

    /**
     * The step as lines of text.
     *
     * @return name with result, formula, the numbers where there are any, source
     */
    public List<String> lines() {
        String head = name + ": " + result;
        return given.isEmpty()
                ? List.of(head, formula, source)
                : List.of(head, formula, String.join(", ", given), source);
    }
}
