package org.satline.visit;

import java.util.List;
import org.satline.quantity.Parts;
import org.satline.transfer.PointKind;

/**
 * Something to do next. Immutable, thread-safe.
 *
 * @param text what to do
 * @param basis why: the citation, or {@code common practice, no source}
 * @param through the ports of the system through which refrigerant moves by this step, to or from the cylinder that is hooked up; empty where none moves
 */
public record NextStep(String text, String basis, List<PointKind> through) {
    /** {@inheritDoc} */
    public NextStep {
        Parts.required("text basis", text, basis);
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
