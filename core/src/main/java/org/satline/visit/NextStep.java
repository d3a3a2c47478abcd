package org.satline.visit;

import java.util.List;
import java.util.Objects;
import org.satline.transfer.PointKind;

/**
 * Something to do next. Immutable, thread-safe.
 *
 * @param text what to do
 * @param basis why: the citation, or {@code common practice, no source}
 * @param through the ports of the system through which refrigerant moves by this step, to or from the cylinder that is hooked up; empty where none moves
 */
public record NextStep(String text, String basis, List<PointKind> through) {
    /**
     * Checks that no part is missing.
     *
     * @param text what to do
     * @param basis why
     * @param through the ports through which refrigerant moves by this step
     */
    public NextStep {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(basis, "basis");
        through = List.copyOf(through);
    }

    /**
     * A step by which no refrigerant moves.
     *
     * @param text what to do
     * @param basis why
     */
    public NextStep(String text, String basis) {
        this(text, basis, List.of());
    }
}
