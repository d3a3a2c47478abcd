package org.satline.safety;

import java.util.Objects;

/**
 * Something to know before a hand is moved. Immutable, thread-safe.
 *
 * @param text what can hurt or go wrong, and what to do
 * @param basis the citation, or {@code common practice, no source}
 */
public record Caution(String text, String basis) {
    /**
     * Checks that no part is missing.
     *
     * @param text what can hurt or go wrong
     * @param basis the citation
     */
    public Caution {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(basis, "basis");
    }
}
