package org.satline.visit;

import org.satline.quantity.Parts;
import org.satline.transfer.Hose;
import org.satline.transfer.PointKind;

/**
 * A hose between a port of the system and the cylinder. Immutable, thread-safe.
 *
 * @param port the port at its system end
 * @param hose its fittings and its size, as it hangs now
 */
public record HoseOnSite(PointKind port, Hose hose) {
    /** {@inheritDoc} */
    public HoseOnSite {
        Parts.required("port hose", port, hose);
    }
}
