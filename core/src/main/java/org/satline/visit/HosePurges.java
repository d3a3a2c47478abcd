package org.satline.visit;

import java.util.List;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.SafetyGroup;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.HoseSide;
import org.satline.transfer.PurgePlan;
import org.satline.transfer.PurgePlanner;
import org.satline.transfer.PurgePlanner.Purpose;
import org.satline.transfer.VesselState;
import org.satline.visit.HookUpReport.HosePurge;

/** Plans the purge of every hose between the system and the cylinder. */
final class HosePurges {
    /** Where no safety group is published the strictest cautions hold. */
    private static final SafetyGroup UNKNOWN_GROUP = SafetyGroup.B3;

    private HosePurges() {}

    static List<HosePurge> of(VisitInput input, CylinderOnSite cylinder, SaturationCurve systemCurve) {
        return cylinder.hoses().stream()
                .map(hose -> plan(hose, input, cylinder, systemCurve))
                .toList();
    }

    private static HosePurge plan(
            HoseOnSite hose, VisitInput input, CylinderOnSite cylinder, SaturationCurve systemCurve) {
        Pressure port = pressureAt(hose, input);
        SaturationCurve inside = Flows.curve(cylinder.holding(), systemCurve);
        Density vapourOfSystem = inSystem(systemCurve, port);
        PurgePlan plan = plan(hose, input, cylinder, port, vapourOfSystem, inside);
        boolean fromCylinder = plan instanceof PurgePlan.Purge purge && purge.from() == HoseSide.CYLINDER;
        return new HosePurge(
                hose, fromCylinder ? plan(hose, input, cylinder, port, swept(cylinder, inside), inside) : plan);
    }

    private static PurgePlan plan(
            HoseOnSite hose,
            VisitInput input,
            CylinderOnSite cylinder,
            Pressure port,
            Density sweeping,
            SaturationCurve inside) {
        Atmosphere site = input.site().atmosphere();
        return PurgePlanner.plan(
                hose.hose(),
                cylinder.receives() ? Purpose.RECOVERY : Purpose.CHARGING,
                state(port, site),
                inCylinder(cylinder, inside, site),
                input.system().refrigerant().safetyGroup().orElse(UNKNOWN_GROUP),
                sweeping);
    }

    private static Pressure pressureAt(HoseOnSite hose, VisitInput input) {
        return input.openPorts().stream()
                .filter(point -> point.kind() == hose.port())
                .map(ConnectionPoint::pressure)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a hose hangs at the " + hose.port()
                        + ", whose pressure is not known; read it or name the port among the open ones"));
    }

    private static Density inSystem(SaturationCurve curve, Pressure port) {
        return Density.ofKilogramsPerCubicMetre(curve.dewVapourDensity(curve.dewTemperatureK(port.pascals())));
    }

    private static VesselState inCylinder(CylinderOnSite cylinder, SaturationCurve inside, Atmosphere site) {
        if (cylinder.holding().isEmpty()) {
            return VesselState.EVACUATED;
        }
        if (cylinder.pressure().isEmpty() && cylinder.isOn(inside)) {
            return state(inside.dewPressure(cylinder.temperature()), site);
        }
        return cylinder.pressureInside(inside)
                .map(pressure -> state(pressure, site))
                .orElse(VesselState.PRESSURISED);
    }

    /** Vapour of the cylinder; off its line that of the nearer end. */
    private static Density swept(CylinderOnSite cylinder, SaturationCurve inside) {
        double kelvins = Math.max(
                inside.minTemperatureK(), Math.min(cylinder.temperature().kelvins(), inside.maxTemperatureK()));
        return Density.ofKilogramsPerCubicMetre(inside.dewVapourDensity(kelvins));
    }

    private static VesselState state(Pressure pressure, Atmosphere site) {
        return pressure.pascals() > site.pressure().pascals() ? VesselState.PRESSURISED : VesselState.BELOW_ATMOSPHERE;
    }
}
