package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.Volume;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeState;

/**
 * A hook-up with one part more than another, as if that part had been there from the beginning. What is not known of a part is as usual
 * in the trade: common practice, no source. Immutable.
 *
 * @param hookUp its parts
 * @param state how they stand
 */
record FittedHookUp(HookUp hookUp, HookUpState state) {
    private static final Length BORE = Length.ofMillimetres(4.8);
    private static final Length LENGTH = Length.ofFeet(5);
    private static final Volume CHAMBER = Volume.ofLitres(0.01);
    private static final Temperature EVAPORATING = Temperature.ofCelsius(5);
    private static final Temperature SUCTION_LINE = Temperature.ofCelsius(15);
    private static final TemperatureDifference CONDENSING_ABOVE_AIR = TemperatureDifference.ofKelvins(12);
    private static final Temperature COLD = Temperature.ofCelsius(5);
    /** The warmest water in which a cylinder may stand. */
    private static final Temperature WARM = Temperature.ofCelsius(40);
    /** Liquid in a cylinder that is as good as new, as a share of its volume. */
    private static final double FULL = 0.6;

    /** The hook-up with a part; several where the part comes in several forms, none where it cannot be put in or is there already. */
    static List<FittedHookUp> with(PlanPart part, HookUp hookUp, HookUpState state, PlanTask task) {
        FittedHookUp bare = new FittedHookUp(hookUp, state);
        return switch (part) {
            case VACUUM_PUMP -> bare.withPump();
            case CORE_TOOL -> bare.withCoreTools();
            case SHUT_OFF_AT_PORT -> bare.withShutOffs();
            case OTHER_HOSE -> bare.withOtherHose();
            case MANIFOLD -> bare.withManifold();
            case COLD_CYLINDER, WARM_SOURCE, OTHER_CYLINDER -> bare.withCylinder(part, task);
            case RUNNING_SYSTEM -> bare.running();
            case RECOVERY_MACHINE -> bare.withMachine();
            // no order of acts is known for these
            case REGULATOR, SERVICE_PORT -> List.of();
        };
    }

    private List<FittedHookUp> withPump() {
        if (hookUp.pump()) {
            return List.of();
        }
        List<ServiceHose> hoses = new ArrayList<>(hookUp.hoses());
        boolean own = hookUp.manifold()
                .filter(it -> it.valves() == 4 || it.centreConnections() == 2)
                .isPresent();
        if (own && hoses.stream().noneMatch(each -> each.name().startsWith("pump"))) {
            hoses.add(hose("pump-hose", EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE));
        }
        return List.of(made(copy(hookUp.running(), hookUp.ports(), hookUp.manifold(), hoses, true), Map.of()));
    }

    /** With the hose from its outlet to the cylinder; what both hold is the last job's. */
    private List<FittedHookUp> withMachine() {
        boolean hose = hookUp.hoses().stream().anyMatch(each -> each.name().equals(HookUp.OUTLET_HOSE));
        if (hookUp.machine() && hose) {
            return List.of();
        }
        List<ServiceHose> hoses = new ArrayList<>(hookUp.hoses());
        if (!hose) {
            hoses.add(hose(HookUp.OUTLET_HOSE, EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE));
        }
        HookUp with = new HookUp(
                hookUp.gas(),
                hookUp.running(),
                hookUp.ports(),
                hookUp.manifold(),
                hoses,
                hookUp.cylinders(),
                hookUp.pump(),
                /* machine= */ true,
                hookUp.atmosphere(),
                hookUp.ambient());
        return List.of(made(with, Map.of()));
    }

    private List<FittedHookUp> withCoreTools() {
        List<SystemPort> ports = new ArrayList<>();
        Map<String, Opening> open = new HashMap<>();
        for (SystemPort port : hookUp.ports()) {
            ports.add(
                    port.hasValve()
                            ? port
                            : new SystemPort(
                                    port.role(),
                                    SystemPort.Fitting.CORE_TOOL,
                                    port.pressure(),
                                    port.temperature(),
                                    port.liquid()));
            if (!port.hasValve() && isTaken(port.name())) {
                open.put(port.name(), Opening.OPEN);
            }
        }
        return ports.equals(hookUp.ports())
                ? List.of()
                : List.of(made(copy(hookUp.running(), ports, hookUp.manifold(), hookUp.hoses(), hookUp.pump()), open));
    }

