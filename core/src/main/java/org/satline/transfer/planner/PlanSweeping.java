package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.planner.PlanSearch.Node;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/**
 * The air driven out of the hose to the cylinder: by low-side vapour, a vacuum pump, or vapour of a source cylinder. Used for one plan; not
 * thread-safe.
 */
abstract class PlanSweeping extends PlanHooking {
    PlanSweeping(HookUp hookUp, HookUpState state) {
        super(hookUp, state);
    }

    /** Whether a step and the take-off after it are found from here. */
    abstract boolean proved(PlanState state, int cylinder, boolean out);

    @Nullable
    PlanFound purge(PlanState from, int cylinder) {
        boolean out = isReceiver(cylinder);
        for (String at : roles.manifold ? List.of(Manifold.CENTRE) : directPorts(from, cylinder)) {
            Predicate<PlanState> mixedToo = state -> ready(state, cylinder, at, out) && proved(state, cylinder, out);
            PlanFound found = purge(from, at, valveOf(cylinder, out), mixedToo, out);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** The hose between two connections freed of air; the cleanest way that there is. */
    @Nullable
    PlanFound purge(PlanState from, String at, String valve, Predicate<PlanState> goal, boolean mixedWill) {
        if (roles.centre < 0) {
            return null;
        }
        Predicate<PlanState> clean = state -> pure(state, parts.hoseVolume(roles.centre), true)
                && pure(state, parts.chamber(PlanParts.CHAMBER_CENTRE), true)
                && goal.test(state);
        PlanScope sweeps = sweeping(from, at, valve).build();
        Node node = search.find(from, sweeps, 12, clean);
        if (node == null && parts.hookUp().pump()) {
            PlanFound evacuated =
                    roles.manifold ? evacuatedHose(from, at, valve, clean) : evacuatedAlone(from, at, valve, clean);
            if (evacuated != null) {
                return evacuated;
            }
        }
        if (node == null) {
            node = sweptFromSource(from, at, valve, clean);
        }
        if (node == null && mixedWill) {
            node = search.find(from, sweeps, 12, goal);
        }
        return node == null ? null : found(HookUpPlan.Phase.Kind.PURGE, from, node);
    }

    private PlanScope.Builder sweeping(PlanState from, String at, String valve) {
        PlanScope.Builder sweep = new PlanScope.Builder(from)
                .turn(roles.centre)
                .connect(PlanRoles.system(roles.centre), at, true)
                .connect(PlanRoles.cylinder(roles.centre), valve, true)
                .handOpening(roles.centre)
                .opening(Manifold.CHARGING_VALVE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                .valve(valve, Kind.OPEN_SHORT, Kind.CRACK, Kind.CLOSE);
        return roles.manifold ? sweep : sweep.valve(at, Kind.OPEN, Kind.CLOSE);
    }

    /** Sources that hold what this system may take, with vapour at their valve: upright, above the atmosphere. */
    List<String> sweepingSources(PlanState from) {
        List<String> valves = new ArrayList<>();
        for (int i = 0; i < parts.cylinders().size(); i++) {
            ServiceCylinder cylinder = parts.cylinders().get(i);
            String valve = cylinder.connections().get(0);
            if (!isReceiver(i)
                    && from.cylinderClean(i)
                    && !parts.hookUp().gas().carbonDioxide()
                    && parts.sweeps(from.cylinderLevel(i))
                    && !cylinder.liquidAt(valve, from.inverted(i))) {
                valves.add(valve);
            }
        }
        return valves;
    }

    /** The hose first on a source, its other end loose where it is to go; then over to where it belongs. */
    private @Nullable Node sweptFromSource(PlanState from, String at, String valve, Predicate<PlanState> goal) {
        int near = PlanRoles.system(roles.centre);
        for (String source : parts.ventable() ? sweepingSources(from) : List.<String>of()) {
            PlanScope.Builder scope = sweeping(from, at, valve)
                    .connect(near, source, false)
                    .takeOff(near)
                    .hand(roles.centre, Kind.OPEN, Kind.CLOSE)
                    .valve(source, Kind.OPEN_SHORT);
            Node node = search.find(from, scope.build(), 12, goal);
            if (node != null) {
                return node;
            }
        }
        return null;
    }

    /**
     * Manifold and hoses swept by a source's vapour to the loose joints at the ports, where the low side drives nothing out; the hose to
     * the
     * cylinder hangs on the source then.
     */
    @Override
    @Nullable
    PlanFound hookedUpFromSource(PlanState from, Predicate<PlanState> goal) {
        boolean lowShut = parts.low() >= 0 && parts.ports().get(parts.low()).hasValve();
        for (String source : parts.ventable() && lowShut ? sweepingSources(from) : List.<String>of()) {
            Node node = new Node(from, null, null, 0);
            for (PlanMove move : hooking(from).build().forced()) {
                node = also(node, move.kind(), move.target(), move.to());
            }
            node = also(
                    node,
                    Kind.CONNECT_TIGHT,
                    PlanRoles.system(roles.centre),
                    parts.connections().indexOf(Manifold.CENTRE));
            node = also(
                    node,
                    Kind.CONNECT_TIGHT,
                    PlanRoles.cylinder(roles.centre),
                    parts.connections().indexOf(source));
            for (int hose : new int[] {roles.low, roles.high}) {
                int port = hose == roles.low ? parts.low() : parts.high();
                if (hose >= 0 && port >= 0) {
                    node = also(node, Kind.CONNECT_LOOSE, 2 * hose, parts.portConnection(port));
                }
            }
            for (int hose : new int[] {roles.low, roles.high, roles.centre}) {
                if (hose >= 0) {
                    node = also(node, Kind.OPEN, parts.endValve(2 * hose));
                    node = also(node, Kind.OPEN, parts.endValve(2 * hose + 1));
                }
            }
            node = also(node, Kind.OPEN, parts.valves().indexOf(Manifold.CHARGING_VALVE));
            // one joint after the other: what flows to one that is clean is lost
            node = also(node, Kind.OPEN, parts.lowValve());
            node = also(node, Kind.CRACK, parts.valves().indexOf(source));
            node = also(node, Kind.TIGHTEN, PlanRoles.system(roles.low));
            node = also(node, Kind.OPEN, parts.highValve());
            node = also(node, Kind.TIGHTEN, PlanRoles.system(roles.high));
            PlanScope.Builder tightening = new PlanScope.Builder(node.state())
                    .valve(source, Kind.CLOSE)
                    .valve(Manifold.HIGH_VALVE, Kind.CLOSE)
                    .valve(Manifold.LOW_VALVE, Kind.CLOSE)
                    .connect(PlanRoles.system(roles.low), portName(parts.low()), true)
                    .connect(PlanRoles.system(roles.high), portName(parts.high()), true)
                    .ports(Kind.OPEN);
            Node done = search.find(node.state(), tightening.build(), 9, goal);
            if (done != null) {
                List<PlanMove> moves = new ArrayList<>(node.moves());
                moves.addAll(done.moves());
                return new PlanFound(HookUpPlan.Phase.Kind.HOOK_UP, from, moves, done.state());
            }
        }
        return null;
    }

    /** The hose to the cylinder evacuated, at its place where the pump has its own connection, otherwise before it goes there. */
    @Nullable
    PlanFound evacuatedHose(PlanState from, String at, String valve, Predicate<PlanState> goal) {
        Node node = new Node(from, null, null, 0);
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        boolean own = pumpHose() == roles.pump;
        if (own) {
            node = also(
                    node,
                    Kind.CONNECT_TIGHT,
                    PlanRoles.system(roles.pump),
                    parts.connections().indexOf(pumpConnection()));
        }
        node = also(node, Kind.CONNECT_TIGHT, near, parts.connections().indexOf(at));
        if (own) {
            node = also(node, Kind.CONNECT_TIGHT, far, parts.connections().indexOf(valve));
            node = also(node, Kind.OPEN, parts.endValve(near), PlanParts.NONE);
            node = also(node, Kind.OPEN, parts.endValve(far), PlanParts.NONE);
        }
        node = pumping(node);
        PlanScope shutting = new PlanScope.Builder(node.state())
                .valve(Manifold.VACUUM_VALVE, Kind.CLOSE)
                .hand(pumpHose(), Kind.OPEN, Kind.CLOSE)
                .takeOff(own ? PlanParts.NONE : far)
                .pump()
                .connect(far, valve, true)
                .valve(valve, Kind.OPEN_SHORT)
                .build();
        Node done = search.find(node.state(), shutting, 9, goal);
        if (done == null) {
            return null;
        }
        List<PlanMove> moves = new ArrayList<>(node.moves());
        moves.addAll(done.moves());
        return new PlanFound(HookUpPlan.Phase.Kind.PURGE, from, moves, done.state());
    }

    /** A hose without a manifold evacuated from one end, the other at its place and shut there, or shut by itself. */
    private @Nullable PlanFound evacuatedAlone(PlanState from, String at, String valve, Predicate<PlanState> goal) {
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        int pump = parts.connections().indexOf(HookUp.PUMP);
        boolean portShuts = parts.hookUp().port(at).filter(SystemPort::hasValve).isPresent();
        for (boolean atCylinder : new boolean[] {false, true}) {
            int pumped = atCylinder ? near : far;
            Node node = new Node(from, null, null, 0);
            if (atCylinder || portShuts) {
                node = also(
                        node,
                        Kind.CONNECT_TIGHT,
                        atCylinder ? far : near,
                        parts.connections().indexOf(atCylinder ? valve : at));
            }
            node = also(node, Kind.CONNECT_TIGHT, pumped, pump);
            node = also(node, Kind.OPEN, parts.endValve(pumped));
            if (atCylinder || portShuts) {
                node = also(node, Kind.OPEN, parts.endValve(atCylinder ? far : near));
            }
            node = also(node, Kind.START, 0);
            node = also(node, Kind.CONNECT_TIGHT, pumped, pump);
            node = also(node, Kind.OPEN, parts.endValve(pumped));
            PlanScope.Builder shutting = new PlanScope.Builder(node.state())
                    .hand(roles.centre, Kind.OPEN, Kind.CLOSE)
                    .takeOff(pumped)
                    .pump()
                    .connect(near, at, false)
                    .connect(far, valve, false)
                    .valve(at, Kind.OPEN);
            Node done = search.find(node.state(), shutting.build(), 9, goal);
            if (done != null) {
                List<PlanMove> moves = new ArrayList<>(node.moves());
                moves.addAll(done.moves());
                return new PlanFound(HookUpPlan.Phase.Kind.PURGE, from, moves, done.state());
            }
        }
        return null;
    }
}
