package org.satline.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Valve;
import org.satline.filling.Provenance;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.SafetyGroup;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;
import org.satline.visit.HookUpFacts.HoseOnSite;

/** The hook-up of a visit as the network that the planner knows. For one visit and one thread. */
final class HookUpSite {
    /** The cylinder that is connected. */
    static final String CYLINDER = "cylinder";
    /** The cylinder to which the hose goes next. */
    static final String NEXT = "next-cylinder";

    private static final String LOW_SIDE = SystemPort.Role.LOW_SIDE.code();
    private static final String LIQUID_LINE = SystemPort.Role.LIQUID_LINE.code();
    /** Where no safety group is published the strictest cautions hold. */
    private static final SafetyGroup UNKNOWN_GROUP = SafetyGroup.B3;
    /** Hoses to the system that nobody described: 1/4 in, 5 ft, a hand valve at the port; common practice, no source. */
    private static final Length USUAL_BORE = Length.ofMillimetres(4.8);

    private static final Length USUAL_LENGTH = Length.ofFeet(5);
    /** A chamber of a manifold; common practice, no source. */
    private static final Volume CHAMBER = Volume.ofLitres(0.01);

    private final Visit visit;
    private final CheckedCylinder connected;
    private final Optional<CheckedCylinder> next;
    private final SaturationCurve curve;
    private final HoseOnSite hose;
    private final boolean manifold;
    private final String hoseName;

    HookUpSite(Visit visit, CheckedCylinder connected, Optional<CheckedCylinder> next, SaturationCurve curve) {
        this.visit = visit;
        this.connected = connected;
        this.next = next;
        this.curve = curve;
        hose = visit.hookUp().hoses().get(0);
        manifold = visit.hookUp().manifold().isPresent() || TransferDesk.throughManifold(visit);
        hoseName = manifold ? "centre-hose" : "direct-hose";
    }

    HookUp network() {
        List<ServiceHose> hoses = new ArrayList<>();
        if (manifold) {
            hoses.add(usual("low-hose"));
            hoses.add(usual("high-hose"));
        }
        hoses.add(new ServiceHose(
                hoseName,
                hose.hose().systemEnd(),
                hose.hose().cylinderEnd(),
                hose.hose().bore(),
                hose.hose().length()));
        if (visit.hookUp().recoveryMachine()) {
            hoses.add(new ServiceHose(
                    HookUp.OUTLET_HOSE, EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE, USUAL_BORE, USUAL_LENGTH));
        }
        List<ServiceCylinder> cylinders = new ArrayList<>(List.of(part(CYLINDER, connected)));
        next.ifPresent(each -> cylinders.add(part(NEXT, each)));
        int valves = visit.hookUp()
                .manifold()
                .map(HookUpFacts.ManifoldOnSite::valves)
                .orElse(2);
        return new HookUp(
                gas(),
                /* running= */ true,
                ports(),
                manifold ? Optional.of(new Manifold(valves, 1, CHAMBER)) : Optional.empty(),
                hoses,
                cylinders,
                visit.hookUp().vacuumPump(),
                visit.hookUp().recoveryMachine(),
                visit.site().atmosphere(),
                ambient());
    }

    private static ServiceHose usual(String name) {
        return new ServiceHose(name, EndFitting.OPEN_CLOSE_VALVE, EndFitting.PLAIN_FLARE, USUAL_BORE, USUAL_LENGTH);
    }

    private HookUpGas gas() {
        var refrigerant = visit.system().refrigerant();
        return new HookUpGas(
                refrigerant.safetyGroup().orElse(UNKNOWN_GROUP),
                refrigerant.isBlend(),
                refrigerant.designation().equals("R-744"),
                GasProperties.of(curve));
    }

    private Temperature ambient() {
        return visit.readings()
                .temperature(Place.OUTDOOR_AIR)
                .map(Reading::value)
                .orElseGet(() -> connected.cylinder().temperature().value());
    }

