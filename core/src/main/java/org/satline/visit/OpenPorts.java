package org.satline.visit;

import java.util.List;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;
import org.satline.visit.HookUpFacts.HosePort;

/**
 * Holds the pressures at open ports against the readings: by the one the flow is told, by the other the charge, and both are of one system.
 */
final class OpenPorts {
    /** What two readings of one pressure may lie apart beside their doubt; the pressure of a running system moves a little; our choice. */
    private static final PressureDifference MOVES = PressureDifference.ofPascals(50_000);
    /** Standard uncertainties beyond which two readings contradict each other; our choice. */
    private static final double BEYOND = 3;

    private OpenPorts() {}

    static void check(List<ConnectionPoint> ports, SystemReadings readings) {
        for (ConnectionPoint port : ports) {
            boolean low = port.kind() == PointKind.LOW_SIDE_PORT;
            readings.pressure(Place.SUCTION_PRESSURE)
                    .filter(read -> low ? isApart(port.pressure(), read) : isBelow(port.pressure(), read))
                    .ifPresent(read -> refuse(port, Place.SUCTION_PRESSURE, read));
            readings.pressure(Place.LIQUID_PRESSURE)
                    .filter(read -> low
                            ? isBelow(read, port.pressure())
                            : port.kind() == PointKind.HIGH_SIDE_LIQUID_PORT
                                    ? isApart(port.pressure(), read)
                                    : isBelow(port.pressure(), read))
                    .ifPresent(read -> refuse(port, Place.LIQUID_PRESSURE, read));
        }
    }

    private static boolean isApart(Reading<Pressure> one, Reading<Pressure> other) {
        return isBelow(one, other) || isBelow(other, one);
    }

    private static boolean isBelow(Reading<Pressure> one, Reading<Pressure> other) {
        double doubt = MOVES.pascals() + BEYOND * Math.hypot(one.standardUncertainty(), other.standardUncertainty());
        return !(one.value().pascals() >= other.value().pascals() - doubt);
    }

    private static void refuse(ConnectionPoint port, Place place, Reading<Pressure> read) {
        throw new IllegalArgumentException("openPorts: " + port.pressure().value() + " at "
                + HosePort.field(port.kind()) + " contradicts " + place.path() + ", " + read.value()
                + ", of the same running system; read both again");
    }
}
