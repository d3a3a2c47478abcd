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
import org.satline.transfer.planner.PlanSearch.Node;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/**
 * A recovery machine in the way to the receiver: the hose to the cylinder goes to its inlet, a hose of its own from its outlet to the
 * cylinder's vapour valve. Cylinder and outlet are open before it starts; the inlet is shut, it runs to its stop, purges itself and stops,
 * then the cylinder is shut. What it and its outlet hose hold is evacuated first: it is the last job's. Common practice, no source. Used
 * for
 * one plan; not thread-safe.
 */
abstract class PlanMachining extends PlanSweeping {
    private static final int MACHINE = 1;

    PlanMachining(HookUp hookUp, HookUpState state) {
        super(hookUp, state);
    }

    /** Whether the hose to the cylinder hangs on the machine's inlet. */
    boolean onMachine(PlanState state) {
        int far = PlanRoles.cylinder(roles.centre);
        return roles.outlet >= 0
                && far >= 0
                && state.at(far) >= 0
                && state.at(far) == parts.connections().indexOf(HookUp.MACHINE_INLET);
    }

    /** The machine and both of its hoses at their places, free of air and of what nobody knows. */
    @Nullable
    List<PlanFound> purgeThroughMachine(PlanState from, int cylinder) {
        if (!parts.hookUp().machine() || roles.outlet < 0 || roles.centre < 0 || !isReceiver(cylinder)) {
            return null;
        }
        Node clean = evacuatedMachine(from, cylinder);
        if (clean == null) {
            return null;
        }
        List<String> places = new ArrayList<>(List.of(Manifold.CENTRE));
        if (!roles.manifold) {
            places.clear();
            int at = from.at(PlanRoles.system(roles.centre));
            boolean hangs = at >= 0 && parts.behind(at) == PlanParts.Behind.PORT;
            places.addAll(
                    hangs
                            ? List.of(parts.connections().get(at))
                            : List.of(portName(parts.high()), portName(parts.low())));
        }
        for (String at : places) {
            Predicate<PlanState> goal = state -> quiet(state)
                    && joined(state, at)
                    && pure(state, parts.hoseVolume(roles.centre), true)
                    && machineReady(state, cylinder)
                    && proved(state, cylinder, true);
            PlanFound purged = purge(clean.state(), at, HookUp.MACHINE_INLET, goal, false);
            if (purged != null) {
                return List.of(found(HookUpPlan.Phase.Kind.PURGE, from, clean), purged);
            }
        }
        return null;
    }

    private boolean joined(PlanState state, String at) {
        int near = PlanRoles.system(roles.centre);
        int charging = parts.valves().indexOf(Manifold.CHARGING_VALVE);
        return state.at(near) == parts.connections().indexOf(at)
                && onMachine(state)
                && handOpen(state, near)
                && handOpen(state, near + 1)
                && (!roles.manifold || charging < 0 || state.isOpen(charging));
    }

    private boolean machineReady(PlanState state, int cylinder) {
        int near = PlanRoles.system(roles.outlet);
        int far = PlanRoles.cylinder(roles.outlet);
        return state.at(near) == parts.connections().indexOf(HookUp.MACHINE_OUTLET)
                && state.at(far) == parts.connections().indexOf(valveOf(cylinder, true))
                && state.tight(near)
                && state.tight(far)
                && handOpen(state, near)
                && handOpen(state, far)
                && pure(state, parts.hoseVolume(roles.outlet), false)
                && pure(state, parts.machineInlet(), false)
                && pure(state, parts.machineOutlet(), false);
    }

