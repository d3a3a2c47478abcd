package org.satline.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.SystemReadings;
import org.satline.transfer.ConnectionPoint;

/**
 * What was found on one service visit. Immutable, thread-safe.
 *
 * @param title in words
 * @param date the day, where it is stated: retest dates are held against it, and no clock is read
 * @param site where
 * @param system the system
 * @param readings what was read on it while it ran
 * @param openPorts the ports of the running system to which a hose is or will be connected
 * @param cylinder the cylinder, where one is hooked up
 */
public record VisitInput(
        String title,
        Optional<LocalDate> date,
        Site site,
        ServicedSystem system,
        SystemReadings readings,
        List<ConnectionPoint> openPorts,
        Optional<CylinderOnSite> cylinder) {
    /**
     * Checks that no part is missing.
     *
     * @param title in words
     * @param date the day, where it is stated
     * @param site where
     * @param system the system
     * @param readings what was read on it while it ran
     * @param openPorts the ports of the running system to which a hose is or will be connected
     * @param cylinder the cylinder, where one is hooked up
     */
    public VisitInput {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(system, "system");
        Objects.requireNonNull(readings, "readings");
        openPorts = List.copyOf(openPorts);
        Objects.requireNonNull(cylinder, "cylinder");
    }
}
