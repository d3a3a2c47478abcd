package org.satline.cylinder;

import org.satline.explanation.Figure;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;

/** A temperature at which something happens to a closed vessel, or that it does not happen. Immutable, thread-safe. */
public sealed interface VesselPoint {
    /**
     * It happens at this temperature.
     *
     * @param temperature the temperature
     */
    record At(Temperature temperature) implements VesselPoint {
        /** {@inheritDoc} */
        public At {
            Parts.required("temperature", temperature);
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
            Parts.required("coldest", coldest);
        }
    }

    /**
     * It does not happen.
     *
     * @param bound what it stays below: the density of the lightest full liquid, or the temperature up to which it was looked for
     */
    record Never(Figure bound) implements VesselPoint {
        /** {@inheritDoc} */
        public Never {
            Parts.required("bound", bound);
        }
    }

    /**
     * Whether it has happened by a temperature.
     *
     * @param temperature the temperature
     * @return true where it happens at it or below
     */
    default boolean isBy(Temperature temperature) {
        return this instanceof Always
                || (this instanceof At at && at.temperature().compareTo(temperature) <= 0);
    }
}
