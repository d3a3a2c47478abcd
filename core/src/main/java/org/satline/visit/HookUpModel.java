package org.satline.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Judgement;
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
import org.satline.transfer.Direction;
import org.satline.transfer.HoseState;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;
import org.satline.transfer.planner.HookUpPlanner;
import org.satline.visit.HookUpFacts.HoseOnSite;

/** The hook-up of a visit as the network that the planner knows, and what the planner says of it. For one visit and one thread. */
final class HookUpModel {
    private static final String CYLINDER = "cylinder";
    /** Where no safety group is published the strictest cautions hold. */
    private static final SafetyGroup UNKNOWN_GROUP = SafetyGroup.B3;
    /** Hoses to the system that nobody described: 1/4 in, 5 ft, a hand valve at the port; common practice, no source. */
    private static final Length USUAL_BORE = Length.ofMillimetres(4.8);

    private static final Length USUAL_LENGTH = Length.ofFeet(5);
    /** A chamber of a manifold; common practice, no source. */
    private static final Volume CHAMBER = Volume.ofLitres(0.01);

    private final Visit visit;
    private final Optional<CheckedCylinder> connected;
    private final SaturationCurve curve;
    private final Direction direction;
    private final HoseState hose;
    private final Optional<HookUpPlan> plan;

    HookUpModel(Visit visit, Optional<CheckedCylinder> connected, SaturationCurve curve, Judgement judgement) {
        this.visit = visit;
        this.connected = connected;
        this.curve = curve;
        this.direction = judgement instanceof Judgement.Decided decided && decided.level() == ChargeLevel.LOW
                ? Direction.IN
                : Direction.OUT;
        boolean ready = isReady();
        Optional<HookUpPlan> found = planned(ready);
        this.plan = found;
        this.hose = visit.hookUp().hoses().isEmpty()
                ? HoseState.UNKNOWN
                : ready
                        ? HoseState.READY
                        : found.filter(HookUpPlan.Planned.class::isInstance).isPresent()
                                ? HoseState.NOT_PURGED
                                : HoseState.CANNOT_BE_PURGED;
    }

    HoseState hose() {
        return hose;
    }

    Optional<HookUpPlan> plan() {
        return plan;
    }

    /** Free of air and of foreign gas, hose and manifold both. */
    private boolean isReady() {
        List<HoseOnSite> hoses = visit.hookUp().hoses();
        boolean manifoldClear = visit.hookUp()
                .manifold()
                .map(each -> each.holds() != VolumeContent.AIR)
                .orElse(!TransferDesk.throughManifold(visit));
        return !hoses.isEmpty() && manifoldClear && hoses.stream().allMatch(this::isClear);
    }

    private boolean isClear(HoseOnSite each) {
        return switch (each.holds()) {
            case AIR -> false;
            case NOTHING -> true;
            case VAPOUR, LIQUID ->
                each.origin().isClean() || (direction == Direction.OUT && each.origin() == GasOrigin.RECOVERED);
        };
    }

    private Optional<HookUpPlan> planned(boolean ready) {
        List<HoseOnSite> hoses = visit.hookUp().hoses();
        boolean right = connected
                .filter(each -> each.inside().isPresent()
                        && !each.isDangerous()
                        && (each.cylinder().role() == Role.RECEIVER) == (direction == Direction.OUT))
                .isPresent();
        if (hoses.isEmpty() || !right) {
            return Optional.empty();
        }
        HookUp network = network(hoses.get(0));
        PlanTask.Kind kind = !ready
                ? PlanTask.Kind.CONNECT_AND_PURGE
                : direction == Direction.OUT ? PlanTask.Kind.STEP_OUT : PlanTask.Kind.STEP_IN;
        return Optional.of(
                HookUpPlanner.plan(network, state(network, hoses.get(0), ready), PlanTask.of(kind, CYLINDER)));
    }

    private HookUp network(HoseOnSite hose) {
        boolean manifold = visit.hookUp().manifold().isPresent() || TransferDesk.throughManifold(visit);
        List<ServiceHose> hoses = new ArrayList<>();
        if (manifold) {
            hoses.add(usual("low-hose"));
            hoses.add(usual("high-hose"));
        }
        hoses.add(new ServiceHose(
                hoseName(manifold),
                hose.hose().systemEnd(),
                hose.hose().cylinderEnd(),
                hose.hose().bore(),
                hose.hose().length()));
        return new HookUp(
                gas(),
                /* running= */ true,
                ports(),
                manifold
                        ? Optional.of(new Manifold(
                                visit.hookUp()
                                        .manifold()
                                        .map(HookUpFacts.ManifoldOnSite::valves)
                                        .orElse(2),
                                1,
                                CHAMBER))
                        : Optional.empty(),
                hoses,
                List.of(cylinder()),
                visit.hookUp().vacuumPump(),
                visit.hookUp().recoveryMachine(),
                visit.site().atmosphere(),
                ambient());
    }

