package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.PressureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowCheck;

/** Which way refrigerant would flow between each open port and the cylinder. */
final class Flows {
    private Flows() {}

    static List<Flow> of(VisitInput input, SaturationCurve systemCurve) {
        return input.cylinder()
                .flatMap(cylinder -> point(cylinder, systemCurve))
                .map(point -> FlowCheck.ports(input.openPorts(), point))
                .orElse(List.of());
    }

    /** Nothing where the cylinder has no gauge and is off the saturation line of what it holds: then no pressure is known to flow by. */
    private static Optional<ConnectionPoint> point(CylinderOnSite cylinder, SaturationCurve systemCurve) {
        SaturationCurve inside = curve(cylinder.holding(), systemCurve);
        if (cylinder.pressure().isEmpty() && !cylinder.isOn(inside)) {
            return Optional.empty();
        }
        return Optional.of(cylinder.pressure()
                .map(pressure -> new ConnectionPoint(
                        cylinder.valve(),
                        pressure,
                        PressureDifference.ofPascals(
                                Math.abs(cylinder.pressureUncertainty().pascals())),
                        List.of(new Step(
                                "pressure at the " + cylinder.valve(),
                                "p",
                                "reading",
                                pressure.toString(),
                                "gauge on the cylinder"))))
                .orElseGet(() -> ConnectionPoint.bySaturation(
                        cylinder.valve(), inside, cylinder.temperature(), cylinder.temperatureUncertainty())));
    }

    /** The curve of what a cylinder holds; that of the system where it holds the same or nothing. */
    static SaturationCurve curve(Optional<Refrigerant> holding, SaturationCurve systemCurve) {
        return holding.filter(held -> !held.equals(systemCurve.refrigerant()))
                .map(SaturationCurves::of)
                .orElse(systemCurve);
    }
}
