package org.satline.safety;

import org.satline.quantity.Parts;

/**
 * Something to know before a hand is moved. Immutable, thread-safe.
 *
 * @param text what can hurt or go wrong, and what to do
 * @param basis the citation, or {@code common practice, no source}
 */
public record Caution(String text, String basis) {
    /** {@inheritDoc} */
    public Caution {
        Parts.required("text basis", text, basis);
    }
}
