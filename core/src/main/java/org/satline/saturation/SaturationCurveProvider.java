package org.satline.saturation;

import java.util.Optional;
import org.satline.refrigerant.Refrigerant;

/** Offers saturation curves from outside the core; found through {@link java.util.ServiceLoader}. Implementations are thread-safe. */
public interface SaturationCurveProvider {
    /**
     * Returns the curve of a refrigerant.
     *
     * @param refrigerant the refrigerant
     * @return its curve; empty if this provider has none
     * @throws org.satline.resource.ResourceFormatException if it has one that is damaged; the caller may fall back to
     *     {@link SaturationCurves#solving}
     */
    Optional<SaturationCurve> curve(Refrigerant refrigerant);

    /**
     * Returns which provider is asked first.
     *
     * @return a higher number is asked before a lower one; the tables that ship with this library have 0, and so has one that says nothing
     */
    default int priority() {
        return 0;
    }
}