    /** Both sides of the machine evacuated through the outlet hose, the inlet first, then that hose brought to the cylinder. */
    private @Nullable Node evacuatedMachine(PlanState from, int cylinder) {
        if (machineReady(from, cylinder)) {
            return new Node(from, null, null, 0);
        }
        int near = PlanRoles.system(roles.outlet);
        int far = PlanRoles.cylinder(roles.outlet);
        String valve = valveOf(cylinder, true);
        boolean shuts = from.fitting(far) != EndFitting.PLAIN_FLARE;
        boolean empty = pure(from, parts.hoseVolume(roles.outlet), true)
                && pure(from, parts.machineInlet(), true)
                && pure(from, parts.machineOutlet(), true);
        if (!empty && (!parts.hookUp().pump() || !shuts)) {
            return null;
        }
        Node node = new Node(from, null, null, 0);
        if (empty) {
            node = also(node, Kind.CONNECT_TIGHT, near, parts.connections().indexOf(HookUp.MACHINE_OUTLET));
        } else {
            int taken = from.endAt(parts.connections().indexOf(HookUp.PUMP));
            if (taken >= 0 && taken != far) {
                node = also(node, Kind.CLOSE, parts.endValve(taken));
                node = also(node, Kind.TAKE_OFF, taken);
            }
            node = also(node, Kind.START, 0);
            for (String side : List.of(HookUp.MACHINE_INLET, HookUp.MACHINE_OUTLET)) {
                node = also(node, Kind.TAKE_OFF, near);
                node = also(node, Kind.CONNECT_TIGHT, near, parts.connections().indexOf(side));
                node = also(node, Kind.CONNECT_TIGHT, far, parts.connections().indexOf(HookUp.PUMP));
                node = also(node, Kind.OPEN, parts.endValve(far));
                node = also(node, Kind.OPEN, parts.valves().indexOf(side));
                node = also(node, Kind.CLOSE, parts.valves().indexOf(side));
                node = also(node, Kind.CLOSE, parts.endValve(far));
                node = from.fitting(far) == EndFitting.SELF_SEALING ? also(node, Kind.TAKE_OFF, far) : node;
            }
            node = also(node, Kind.TAKE_OFF, far);
            node = also(node, Kind.STOP, 0);
        }
        PlanScope joining = new PlanScope.Builder(node.state())
                .connect(far, valve, true)
                .hand(roles.outlet, Kind.OPEN)
                .valve(valve, Kind.OPEN_SHORT)
                .build();
        Node joined = search.find(node.state(), joining, 5, state -> machineReady(state, cylinder) && quiet(state));
        return joined == null ? null : after(node, joined);
    }

    /** One way after another. */
    private static Node after(Node first, Node second) {
        if (second.from() == null) {
            return first;
        }
        return new Node(second.state(), after(first, second.from()), second.move(), first.depth() + second.depth());
    }

