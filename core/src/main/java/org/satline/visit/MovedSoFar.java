package org.satline.visit;

import java.util.List;
import java.util.Objects;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * Refrigerant moved on this visit before the present readings. Immutable, thread-safe.
 *
 * @param net what went into the system less what came out, since the first reading
 * @param earlier settled readings on the way, in the order of time
 */
public record MovedSoFar(MassDifference net, List<EarlierReading> earlier) {
    /**
     * A settled reading before the present one.
     *
     * @param net what had gone into the system less what had come out by then
     * @param measured the quantity by which this metering device is judged, superheat or subcooling
     */
    public record EarlierReading(MassDifference net, TemperatureDifference measured) {
        /** {@inheritDoc} */
        public EarlierReading {
            Parts.required("net measured", net, measured);
        }
    }

    /** {@inheritDoc} */
    public MovedSoFar {
        Objects.requireNonNull(net, "net");
        earlier = Parts.list("earlier", earlier);
        if (net.kilograms() != 0 && earlier.isEmpty()) {
            throw new IllegalArgumentException(
                    "refrigerant was moved, yet no earlier reading is given; give the reading before the first step");
        }
    }

    /**
     * Returns the state before anything is moved.
     *
     * @return nothing moved, nothing read
     */
    public static MovedSoFar nothing() {
        return new MovedSoFar(MassDifference.ZERO, List.of());
    }
}
