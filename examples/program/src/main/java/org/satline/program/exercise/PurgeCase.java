package org.satline.program.exercise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Hose;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.planner.HookUpPlanner;

/**
 * A hose full of air beside one port of a running system and one cylinder.
 *
 * @param refrigerant what both hold
 * @param curve its saturation curve
 * @param air the atmosphere on site
 * @param charging whether it is to go into the system
 * @param role the port
 * @param port the pressure at the port
 * @param hose the hose
 */
record PurgeCase(
        Refrigerant refrigerant,
        SaturationCurve curve,
        Atmosphere air,
        boolean charging,
        SystemPort.Role role,
        Pressure port,
        Hose hose) {
    private static final String CYLINDER = "cylinder";
    private static final String HOSE = "hose";
    private static final Temperature AROUND = Temperature.ofCelsius(28);
    private static final Volume SIZE = Volume.ofLitres(20);

    /** The acts that free the hose of air, or why there are none. */
    HookUpPlan plan() {
        GasProperties gas = GasProperties.of(curve);
        HookUp parts = new HookUp(
                new HookUpGas(
                        refrigerant.safetyGroup().orElseThrow(),
                        refrigerant.isBlend(),
                        /* carbonDioxide= */ false,
                        gas),
                /* running= */ true,
                List.of(new SystemPort(
                        role,
                        SystemPort.Fitting.VALVE_CORE,
                        port,
                        AROUND,
                        /* liquid= */ role == SystemPort.Role.LIQUID_LINE)),
                Optional.empty(),
                List.of(new ServiceHose(HOSE, hose.systemEnd(), hose.cylinderEnd(), hose.bore(), hose.length())),
                List.of(new ServiceCylinder(
                        CYLINDER,
                        charging ? ServiceCylinder.Use.SOURCE : ServiceCylinder.Use.RECEIVER,
                        ServiceCylinder.Valves.ONE,
                        SIZE)),
                /* pump= */ false,
                /* machine= */ false,
                air,
                AROUND);
        return HookUpPlanner.plan(parts, state(parts), PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, CYLINDER));
    }

    private HookUpState state(HookUp parts) {
        Map<String, Opening> valves = new HashMap<>();
        parts.valves().forEach(valve -> valves.put(valve, Opening.SHUT));
        Map<String, VolumeState> volumes = new HashMap<>();
        parts.volumes().forEach((name, size) -> volumes.put(name, name.equals(CYLINDER) ? cylinder() : full(size)));
        return new HookUpState(valves, Map.of(), Set.of(), Set.of(), Set.of(), Set.of(), volumes, Set.of());
    }

    private VolumeState cylinder() {
        if (!charging) {
            return new VolumeState(
                    VolumeContent.NOTHING, Pressure.ofMicrons(500), GasOrigin.NONE, AROUND, Mass.ZERO, Mass.ZERO);
        }
        return new VolumeState(
                VolumeContent.LIQUID,
                curve.bubblePressure(AROUND),
                GasOrigin.SOURCE,
                AROUND,
                Mass.ofKilograms(SIZE.cubicMetres() * curve.bubbleLiquidDensity(AROUND.kelvins()) / 2),
                Mass.ZERO);
    }

    /** Full of air: 1.2 kg/m3 at sea level. */
    private VolumeState full(Volume size) {
        double density = 1.2
                * air.pressure().pascals()
                / Atmosphere.standard().pressure().pascals();
        return new VolumeState(
                VolumeContent.AIR,
                air.pressure(),
                GasOrigin.NONE,
                AROUND,
                Mass.ZERO,
                Mass.ofKilograms(size.cubicMetres() * density));
    }
}
