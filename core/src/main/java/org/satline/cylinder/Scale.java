package org.satline.cylinder;

import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * How the transfer is weighed. The expanded uncertainty is that of one weighing, coverage factor k = 2. Immutable, thread-safe.
 */
public sealed interface Scale {
    /**
     * Returns the expanded uncertainty of one weighing.
     *
     * @return k = 2
     */
    Mass expandedUncertainty();

    /**
     * The scale shows the running gross weight.
     *
     * @param reading the gross weight now
     * @param expandedUncertainty of one weighing, k = 2
     */
    record RunningGross(Mass reading, Mass expandedUncertainty) implements Scale {
        /** {@inheritDoc} */
        public RunningGross {
            Parts.required("reading expandedUncertainty", reading, expandedUncertainty);
        }
    }

    /**
     * The scale was zeroed after hook-up and shows what has come in since.
     *
     * @param grossBefore the gross weight found before the hoses were connected
     * @param transferred what the scale shows since it was zeroed
     * @param expandedUncertainty of one weighing, k = 2
     */
    record ZeroedAfterHookUp(Mass grossBefore, Mass transferred, Mass expandedUncertainty) implements Scale {
        /** {@inheritDoc} */
        public ZeroedAfterHookUp {
            Parts.required("grossBefore transferred", grossBefore, transferred);
            Parts.required("expandedUncertainty", expandedUncertainty);
        }
    }
}
