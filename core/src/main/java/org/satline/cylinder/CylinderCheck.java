package org.satline.cylinder;

import java.time.LocalDate;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.saturation.SaturationCurve;

/** Checks a cylinder, once. */
public final class CylinderCheck {
    private CylinderCheck() {}

    /**
     * Works out everything that follows from a cylinder's stamps, label, weight, pressure and temperature.
     *
     * @param cylinder the cylinder
     * @param system the curve of the system's refrigerant
     * @param site the local atmosphere
     * @param day the day of the visit, where known
     * @return what was found
     */
    public static CheckedCylinder of(
            Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {
        throw new UnsupportedOperationException("body is moving");
    }
}
