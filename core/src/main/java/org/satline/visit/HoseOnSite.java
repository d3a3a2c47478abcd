package org.satline.visit;

import java.util.Objects;
import org.satline.transfer.Hose;
import org.satline.transfer.PointKind;

/**
 * A hose between a port of the system and the cylinder. Immutable, thread-safe.
 *
 * @param port the port at its system end
 * @param hose its fittings and its size, as it hangs now
 */
public record HoseOnSite(PointKind port, Hose hose) {
    /**
     * Checks that no part is missing.
     *
     * @param port the port at its system end
     * @param hose its fittings and its size
     */
    public HoseOnSite {
        Objects.requireNonNull(port, "port");
        Objects.requireNonNull(hose, "hose");
    }
}
