package org.satline.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.charge.OperatingConditions;
import org.satline.cylinder.Cylinder;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;
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
 * @param cylinders the cylinders at hand, each with a name of its own
 * @param connected the name of the one that is connected, where one is
 * @param hookUp what is said about hoses, manifold and ports
 */
public record Visit(
        String title,
        Optional<LocalDate> date,
        Site site,
        ServicedSystem system,
        SystemReadings readings,
        OperatingConditions conditions,
        MovedSoFar moved,
        List<ConnectionPoint> openPorts,
        List<Cylinder> cylinders,
        Optional<String> connected,
        HookUpFacts hookUp) {
    /** {@inheritDoc} */
    public Visit {
        Parts.required("title date site system readings conditions", title, date, site, system, readings, conditions);
        Parts.required("moved connected hookUp", moved, connected, hookUp);
        openPorts = Parts.list("openPorts", openPorts);
        cylinders = Parts.list("cylinders", cylinders);
        if (openPorts.stream().map(ConnectionPoint::kind).distinct().count() < openPorts.size()) {
            throw new IllegalArgumentException("an open port is named twice; name each port once");
        }
        if (cylinders.stream().map(Cylinder::name).distinct().count() < cylinders.size()) {
            throw new IllegalArgumentException("two cylinders have one name; give each a name of its own");
        }
        if (system.build().evacuated()
                && (readings.pressure(Place.SUCTION_PRESSURE).isPresent()
                        || readings.pressure(Place.LIQUID_PRESSURE).isPresent())) {
            throw new IllegalArgumentException("system.evacuated is true, and pressures were read while it ran;"
                    + " leave the readings out before the first filling, or evacuated after it");
        }
        OpenPorts.check(openPorts, readings);
        List<String> names = cylinders.stream().map(Cylinder::name).toList();
        if (connected.isPresent() && !names.contains(connected.get())) {
            throw new IllegalArgumentException("connected " + PlainText.quoted(connected.get())
                    + " is none of the cylinders " + names + "; name one of them");
        }
    }
}