    private boolean isTaken(String connection) {
        return state.joints().values().stream().anyMatch(joint -> joint.at().equals(connection));
    }

    /** Hoses that are meant for a port with a hand valve there. */
    private List<FittedHookUp> withShutOffs() {
        List<ServiceHose> hoses = new ArrayList<>();
        Map<String, Opening> open = new HashMap<>();
        for (ServiceHose each : hookUp.hoses()) {
            boolean atPort = hookUp.manifold().isEmpty()
                    || each.name().startsWith("low")
                    || each.name().startsWith("high");
            hoses.add(
                    atPort
                            ? new ServiceHose(
                                    each.name(),
                                    EndFitting.OPEN_CLOSE_VALVE,
                                    each.cylinderEnd(),
                                    each.bore(),
                                    each.length())
                            : each);
            if (atPort && state.joint(each.ends().get(0)).isPresent()) {
                open.put(each.ends().get(0), Opening.OPEN);
            }
        }
        return hoses.equals(hookUp.hoses())
                ? List.of()
                : List.of(made(copy(hookUp.running(), hookUp.ports(), hookUp.manifold(), hoses, hookUp.pump()), open));
    }

    private List<FittedHookUp> withOtherHose() {
        List<FittedHookUp> all = new ArrayList<>();
        for (EndFitting system : List.of(EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE)) {
            List<ServiceHose> hoses = new ArrayList<>();
            Set<String> others = new HashSet<>();
            for (ServiceHose each : hookUp.hoses()) {
                boolean side = each.name().startsWith("low")
                        || each.name().startsWith("high")
                        || each.name().startsWith("pump")
                        || each.name().equals(HookUp.OUTLET_HOSE);
                hoses.add(side ? each : hose(each.name(), system, EndFitting.OPEN_CLOSE_VALVE));
                if (!side) {
                    others.add(each.name());
                }
            }
            if (others.isEmpty()) {
                hoses.add(hose("centre-hose", system, EndFitting.OPEN_CLOSE_VALVE));
                others.add("centre-hose");
            }
            HookUp with = copy(hookUp.running(), hookUp.ports(), hookUp.manifold(), hoses, hookUp.pump());
            all.add(new FittedHookUp(with, carried(with, Map.of(), others)));
        }
        return all;
    }

    private List<FittedHookUp> withManifold() {
        if (hookUp.manifold().isPresent()) {
            return List.of();
        }
        List<ServiceHose> hoses = new ArrayList<>(List.of(
                hose("low-hose", EndFitting.OPEN_CLOSE_VALVE, EndFitting.PLAIN_FLARE),
                hose("high-hose", EndFitting.OPEN_CLOSE_VALVE, EndFitting.PLAIN_FLARE)));
        Set<String> off = new HashSet<>();
        for (ServiceHose each : hookUp.hoses()) {
            off.add(each.name());
            hoses.add(new ServiceHose(
                    hoses.size() == 2 ? "centre-hose" : each.name(),
                    each.systemEnd(),
                    each.cylinderEnd(),
                    each.bore(),
                    each.length()));
        }
        HookUp with =
                copy(hookUp.running(), hookUp.ports(), Optional.of(new Manifold(2, 1, CHAMBER)), hoses, hookUp.pump());
        return List.of(new FittedHookUp(with, carried(with, Map.of(), off)));
    }

    private List<FittedHookUp> withCylinder(PlanPart part, PlanTask task) {
        Optional<ServiceCylinder> found = hookUp.cylinder(task.cylinder());
        if (found.isEmpty()) {
            return List.of();
        }
        ServiceCylinder cylinder = found.get();
        String name = cylinder.name();
        boolean receives = cylinder.use() == ServiceCylinder.Use.RECEIVER;
        VolumeState held = state.volume(name);
        if (part == PlanPart.WARM_SOURCE || part == PlanPart.COLD_CYLINDER) {
            if (receives != (part == PlanPart.COLD_CYLINDER)) {
                return List.of();
            }
            FittedHookUp other = holding(name, held.refrigerant(), receives ? COLD : WARM, held.origin());
            return receives
                    ? List.of(other, new FittedHookUp(hookUp, state.withVolume(name, hookUp.evacuated())))
                    : List.of(other);
        }
        boolean in = task.kind() == PlanTask.Kind.STEP_IN || (task.kind() != PlanTask.Kind.STEP_OUT && !receives);
        if (!in && receives) {
            return List.of(new FittedHookUp(hookUp, state.withVolume(name, hookUp.evacuated())));
        }
        if (in && !receives) {
            double full =
                    hookUp.gas().properties().liquidDensity(hookUp.ambient().kelvins());
            Mass mass = Mass.ofKilograms(full * FULL * cylinder.waterCapacity().cubicMetres());
            return List.of(holding(name, mass, hookUp.ambient(), GasOrigin.SOURCE));
        }
        return List.of();
    }

