package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.planner.PlanSearch.Node;
import org.satline.transfer.transition.PlanHand;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanParts.Behind;
import org.satline.transfer.transition.PlanState;

/** Where phases end, and what their search stands on. Used for one plan; not thread-safe. */
abstract class PlanGoals {
    static final PlanMove WAIT = new PlanMove(Kind.WAIT, 0, PlanParts.NONE);

    final PlanParts parts;
    final PlanState start;
    final PlanHand hand;
    final PlanSearch search;
    PlanRoles roles;

    PlanGoals(HookUp hookUp, HookUpState state) {
        parts = new PlanParts(hookUp, state);
        start = parts.arrival(state);
        roles = new PlanRoles(parts, start);
        hand = new PlanHand(start);
        search = new PlanSearch(hand);
    }

    /** Whether the take-off is found from here, after a wait. */
    abstract boolean endProved(PlanState state);

    Node also(Node node, Kind kind, int target) {
        return also(node, kind, target, PlanParts.NONE);
    }

    /** The move made where it can be; where not, as before. */
    Node also(Node node, Kind kind, int target, int to) {
        PlanMove move = new PlanMove(kind, target, to);
        PlanState next = target < 0 ? null : hand.after(node.state(), move);
        return next == null ? node : new Node(next, node, move, node.depth() + 1);
    }

    boolean hookedUp(PlanState state) {
        return quiet(state)
                && atPort(state, roles.low, parts.low())
                && atPort(state, roles.high, parts.high())
                && pure(state, parts.chamber(PlanParts.CHAMBER_CENTRE), true)
                && (roles.low < 0 || pure(state, parts.chamber(PlanParts.CHAMBER_LOW), true))
                && (roles.high < 0 || pure(state, parts.chamber(PlanParts.CHAMBER_HIGH), true));
    }

    boolean atPort(PlanState state, int hose, int port) {
        if (hose < 0 || port < 0) {
            return true;
        }
        int end = 2 * hose;
        boolean core = !parts.ports().get(port).hasValve();
        boolean plain = state.fitting(end) == EndFitting.PLAIN_FLARE;
        if (plain && ((core && parts.ports().get(port).liquid()) || !parts.ventable())) {
            // it could never come off again
            return false;
        }
        int at = parts.portConnection(port);
        return state.at(end) == at
                && state.tight(end)
                && (parts.connectionValve(at) < 0 || state.isOpen(parts.connectionValve(at)))
                && handOpen(state, end)
                && handOpen(state, end + 1)
                && pure(state, parts.hoseVolume(hose), true);
    }

    boolean handOpen(PlanState state, int end) {
        return state.fitting(end) != EndFitting.OPEN_CLOSE_VALVE || state.isOpen(parts.endValve(end));
    }

    boolean pure(PlanState state, int v, boolean clean) {
        return v < 0 || (!state.air(v) && !state.unknown(v) && (!clean || state.clean(v)));
    }

    /** Nothing shut in, nothing loose, no valve open but at ports and by hand at hose ends, the pump still. */
    boolean quiet(PlanState state) {
        for (int end = 0; end < parts.ends().size(); end++) {
            if (state.at(end) >= 0 && !state.tight(end)) {
                return false;
            }
        }
        for (int valve = 0; valve < parts.valves().size(); valve++) {
            if (state.isOpen(valve) && !parts.mayStayOpen(valve)) {
                return false;
            }
        }
        return !state.anyShutIn() && !state.runs(0) && !state.runs(1);
    }

    boolean ready(PlanState state, int cylinder, String at, boolean out) {
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        boolean own = out && state.cylinderMixed(cylinder);
        int charging = parts.valves().indexOf(Manifold.CHARGING_VALVE);
        return quiet(state)
                && state.at(near) == parts.connections().indexOf(at)
                && state.at(far) == parts.connections().indexOf(valveOf(cylinder, out))
                && handOpen(state, near)
                && handOpen(state, far)
                && (charging < 0 || state.isOpen(charging))
                && pure(state, parts.hoseVolume(roles.centre), !own)
                && pure(state, parts.chamber(PlanParts.CHAMBER_CENTRE), !own);
    }