    private List<SystemPort> ports() {
        List<SystemPort> ports = new ArrayList<>();
        for (ConnectionPoint point : visit.openPorts()) {
            boolean low = point.kind() == PointKind.LOW_SIDE_PORT;
            boolean liquid = point.kind() == PointKind.HIGH_SIDE_LIQUID_PORT;
            Temperature temperature = visit.readings()
                    .temperature(low ? Place.SUCTION_LINE : liquid ? Place.LIQUID_LINE : Place.DISCHARGE_LINE)
                    .map(Reading::value)
                    .orElseGet(this::ambient);
            ports.add(new SystemPort(
                    low ? SystemPort.Role.LOW_SIDE : liquid ? SystemPort.Role.LIQUID_LINE : SystemPort.Role.DISCHARGE,
                    visit.hookUp().fittings().getOrDefault(point.kind(), SystemPort.Fitting.VALVE_CORE),
                    point.pressure().value(),
                    temperature,
                    liquid));
        }
        return ports;
    }

    private static ServiceCylinder part(String name, CheckedCylinder checked) {
        Cylinder it = checked.cylinder();
        boolean disposable = it.stamps().refillable().equals(Optional.of(false));
        return new ServiceCylinder(
                name,
                it.role() == Role.RECEIVER
                        ? ServiceCylinder.Use.RECEIVER
                        : disposable ? ServiceCylinder.Use.DISPOSABLE : ServiceCylinder.Use.SOURCE,
                disposable ? ServiceCylinder.Valves.ONE : ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                it.stamps().volume());
    }

    /** How everything stands; {@code hangs}: the hose is on the cylinder already. */
    HookUpState state(HookUp network, boolean hangs) {
        Map<String, VolumeState> known = new HashMap<>();
        VolumeContent chambers =
                visit.hookUp().manifold().map(HookUpFacts.ManifoldOnSite::holds).orElse(VolumeContent.AIR);
        if (manifold) {
            boolean open = isOpenToPorts(chambers);
            // what is open to a port holds what stands there, whatever the rest of the manifold holds
            VolumeContent low = open ? VolumeContent.VAPOUR : chambers;
            for (String name : List.of(Manifold.LOW_CHAMBER, "low-hose")) {
                known.put(name, content(network, name, low, GasOrigin.SYSTEM, lowPressure()));
            }
            VolumeContent centre = isOnTheLine(hangs) ? VolumeContent.LIQUID : low;
            known.put(
                    Manifold.CENTRE_CHAMBER,
                    content(network, Manifold.CENTRE_CHAMBER, centre, GasOrigin.SYSTEM, linePressure(centre)));
            Optional<SystemPort> port = highPort(network).filter(unused -> open);
            VolumeContent high = port.map(each -> each.liquid() ? VolumeContent.LIQUID : VolumeContent.VAPOUR)
                    .orElse(low);
            for (String name : List.of(Manifold.HIGH_CHAMBER, "high-hose")) {
                known.put(
                        name,
                        content(
                                network,
                                name,
                                high,
                                GasOrigin.SYSTEM,
                                port.map(SystemPort::pressure).orElseGet(this::lowPressure)));
            }
        }
        known.put(hoseName, content(network, hoseName, hose.holds(), hose.origin(), hosePressure()));
        known.put(CYLINDER, held(network, CYLINDER, connected));
        next.ifPresent(each -> known.put(NEXT, held(network, NEXT, each)));
        if (hangs && throughMachine(network)) {
            known.put(HookUp.MACHINE_INLET, network.evacuated());
            known.put(HookUp.MACHINE_OUTLET, network.evacuated());
            known.put(
                    HookUp.OUTLET_HOSE,
                    network.vapour(HookUp.OUTLET_HOSE, known.get(CYLINDER).pressure(), GasOrigin.RECOVERED));
        }
        HookUpState state = upsideDown(network.before(known));
        return hangs || chambers != VolumeContent.AIR ? joined(state, network, hangs) : state;
    }

