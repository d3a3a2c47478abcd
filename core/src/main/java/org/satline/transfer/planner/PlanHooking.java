package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceHose;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.planner.PlanSearch.Node;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/** Hooking up at the ports and driving the air out, by a sweep or a vacuum pump. Used for one plan; not thread-safe. */
abstract class PlanHooking extends PlanGoals {
    PlanHooking(HookUp hookUp, HookUpState state) {
        super(hookUp, state);
    }

    @Nullable
    PlanFound hookUp(PlanState from) {
        boolean liquidHigh = roles.high >= 0
                && parts.high() >= 0
                && parts.ports().get(parts.high()).liquid();
        if (neverOff(roles.high, parts.high())
                || neverOff(roles.low, parts.low())
                || (liquidHigh && parts.hookUp().gas().carbonDioxide())
                || (!parts.ventable() && !parts.hookUp().pump())) {
            return null;
        }
        Predicate<PlanState> goal = state -> hookedUp(state) && endProved(state);
        PlanFound found = hookUp(from, goal);
        return found == null ? hookedUpFromSource(from, goal) : found;
    }

    /** The same by the vapour of a source cylinder. */
    abstract @Nullable PlanFound hookedUpFromSource(PlanState from, Predicate<PlanState> goal);

    private @Nullable PlanFound hookUp(PlanState from, Predicate<PlanState> goal) {
        PlanScope sweep = hooking(from).build();
        boolean sweeps = portSweeps() || noAir(from);
        Node node = sweeps ? search.find(from, sweep, 14, goal) : null;
        if (node != null || !parts.hookUp().pump()) {
            return node == null ? null : found(HookUpPlan.Phase.Kind.HOOK_UP, from, node);
        }
        // the low hose first, so that only the high one is left to the pump
        PlanScope open = hooking(from).uncap(Manifold.CENTRE).build();
        Node low = sweeps ? search.find(from, open, 9, state -> quiet(state) && lowReady(state)) : null;
        node = low == null
                ? null
                : search.find(low.state(), withPump(hooking(low.state())).build(), 14, goal);
        if (low != null && node != null) {
            List<PlanMove> moves = new ArrayList<>(low.moves());
            moves.addAll(node.moves());
            return new PlanFound(HookUpPlan.Phase.Kind.HOOK_UP, from, moves, node.state());
        }
        return evacuated(from, goal);
    }

    /** Whether any vapour of the system drives air out of a loose joint. */
    private boolean portSweeps() {
        for (int port = 0; port < parts.ports().size(); port++) {
            if (parts.ventable() && !parts.ports().get(port).liquid() && parts.sweeps(parts.portLevel(port))) {
                return true;
            }
        }
        return false;
    }

    private boolean noAir(PlanState state) {
        for (int v = 0; v < parts.volumes().size(); v++) {
            boolean hooked = v == volume(roles.low) || v == volume(roles.high) || !parts.isHose(v);
            if (hooked && state.air(v)) {
                return false;
            }
        }
        return true;
    }

    private int volume(int hose) {
        return hose < 0 ? PlanParts.NONE : parts.hoseVolume(hose);
    }

    /** Everything on and open to the pump at once, as far as it goes; then what is shut, and in which order, is searched. */
    @Nullable
    PlanFound evacuated(PlanState from, Predicate<PlanState> goal) {
        PlanScope pump = withPump(hooking(from)).build();
        Node node = new Node(from, null, null, 0);
        for (PlanMove move : pump.forced()) {
            node = also(node, move.kind(), move.target(), move.to());
        }
        for (int hose : new int[] {roles.low, roles.high}) {
            int port = hose == roles.low ? parts.low() : parts.high();
            if (hose >= 0 && port >= 0 && parts.ports().get(port).hasValve()) {
                node = also(node, Kind.CONNECT_TIGHT, 2 * hose, parts.portConnection(port));
                node = also(node, Kind.OPEN, parts.endValve(2 * hose), PlanParts.NONE);
            }
        }
        node = also(node, Kind.OPEN, parts.highValve(), PlanParts.NONE);
        node = also(node, Kind.CRACK, parts.lowValve(), PlanParts.NONE);
        node = pumping(node);
        int pumpHose = pumpHose();
        PlanScope shutting = new PlanScope.Builder(node.state())
                .valve(Manifold.LOW_VALVE, Kind.CLOSE)
                .valve(Manifold.HIGH_VALVE, Kind.CLOSE)
                .valve(Manifold.VACUUM_VALVE, Kind.CLOSE)
                .hand(pumpHose, Kind.CLOSE)
                .takeOff(PlanRoles.cylinder(pumpHose))
                .pump()
                .connect(PlanRoles.system(roles.high), portName(parts.high()), false)
                .connect(PlanRoles.system(roles.low), portName(parts.low()), false)
                .handOpening(roles.low)
                .handOpening(roles.high)
                .valve(portName(parts.high()), Kind.OPEN)
                .valve(portName(parts.low()), Kind.OPEN)
                .build();
        Node done = search.find(node.state(), shutting, 12, goal);
        if (done == null) {
            return null;
        }
        List<PlanMove> moves = new ArrayList<>(node.moves());
        moves.addAll(done.moves());
        return new PlanFound(HookUpPlan.Phase.Kind.HOOK_UP, from, moves, done.state());
    }

