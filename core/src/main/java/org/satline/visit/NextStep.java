package org.satline.visit;

import java.util.Objects;

/**
 * Something to do next. Immutable, thread-safe.
 *
 * @param text what to do
 * @param basis why: the citation, or {@code common practice, no source}
 */
public record NextStep(String text, String basis) {
    /**
     * Checks that no part is missing.
     *
     * @param text what to do
     * @param basis why
     */
    public NextStep {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(basis, "basis");
    }
}