    private static String hoseName(boolean manifold) {
        return manifold ? "centre-hose" : "direct-hose";
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
                .orElseGet(
                        () -> connected.orElseThrow().cylinder().temperature().value());
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

    private ServiceCylinder cylinder() {
        var it = connected.orElseThrow().cylinder();
        boolean disposable = it.stamps().refillable().equals(Optional.of(false));
        return new ServiceCylinder(
                CYLINDER,
                it.role() == Role.RECEIVER
                        ? ServiceCylinder.Use.RECEIVER
                        : disposable ? ServiceCylinder.Use.DISPOSABLE : ServiceCylinder.Use.SOURCE,
                disposable ? ServiceCylinder.Valves.ONE : ServiceCylinder.Valves.VAPOUR_AND_LIQUID,
                it.stamps().volume());
    }

    private HookUpState state(HookUp network, HoseOnSite hose, boolean ready) {
        boolean manifold = network.manifold().isPresent();
        Map<String, VolumeState> known = new HashMap<>();
        VolumeContent chambers =
                visit.hookUp().manifold().map(HookUpFacts.ManifoldOnSite::holds).orElse(VolumeContent.AIR);
        if (manifold) {
            for (String name : List.of(Manifold.LOW_CHAMBER, Manifold.CENTRE_CHAMBER, "low-hose")) {
                known.put(name, content(network, name, chambers, GasOrigin.SYSTEM, lowPressure()));
            }
            for (String name : List.of(Manifold.HIGH_CHAMBER, "high-hose")) {
                known.put(name, content(network, name, chambers, GasOrigin.SYSTEM, lowPressure()));
            }
        }
        known.put(
                hoseName(manifold),
                content(network, hoseName(manifold), hose.holds(), hose.origin(), hosePressure(hose)));
        CheckedCylinder checked = connected.orElseThrow();
        Mass held = checked.contents()
                .map(contents -> Mass.ofKilograms(Math.max(0, contents.value().kilograms())))
                .orElse(Mass.ZERO);
        boolean empty = checked.holds().isEmpty();
        known.put(
                CYLINDER,
                empty
                        ? network.evacuated()
                        : network.cylinder(
                                CYLINDER,
                                held,
                                checked.cylinder().temperature().value(),
                                origin(checked),
                                Optional.empty(),
                                /* mayHoldAir= */ false));
        HookUpState state = network.before(known);
        if (ready || chambers != VolumeContent.AIR) {
            state = joined(state, network, manifold, ready);
        }
        return state;
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
    private HookUpState joined(HookUpState state, HookUp network, boolean manifold, boolean ready) {
        HookUpState joined = state;
        if (manifold) {
            joined = joined.withJoint("low-hose.system", new Joint("low-side", true))
                    .withJoint("low-hose.cylinder", new Joint(Manifold.LOW, true))
                    .withJoint("high-hose.cylinder", new Joint(Manifold.HIGH, true));
            if (network.port("liquid-line").isPresent()) {
                joined = joined.withJoint("high-hose.system", new Joint("liquid-line", true))
                        .withValve("high-hose.system", Opening.OPEN);
            }
            joined = joined.withValve("low-hose.system", Opening.OPEN);
        }
        if (ready) {
            String name = hoseName(manifold);
            joined = joined.withJoint(name + ".cylinder", new Joint(cylinderConnection(), true))
                    .withJoint(name + ".system", new Joint(manifold ? Manifold.CENTRE : systemConnection(), true));
        }
        return joined;
    }

    private String cylinderConnection() {
        ServiceCylinder cylinder = cylinder();
        if (cylinder.valves() != ServiceCylinder.Valves.VAPOUR_AND_LIQUID) {
            return CYLINDER + ".valve";
        }
        return CYLINDER + (connected.orElseThrow().cylinder().valve() == Valve.LIQUID ? ".liquid" : ".vapour");
    }

    private String systemConnection() {
        return visit.hookUp().hoses().get(0).port().port().orElse(PointKind.HIGH_SIDE_LIQUID_PORT)
                        == PointKind.LOW_SIDE_PORT
                ? "low-side"
                : "liquid-line";
    }

    private Pressure lowPressure() {
        return TransferDesk.portPressure(visit, PointKind.LOW_SIDE_PORT)
                .map(Reading::value)
                .orElse(visit.site().atmosphere().pressure());
    }

    private Pressure hosePressure(HoseOnSite hose) {
        return hose.origin() == GasOrigin.SYSTEM || hose.origin() == GasOrigin.UNKNOWN
                ? lowPressure()
                : connected.flatMap(CheckedCylinder::inside).map(Reading::value).orElseGet(this::lowPressure);
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