    /** One step by the machine; the inlet valve meters it. */
    @Nullable
    PlanFound stepThroughMachine(PlanState from, int cylinder) {
        for (boolean low : new boolean[] {false, true}) {
            PlanFound found = stepThroughMachine(from, cylinder, low);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private @Nullable PlanFound stepThroughMachine(PlanState from, int cylinder, boolean low) {
        if (!onMachine(from)
                || !machineReady(from, cylinder)
                || (low && parts.hookUp().gas().glide())) {
            return null;
        }
        PlanState fresh = from.copy();
        fresh.forgetMoved();
        Node node = new Node(fresh, null, null, 0);
        for (int hose : new int[] {roles.centre, roles.low, roles.high}) {
            if (hose >= 0 && from.at(2 * hose) >= 0) {
                node = also(node, Kind.OPEN, parts.endValve(2 * hose));
                node = also(node, Kind.OPEN, parts.endValve(2 * hose + 1));
            }
        }
        for (int port = 0; port < parts.ports().size(); port++) {
            node = also(node, Kind.OPEN, parts.connectionValve(parts.portConnection(port)));
        }
        node = also(node, Kind.OPEN, parts.valves().indexOf(Manifold.CHARGING_VALVE));
        int side = low ? parts.lowValve() : parts.highValve();
        node = also(node, Kind.CLOSE, low ? parts.highValve() : parts.lowValve());
        node = also(node, Kind.OPEN, side);
        node = started(node, cylinder);
        node = also(node, Kind.OPEN_SHORT, parts.valves().indexOf(HookUp.MACHINE_INLET));
        node = stopped(node, cylinder);
        node = low ? also(node, Kind.CLOSE, side) : node;
        PlanState end = node.state();
        byte way = parts.hookUp().gas().glide() ? PlanState.OUT_LIQUID : PlanState.OUT_LIQUID | PlanState.OUT_VAPOUR;
        boolean stepped = (end.moved() & way) != 0 && !end.anyShutIn() && !end.runs(MACHINE);
        PlanState waited = hand.after(end, WAIT);
        if (!stepped || waited == null || !endProved(end)) {
            return null;
        }
        List<PlanMove> moves = new ArrayList<>(node.moves());
        moves.add(WAIT);
        moves.add(new PlanMove(Kind.READ_SCALE, 0, PlanParts.NONE));
        return new PlanFound(HookUpPlan.Phase.Kind.STEP, fresh, moves, waited);
    }

    private Node started(Node from, int cylinder) {
        Node node = also(from, Kind.OPEN, parts.valves().indexOf(valveOf(cylinder, true)));
        node = also(node, Kind.OPEN, parts.valves().indexOf(HookUp.MACHINE_OUTLET));
        return also(node, Kind.START, MACHINE);
    }

    private Node stopped(Node from, int cylinder) {
        Node node = also(from, Kind.SELF_PURGE, MACHINE);
        node = also(node, Kind.STOP, MACHINE);
        node = also(node, Kind.CLOSE, parts.valves().indexOf(HookUp.MACHINE_OUTLET));
        return also(node, Kind.CLOSE, parts.valves().indexOf(valveOf(cylinder, true)));
    }

    /** Everything between the ports and the machine drawn empty: the port ends shut, what stood behind them into the cylinder. */
    @Nullable
    PlanFound emptiedByMachine(PlanState from) {
        int cylinder = receiverAtOutlet(from);
        if (!onMachine(from) || cylinder < 0 || !machineReady(from, cylinder)) {
            return null;
        }
        Node node = new Node(from, null, null, 0);
        node = also(node, Kind.CLOSE, parts.lowValve());
        boolean high = shuts(from, roles.high);
        node = high ? also(node, Kind.OPEN, parts.highValve()) : also(node, Kind.CLOSE, parts.highValve());
        node = started(node, cylinder);
        for (int hose : roles.manifold ? new int[] {roles.low, roles.high} : new int[] {roles.centre}) {
            node = shuts(from, hose) ? shutAtPort(node, hose) : node;
        }
        node = also(node, Kind.OPEN, parts.valves().indexOf(HookUp.MACHINE_INLET));
        node = shuts(from, roles.low) ? also(node, Kind.OPEN, parts.lowValve()) : node;
        node = also(node, Kind.CLOSE, parts.valves().indexOf(HookUp.MACHINE_INLET));
        node = stopped(node, cylinder);
        node = also(node, Kind.CLOSE, parts.lowValve());
        node = also(node, Kind.CLOSE, parts.highValve());
        return quiet(node.state()) ? found(HookUpPlan.Phase.Kind.LEAVE, from, node) : null;
    }

    /** Whether a hose at a port is shut there without letting go what is in it; one that is not joined stays as it is. */
    private boolean shuts(PlanState state, int hose) {
        int end = PlanRoles.system(hose);
        int at = end < 0 ? PlanParts.NONE : state.at(end);
        boolean port = at >= 0 && parts.behind(at) == PlanParts.Behind.PORT;
        return port && (state.fitting(end) != EndFitting.PLAIN_FLARE || parts.connectionValve(at) >= 0);
    }

    private int receiverAtOutlet(PlanState state) {
        int at = roles.outlet < 0 ? PlanParts.NONE : state.at(PlanRoles.cylinder(roles.outlet));
        boolean there = at >= 0 && parts.behind(at) == PlanParts.Behind.CYLINDER && isReceiver(parts.behindIndex(at));
        return there ? parts.behindIndex(at) : PlanParts.NONE;
    }

    /** Shut by the port's own valve or the hand valve at the hose end; a self-sealing end by unscrewing it. */
    private Node shutAtPort(Node from, int hose) {
        int end = PlanRoles.system(hose);
        int at = from.state().at(end);
        if (from.state().fitting(end) == EndFitting.OPEN_CLOSE_VALVE) {
            return also(from, Kind.CLOSE, parts.endValve(end));
        }
        return parts.connectionValve(at) >= 0
                ? also(from, Kind.CLOSE, parts.connectionValve(at))
                : also(from, Kind.TAKE_OFF, end);
    }
}