    boolean stepped(PlanState state, int cylinder, byte way, boolean out) {
        if ((state.moved() & way) == 0 || state.anyShutIn()) {
            return false;
        }
        int valve = parts.valves().indexOf(valveOf(cylinder, out));
        int low = parts.valves().indexOf(Manifold.LOW_VALVE);
        boolean shut = (!out || !state.isOpen(valve)) && (low < 0 || !state.isOpen(low));
        return shut && hand.after(state, WAIT) != null;
    }

    boolean dry(PlanState state, int hose) {
        return hose < 0 || !state.liquid(parts.hoseVolume(hose));
    }

    /** With vapour only; a hose without a manifold, or at a machine's outlet, keeps what its cylinder leaves it, with room above. */
    boolean mayNotComeOff(PlanState state, int volume) {
        return roles.manifold
                ? state.liquid(volume) || (state.condenses(volume) && !atOutlet(volume))
                : state.full(volume);
    }

    private boolean atOutlet(int volume) {
        return volume == parts.machineOutlet() || (roles.outlet >= 0 && volume == parts.hoseVolume(roles.outlet));
    }

    boolean off(PlanState state) {
        if (!quiet(state)) {
            return false;
        }
        for (int end = 0; end < parts.ends().size(); end++) {
            int at = state.at(end);
            if (at >= 0 && (parts.behind(at) == Behind.PORT || parts.behind(at) == Behind.CYLINDER)) {
                return false;
            }
        }
        for (int v = 0; v < parts.volumes().size(); v++) {
            if (mayNotComeOff(state, v)) {
                return false;
            }
        }
        for (int i = 0; i < parts.ports().size(); i++) {
            int valve = parts.connectionValve(parts.portConnection(i));
            if (valve >= 0 && state.isOpen(valve)) {
                return false;
            }
        }
        return true;
    }

    /** Whether liquid goes in by weight: at rest, by the liquid line. */
    boolean weighsIn() {
        return !parts.hookUp().running()
                && parts.high() >= 0
                && parts.ports().get(parts.high()).role() == SystemPort.Role.LIQUID_LINE;
    }

    boolean isReceiver(int cylinder) {
        return parts.cylinders().get(cylinder).use() == ServiceCylinder.Use.RECEIVER;
    }

    static PlanFound found(HookUpPlan.Phase.Kind kind, PlanState from, Node node) {
        return new PlanFound(kind, from, node.moves(), node.state());
    }

    int index(String cylinder) {
        return parts.cylinders().indexOf(parts.hookUp().cylinder(cylinder).orElseThrow());
    }

    /** The valve of the cylinder that is used: vapour to take in, liquid to give. */
    String valveOf(int cylinder, boolean out) {
        List<String> valves = parts.cylinders().get(cylinder).connections();
        return out ? valves.get(0) : valves.get(valves.size() - 1);
    }

    String portName(int port) {
        return port < 0 ? "" : parts.ports().get(port).name();
    }

    /**
     * Where a hose without a manifold may hang: where it hangs, or the liquid line first and the low side where that feeds the cylinder.
     */
    List<String> directPorts(PlanState state, int cylinder) {
        int at = state.at(PlanRoles.system(roles.centre));
        if (at >= 0 && parts.behind(at) == Behind.PORT) {
            return List.of(parts.connections().get(at));
        }
        if (!isReceiver(cylinder)) {
            return weighsIn() ? List.of(portName(parts.high()), portName(parts.low())) : List.of(portName(parts.low()));
        }
        List<String> ports = new ArrayList<>();
        for (int port : new int[] {parts.high(), parts.low()}) {
            if (port >= 0 && parts.ports().get(port).pressure().pascals() > parts.feedsPa(cylinder)) {
                ports.add(portName(port));
            }
        }
        return ports;
    }
}
