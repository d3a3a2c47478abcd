package org.satline.transfer.simulator;

import org.satline.quantity.Parts;

/**
 * An invariant broken by an act. Immutable, thread-safe.
 *
 * @param invariant which
 * @param place the volume, port, cylinder or hose end concerned
 */
public record Violation(Invariant invariant, String place) {
    /** {@inheritDoc} */
    public Violation {
        Parts.required("invariant place", invariant, place);
    }
}
