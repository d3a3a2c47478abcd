package org.satline.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.OperatingConditions;
import org.satline.charge.SystemReadings;
import org.satline.quantity.Parts;
import org.satline.transfer.ConnectionPoint;

/**
 * What was found on one service visit. Immutable, thread-safe.
 *
 * @param title in words
 * @param date the day, where it is stated: retest dates are held against it, and no clock is read
 * @param site where
 * @param system the system
 * @param readings what was read on it while it ran
 * @param conditions how the system ran before the readings; a series that settled is one of the judged superheat or subcooling, in kelvins
 * @param moved refrigerant moved on this visit before the readings, with what was read on the way
 * @param openPorts the ports of the running system to which a hose is or will be connected
 * @param cylinder the cylinder, where one is hooked up
 */
public record VisitInput(
        String title,
        Optional<LocalDate> date,
        Site site,
        ServicedSystem system,
        SystemReadings readings,
        OperatingConditions conditions,
        MovedSoFar moved,
        List<ConnectionPoint> openPorts,
        Optional<CylinderOnSite> cylinder) {
    /** {@inheritDoc} */
    public VisitInput {
        Parts.required("title date site system readings conditions", title, date, site, system, readings, conditions);
        Parts.required("moved", moved);
        openPorts = List.copyOf(openPorts);
        if (openPorts.stream().map(ConnectionPoint::kind).distinct().count() < openPorts.size()) {
            throw new IllegalArgumentException("an open port is named twice; name each port once");
        }
        Objects.requireNonNull(cylinder, "cylinder");
    }

    /**
     * A visit that begins: nothing has been moved yet, and nothing beyond the readings is known.
     *
     * @param title in words
     * @param date the day, where it is stated
     * @param site where
     * @param system the system
     * @param readings what was read on it while it ran
     * @param openPorts the ports of the running system to which a hose is or will be connected
     * @param cylinder the cylinder, where one is hooked up
     */
    public VisitInput(
            String title,
            Optional<LocalDate> date,
            Site site,
            ServicedSystem system,
            SystemReadings readings,
            List<ConnectionPoint> openPorts,
            Optional<CylinderOnSite> cylinder) {
        this(
                title,
                date,
                site,
                system,
                readings,
                OperatingConditions.unknown(),
                MovedSoFar.nothing(),
                openPorts,
                cylinder);
    }
}
