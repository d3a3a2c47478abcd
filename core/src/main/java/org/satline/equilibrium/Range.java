package org.satline.equilibrium;

import org.satline.quantity.Parts;

/**
 * A closed interval in the SI unit of its quantity.
 *
 * @param low lower limit
 * @param high upper limit
 */
public record Range(double low, double high) {
    /** {@inheritDoc} */
    public Range {
        Parts.numbers("low high", low, high);
    }
}
