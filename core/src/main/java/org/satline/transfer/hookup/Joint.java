package org.satline.transfer.hookup;

import org.satline.quantity.Parts;

/**
 * How a hose end is joined. Immutable, thread-safe.
 *
 * @param at the connection
 * @param tight whether it is screwed home; otherwise by a turn only
 */
public record Joint(String at, boolean tight) {
    /** {@inheritDoc} */
    public Joint {
        Parts.required("at", at);
    }
}