    int pumpHose() {
        return !pumpConnection().isEmpty() && roles.pump >= 0 ? roles.pump : roles.centre;
    }

    /** The pump on, its way open, running. */
    Node pumping(Node from) {
        Node node = from;
        int hose = pumpHose();
        int pump = parts.connections().indexOf(HookUp.PUMP);
        if (hose >= 0) {
            node = also(node, Kind.CONNECT_TIGHT, 2 * hose + 1, pump);
        }
        node = also(node, Kind.START, 0, PlanParts.NONE);
        if (hose >= 0) {
            // a hose that may not be open to a pump that stands still goes on the running one
            node = also(node, Kind.CONNECT_TIGHT, 2 * hose + 1, pump);
            node = also(node, Kind.OPEN, parts.endValve(2 * hose), PlanParts.NONE);
            node = also(node, Kind.OPEN, parts.endValve(2 * hose + 1), PlanParts.NONE);
        }
        node = also(node, Kind.OPEN, parts.valves().indexOf(Manifold.CHARGING_VALVE), PlanParts.NONE);
        return also(node, Kind.OPEN, parts.valves().indexOf(Manifold.VACUUM_VALVE), PlanParts.NONE);
    }

    PlanScope.Builder hooking(PlanState from) {
        return new PlanScope.Builder(from)
                .force(PlanRoles.cylinder(roles.low), Manifold.LOW)
                .force(PlanRoles.cylinder(roles.high), Manifold.HIGH)
                .turn(roles.low)
                .turn(roles.high)
                .connect(PlanRoles.system(roles.high), portName(parts.high()), true)
                .connect(
                        PlanRoles.system(roles.low),
                        portName(parts.low()),
                        from.at(PlanRoles.system(Math.max(roles.low, 0))) >= 0)
                .handOpening(roles.low)
                .handOpening(roles.high)
                .opening(portName(parts.high()))
                .opening(portName(parts.low()))
                .valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE);
    }

    /** Whether neither end of a hose may go on that port: it could never come off again. */
    boolean neverOff(int hose, int port) {
        if (hose < 0 || port < 0) {
            return false;
        }
        ServiceHose ends = parts.hoses().get(hose);
        boolean plain = ends.systemEnd() == EndFitting.PLAIN_FLARE && ends.cylinderEnd() == EndFitting.PLAIN_FLARE;
        SystemPort at = parts.ports().get(port);
        return (!at.hasValve() && (!parts.ventable() || (at.liquid() && plain))) || (plain && !parts.ventable());
    }

    boolean lowReady(PlanState state) {
        return atPort(state, roles.low, parts.low())
                && pure(state, parts.chamber(PlanParts.CHAMBER_LOW), true)
                && pure(state, parts.chamber(PlanParts.CHAMBER_CENTRE), true);
    }

    /** The pump at a connection of its own, or at the end of the hose that later goes to the cylinder. */
    PlanScope.Builder withPump(PlanScope.Builder builder) {
        boolean own = roles.pump >= 0 && !pumpConnection().isEmpty();
        if (own) {
            builder.force(PlanRoles.system(roles.pump), pumpConnection())
                    .force(PlanRoles.cylinder(roles.pump), HookUp.PUMP)
                    .hand(roles.pump, Kind.OPEN, Kind.CLOSE);
        } else {
            builder.force(PlanRoles.system(roles.centre), Manifold.CENTRE)
                    .connect(PlanRoles.cylinder(roles.centre), HookUp.PUMP, false)
                    .takeOff(PlanRoles.cylinder(roles.centre))
                    .hand(roles.centre, Kind.OPEN, Kind.CLOSE);
        }
        return builder.valve(Manifold.CHARGING_VALVE, Kind.OPEN, Kind.CLOSE).pump();
    }

    String pumpConnection() {
        for (String name : List.of(Manifold.VACUUM, Manifold.CENTRE_2)) {
            if (parts.connections().contains(name)) {
                return name;
            }
        }
        return "";
    }
}
