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
        /**
         * Checks that the temperature is given.
         *
         * @param temperature the temperature
         */
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
        /**
         * Checks that the temperature is given.
         *
         * @param coldest that temperature
         */
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
        /**
         * Checks that the reason is given.
         *
         * @param reason why
         */
        public Never {
            Objects.requireNonNull(reason, "reason");
        }
    }
}
