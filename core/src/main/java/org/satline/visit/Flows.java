package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Step;
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
                .map(cylinder -> FlowCheck.ports(input.openPorts(), point(cylinder, systemCurve)))
                .orElse(List.of());
    }

    private static ConnectionPoint point(CylinderOnSite cylinder, SaturationCurve systemCurve) {
        return cylinder.pressure()
                .map(pressure -> new ConnectionPoint(
                        cylinder.valve(),
                        pressure,
                        List.of(new Step(
                                "pressure at the " + cylinder.valve(),
                                "p",
                                "reading",
                                pressure.value().toString(),
                                "gauge on the cylinder"))))
                .orElseGet(() -> ConnectionPoint.bySaturation(
                        cylinder.valve(), curve(cylinder.holding(), systemCurve), cylinder.temperature()));
    }

    /** The curve of what a cylinder holds; that of the system where it holds the same or nothing. */
    static SaturationCurve curve(Optional<Refrigerant> holding, SaturationCurve systemCurve) {
        return holding.filter(held -> !held.equals(systemCurve.refrigerant()))
                .map(SaturationCurves::of)
                .orElse(systemCurve);
    }
}
