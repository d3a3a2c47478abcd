package org.satline.cylinder;

import java.util.Objects;
import org.satline.quantity.Temperature;

/** A temperature at which something happens to a closed vessel, or why it does not happen. Immutable, thread-safe. */
public sealed interface VesselPoint {
    /**
     * It happens at this temperature.
     *
     * @param temperature the temperature
     */
    record At(Temperature temperature) implements VesselPoint {
        /** {@inheritDoc} */
        public At {
            Objects.requireNonNull(temperature, "temperature");
        }
    }

    /**
     * It has happened already at the coldest temperature that can be computed.
     *
     * @param coldest that temperature
     */
    record Always(Temperature coldest) implements VesselPoint {
        /** {@inheritDoc} */
        public Always {
            Objects.requireNonNull(coldest, "coldest");
        }
    }

    /**
     * It does not happen.
     *
     * @param reason why, or up to which temperature
     */
    record Never(String reason) implements VesselPoint {
        /** {@inheritDoc} */
        public Never {
            Objects.requireNonNull(reason, "reason");
        }
    }
}
