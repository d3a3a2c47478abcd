package org.satline.measurement;

import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;

/**
 * What an instrument showed, before anything was made of it. Immutable, thread-safe.
 *
 * @param instrument name of the instrument
 * @param asShown what it showed: a gauge pressure, an absolute one, a temperature, a mass
 */
public record Shown(String instrument, Quantity<?> asShown) {
    /** {@inheritDoc} */
    public Shown {
        Parts.required("instrument asShown", instrument, asShown);
    }
}