    /** A ready hose goes to a receiver that no port feeds through the recovery machine alone. */
    private boolean throughMachine(HookUp network) {
        Optional<Pressure> inside = connected.inside().map(Reading::value);
        return network.machine()
                && connected.cylinder().role() == Role.RECEIVER
                && inside.filter(pressure -> network.ports().stream()
                                .allMatch(port -> port.pressure().pascals() - pressure.pascals() <= HookUp.certainPa()))
                        .isPresent();
    }

    private static boolean isOpenToPorts(VolumeContent chambers) {
        return chambers == VolumeContent.VAPOUR || chambers == VolumeContent.LIQUID;
    }

    private static Optional<SystemPort> highPort(HookUp network) {
        return network.ports().stream()
                .filter(port -> port.role() != SystemPort.Role.LOW_SIDE)
                .findFirst();
    }

    /** A centre hose full of this system's liquid was left open to the liquid line, as the wait after a step needs. */
    private boolean isOnTheLine(boolean hangs) {
        return hangs && hose.holds() == VolumeContent.LIQUID && hose.origin() == GasOrigin.SYSTEM;
    }

    private HookUpState upsideDown(HookUpState state) {
        Set<String> inverted = new HashSet<>();
        if (connected.cylinder().inverted()) {
            inverted.add(CYLINDER);
        }
        next.filter(each -> each.cylinder().inverted()).ifPresent(each -> inverted.add(NEXT));
        return new HookUpState(
                state.valves(),
                state.joints(),
                state.turned(),
                inverted,
                state.capped(),
                state.running(),
                state.volumes(),
                state.liquidShutIn());
    }

    /** What a cylinder holds; what its gauge shows above its refrigerant is air, and a source pushes with no more than its gauge shows. */
    private VolumeState held(HookUp network, String name, CheckedCylinder checked) {
        if (checked.holds().isEmpty()) {
            return network.evacuated();
        }
        Mass held = checked.contents()
                .map(contents -> Mass.ofKilograms(Math.max(0, contents.value().kilograms())))
                .orElse(Mass.ZERO);
        Optional<Pressure> gauge = checked.cylinder().pressure().map(Reading::value);
        VolumeState state = network.cylinder(
                name, held, checked.cylinder().temperature().value(), origin(checked), gauge, /* mayHoldAir= */ false);
        boolean weaker = checked.cylinder().role() == Role.SOURCE
                && gauge.filter(read -> read.compareTo(state.pressure()) < 0).isPresent();
        return weaker
                ? new VolumeState(
                        state.content(),
                        gauge.orElseThrow(),
                        state.origin(),
                        state.temperature(),
                        state.refrigerant(),
                        state.air())
                : state;
    }

    /** What the owner's own system gave may go back to it; whether it does is the permit's question. */
    private GasOrigin origin(CheckedCylinder checked) {
        Cylinder cylinder = checked.cylinder();
        if (cylinder.role() == Role.RECEIVER) {
            return GasOrigin.RECOVERED;
        } else if (cylinder.provenance().filter(Provenance::isUsed).isEmpty()) {
            return GasOrigin.SOURCE;
        }
        boolean own = cylinder.provenance().equals(Optional.of(Provenance.RECOVERED))
                && cylinder.owner().isPresent()
                && cylinder.owner().equals(visit.system().owner());
        return own ? GasOrigin.SYSTEM : GasOrigin.RECOVERED;
    }

    /** A hose that is ready hangs where it belongs; a manifold that holds gas hangs on both ports. */
    private HookUpState joined(HookUpState state, HookUp network, boolean hangs) {
        HookUpState joined = state;
        if (manifold) {
            Opening open = visit.hookUp()
                            .manifold()
                            .filter(each -> each.holds() != VolumeContent.NOTHING)
                            .isPresent()
                    ? Opening.OPEN
                    : Opening.SHUT;
            joined = at(network.port(LOW_SIDE), "low-hose", Manifold.LOW, joined, open);
            joined = at(highPort(network), "high-hose", Manifold.HIGH, joined, open);
        }
        return hangs ? hanging(joined, network) : joined;
    }

