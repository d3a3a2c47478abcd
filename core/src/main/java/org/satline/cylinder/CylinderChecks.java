package org.satline.cylinder;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.saturation.SaturationCurve;

/**
 * Checks cylinders and keeps the last checks, for who asks anew whenever a fact of a visit is typed: where those of a cylinder are the
 * same, so is its check, which costs milliseconds. For one thread.
 */
public final class CylinderChecks {
    private static final int MOST_KEPT = 8;

    private final Map<Facts, CheckedCylinder> kept = new HashMap<>();

    /** Nothing is checked yet. */
    public CylinderChecks() {}

    /** A curve is equal to itself alone: keep it. */
    private record Facts(Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {}

    /**
     * Checks a cylinder, once for the same facts.
     *
     * @param cylinder the cylinder
     * @param system the curve of the system's refrigerant
     * @param site the local atmosphere
     * @param day the day of the visit, where known
     * @return what {@link CylinderCheck#of} finds
     */
    public CheckedCylinder of(Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {
        Facts facts = new Facts(cylinder, system, site, day);
        CheckedCylinder known = kept.get(facts);
        if (known == null) {
            known = CylinderCheck.of(cylinder, system, site, day);
            if (kept.size() == MOST_KEPT) {
                kept.clear();
            }
            kept.put(facts, known);
        }
        return known;
    }
}