    private FittedHookUp holding(String name, Mass mass, Temperature temperature, GasOrigin origin) {
        return new FittedHookUp(
                hookUp,
                state.withVolume(name, hookUp.cylinder(name, mass, temperature, origin, Optional.empty(), false)));
    }

    /** The system started, with pressures as a running one has them. */
    private List<FittedHookUp> running() {
        if (hookUp.running()) {
            return List.of();
        }
        List<SystemPort> ports = new ArrayList<>();
        for (SystemPort port : hookUp.ports()) {
            boolean low = port.role() == SystemPort.Role.LOW_SIDE;
            Temperature saturation = low
                    ? EVAPORATING
                    : Temperature.ofKelvins(hookUp.ambient().kelvins() + CONDENSING_ABOVE_AIR.kelvins());
            ports.add(new SystemPort(
                    port.role(),
                    port.fitting(),
                    Pressure.ofPascals(hookUp.gas().properties().bubblePressurePa(saturation.kelvins())),
                    low ? SUCTION_LINE : saturation,
                    port.role() == SystemPort.Role.LIQUID_LINE));
        }
        return List.of(made(copy(true, ports, hookUp.manifold(), hookUp.hoses(), hookUp.pump()), Map.of()));
    }

    private static ServiceHose hose(String name, EndFitting system, EndFitting cylinder) {
        return new ServiceHose(name, system, cylinder, BORE, LENGTH);
    }

    private HookUp copy(
            boolean running,
            List<SystemPort> ports,
            Optional<Manifold> manifold,
            List<ServiceHose> hoses,
            boolean pump) {
        return new HookUp(
                hookUp.gas(),
                running,
                ports,
                manifold,
                hoses,
                hookUp.cylinders(),
                pump,
                hookUp.machine(),
                hookUp.atmosphere(),
                hookUp.ambient());
    }

    private FittedHookUp made(HookUp with, Map<String, Opening> open) {
        return new FittedHookUp(with, carried(with, open, Set.of()));
    }

    /** The state as far as its parts are still there; hoses that were exchanged are off and hold air. */
    private HookUpState carried(HookUp with, Map<String, Opening> open, Set<String> exchanged) {
        Map<String, VolumeState> volumes = new HashMap<>(state.volumes());
        volumes.keySet()
                .removeIf(name -> exchanged.contains(name)
                        || !with.volumes().containsKey(name)
                        || !Objects.equals(
                                hookUp.volumes().get(name), with.volumes().get(name)));
        HookUpState before = with.before(volumes);
        Map<String, Opening> valves = new HashMap<>(before.valves());
        state.valves().forEach((name, opening) -> valves.computeIfPresent(name, (same, shut) -> opening));
        Map<String, Joint> joints = new HashMap<>(state.joints());
        joints.keySet()
                .removeIf(end -> !with.hoseEnds().contains(end)
                        || exchanged.contains(with.hose(end).orElseThrow().name()));
        joints.values().removeIf(joint -> !with.connections().contains(joint.at()));
        Set<String> capped = new HashSet<>(before.capped());
        joints.values().forEach(joint -> capped.remove(joint.at()));
        exchanged.forEach(name -> with.hose(name).ifPresent(each -> {
            valves.computeIfPresent(each.ends().get(0), (end, was) -> Opening.SHUT);
            valves.computeIfPresent(each.ends().get(1), (end, was) -> Opening.SHUT);
        }));
        valves.putAll(open);
        return new HookUpState(
                valves, joints, state.turned(), state.inverted(), capped, state.running(), before.volumes(), Set.of());
    }
}