    private static HookUpState at(
            Optional<SystemPort> port, String name, String connection, HookUpState state, Opening open) {
        HookUpState hung = state.withJoint(name + ".cylinder", new Joint(connection, true));
        if (port.isEmpty()) {
            return hung;
        }
        String place = port.get().name();
        hung = hung.withJoint(name + ".system", new Joint(place, true)).withValve(name + ".system", open);
        return port.get().hasValve() ? hung.withValve(place, open) : hung;
    }

    /**
     * Valves that the wait after a step leaves open count as open: that one is shut which is open is safe to read, the other way round not.
     */
    private HookUpState hanging(HookUpState state, HookUp network) {
        String near = manifold ? Manifold.CENTRE : systemConnection();
        boolean machine = throughMachine(network);
        HookUpState hung = state.withJoint(
                        hoseName + ".cylinder", new Joint(machine ? HookUp.MACHINE_INLET : cylinderConnection(), true))
                .withJoint(hoseName + ".system", new Joint(near, true));
        if (machine) {
            hung = hung.withJoint(HookUp.OUTLET_HOSE + ".system", new Joint(HookUp.MACHINE_OUTLET, true))
                    .withJoint(HookUp.OUTLET_HOSE + ".cylinder", new Joint(CYLINDER + ".vapour", true))
                    .withValve(HookUp.OUTLET_HOSE + ".cylinder", Opening.OPEN);
        }
        boolean source = hose.holds() == VolumeContent.LIQUID && hose.origin() == GasOrigin.SOURCE;
        if (!isOnTheLine(true) && !source) {
            return hung;
        }
        for (String end : List.of(hoseName + ".system", hoseName + ".cylinder", Manifold.CHARGING_VALVE)) {
            hung = network.valves().contains(end) ? hung.withValve(end, Opening.OPEN) : hung;
        }
        String open = source ? cylinderConnection() : manifold ? Manifold.HIGH_VALVE : near;
        return network.valves().contains(open) ? hung.withValve(open, Opening.OPEN) : hung;
    }

    private String cylinderConnection() {
        ServiceCylinder cylinder = part(CYLINDER, connected);
        if (cylinder.valves() != ServiceCylinder.Valves.VAPOUR_AND_LIQUID) {
            return CYLINDER + ".valve";
        }
        return CYLINDER + (connected.cylinder().valve() == Valve.LIQUID ? ".liquid" : ".vapour");
    }

    private String systemConnection() {
        return hose.port().port().orElse(PointKind.HIGH_SIDE_LIQUID_PORT) == PointKind.LOW_SIDE_PORT
                ? LOW_SIDE
                : LIQUID_LINE;
    }

    private Pressure lowPressure() {
        return TransferDesk.portPressure(visit, PointKind.LOW_SIDE_PORT)
                .map(Reading::value)
                .orElse(visit.site().atmosphere().pressure());
    }

    private Pressure linePressure(VolumeContent content) {
        return TransferDesk.portPressure(visit, PointKind.HIGH_SIDE_LIQUID_PORT)
                .filter(unused -> content == VolumeContent.LIQUID)
                .map(Reading::value)
                .orElseGet(this::lowPressure);
    }

    private Pressure hosePressure() {
        if (hose.origin() == GasOrigin.SYSTEM || hose.origin() == GasOrigin.UNKNOWN) {
            return linePressure(hose.holds());
        }
        return connected.inside().map(Reading::value).orElseGet(this::lowPressure);
    }

    private VolumeState content(
            HookUp network, String name, VolumeContent content, GasOrigin origin, Pressure pressure) {
        return switch (content) {
            case AIR -> network.air(name);
            case NOTHING -> network.evacuated();
            case VAPOUR -> network.vapour(name, pressure, origin);
            case LIQUID -> network.liquid(name, pressure, ambient(), origin);
        };
    }
}
