package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.planner.PlanSearch.Node;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanParts.Behind;
import org.satline.transfer.transition.PlanState;

/** The phases of the tasks: what each may touch and where it ends. Used for one plan; not thread-safe. */
final class PlanPhases extends PlanMachining {
    private final Map<PlanState, Boolean> proved = new HashMap<>();

    PlanPhases(HookUp hookUp, HookUpState state) {
        super(hookUp, state);
    }

    // ---------------------------------------------------------------- tasks

    @Nullable
    List<PlanFound> connect(String cylinder) {
        int index = index(cylinder);
        List<PlanFound> found = flows(index) ? connect(index, false) : null;
        if (found == null && parts.hookUp().machine()) {
            found = connect(index, true);
        }
        boolean highFree = roles.high >= 0 && start.at(PlanRoles.system(roles.high)) < 0;
        if (found != null || !highFree) {
            return found;
        }
        // the low side alone may do
        roles = roles.withoutHigh();
        proved.clear();
        ends.clear();
        found = flows(index) ? connect(index, false) : null;
        return found == null && parts.hookUp().machine() ? connect(index, true) : found;
    }

    private @Nullable List<PlanFound> connect(int index, boolean machine) {
        List<PlanFound> found = new ArrayList<>();
        PlanState from = start;
        // what hangs already was not begun by this plan: its end is proved with that of the step
        if (roles.manifold && (roles.low >= 0 || roles.high >= 0) && !hookedUp(from)) {
            PlanFound hooked = hookUp(from);
            if (hooked == null) {
                return null;
            }
            found.add(hooked);
            from = hooked.end();
        }
        List<PlanFound> purged = machine ? purgeThroughMachine(from, index) : listed(purge(from, index));
        if (purged == null) {
            return null;
        }
        found.addAll(purged);
        return found;
    }

    /** Whether anything can flow where it should at all. */
    private boolean flows(int cylinder) {
        if (parts.cylinders().get(cylinder).use() == ServiceCylinder.Use.RECEIVER) {
            for (SystemPort port : parts.ports()) {
                if (port.pressure().pascals() > parts.feedsPa(cylinder)) {
                    return true;
                }
            }
            return false;
        }
        boolean above = false;
        for (int port : new int[] {parts.low(), weighsIn() ? parts.high() : PlanParts.NONE}) {
            above |= port >= 0 && parts.certain(start.cylinderLevel(cylinder), parts.portLevel(port));
        }
        // R-744 goes in through a regulator, which is not among the parts
        return above
                && !parts.hookUp().gas().carbonDioxide()
                && (parts.hookUp().running()
                        || weighsIn()
                        || !parts.hookUp().gas().glide());
    }

    @Nullable
    List<PlanFound> step(String cylinder, boolean out) {
        int index = index(cylinder);
        boolean unregulated = !out && parts.hookUp().gas().carbonDioxide();
        if (unregulated || (parts.cylinders().get(index).use() == ServiceCylinder.Use.RECEIVER) != out) {
            return null;
        }
        return listed(oneStep(start, index, out));
    }

    private static @Nullable List<PlanFound> listed(@Nullable PlanFound found) {
        return found == null ? null : List.of(found);
    }

    @Nullable
    List<PlanFound> changeOver(String cylinder) {
        int index = index(cylinder);
        List<PlanFound> found = new ArrayList<>();
        PlanState from = start;
        if (roles.centre >= 0 && from.at(PlanRoles.cylinder(roles.centre)) >= 0) {
            PlanFound left = leave(from);
            if (left == null) {
                return null;
            }
            found.add(left);
            from = left.end();
        }
        List<PlanFound> purged = flows(index) ? listed(purge(from, index)) : null;
        purged = purged == null ? purgeThroughMachine(from, index) : purged;
        if (purged == null) {
            return null;
        }
        found.addAll(purged);
        return found;
    }

    @Nullable
    List<PlanFound> end() {
        return end(start);
    }

    private @Nullable List<PlanFound> end(PlanState from) {
        List<PlanFound> end = takenOff(from, emptying(from));
        for (String source : end == null && weighsIn() ? sweepingSources(from) : List.<String>of()) {
            int cylinder = parts.behindIndex(parts.connections().indexOf(source));
            boolean pushes = end == null && parts.certain(from.cylinderLevel(cylinder), parts.portLevel(parts.high()));
            end = pushes ? takenOff(from, pushing(from, source)) : end;
        }
        if (end != null) {
            return end;
        }
        PlanFound emptied = emptiedByMachine(from);
        end = emptied == null ? null : takenOff(emptied.end(), emptying(emptied.end()));
        if (emptied == null || end == null) {
            return null;
        }
        List<PlanFound> all = new ArrayList<>(List.of(emptied));
        all.addAll(end);
        return all;
    }

    private @Nullable PlanFound oneStep(PlanState from, int cylinder, boolean out) {
        return out && onMachine(from) ? stepThroughMachine(from, cylinder) : step(from, cylinder, out);
    }

    // ---------------------------------------------------------------- phases

    private @Nullable PlanFound step(PlanState from, int cylinder, boolean out) {
        PlanState fresh = from.copy();
        fresh.forgetMoved();
        String valve = valveOf(cylinder, out);
        PlanScope.Builder builder = new PlanScope.Builder(from);
        if (out) {
            builder.valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                    .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                    .valve(valve, Kind.OPEN_SHORT, Kind.CLOSE);
        } else {
            builder.invert(cylinder, true).valve(valve, Kind.OPEN, Kind.CLOSE).valve(Manifold.HIGH_VALVE, Kind.CLOSE);
            if (roles.manifold) {
                builder.valve(Manifold.LOW_VALVE, Kind.OPEN_SHORT, Kind.CLOSE);
                if (weighsIn()) {
                    builder.valve(Manifold.HIGH_VALVE, Kind.OPEN_SHORT);
                }
            }
        }
        if (!roles.manifold) {
            // without a manifold any valve on the way meters
            builder.valve(valve, Kind.OPEN_SHORT)
                    .hand(roles.centre, Kind.OPEN_SHORT)
                    .ports(Kind.OPEN_SHORT);
        }
        builder.hand(roles.centre, Kind.OPEN)
                .hand(roles.low, Kind.OPEN)
                .hand(roles.high, Kind.OPEN)
                .valve(Manifold.CHARGING_VALVE, Kind.OPEN)
                .ports(Kind.OPEN);
        PlanScope scope = builder.build();
        byte liquid = out ? PlanState.OUT_LIQUID : PlanState.IN_LIQUID;
        byte vapour = out ? PlanState.OUT_VAPOUR : PlanState.IN_VAPOUR;
        Node node = search.find(fresh, scope, 9, state -> stepped(state, cylinder, liquid, out) && endProved(state));
        if (node == null && !parts.hookUp().gas().glide()) {
            node = search.find(fresh, scope, 9, state -> stepped(state, cylinder, vapour, out) && endProved(state));
        }
        if (node == null) {
            return null;
        }
        PlanState waited = hand.after(node.state(), WAIT);
        List<PlanMove> moves = new ArrayList<>(node.moves());
        if (!out) {
            int fill = moves.indexOf(new PlanMove(Kind.OPEN, parts.valves().indexOf(valve), PlanParts.NONE));
            moves.add(Math.max(fill, 0), new PlanMove(Kind.ZERO_SCALE, 0, PlanParts.NONE));
        }
        moves.add(WAIT);
        moves.add(new PlanMove(Kind.READ_SCALE, 0, PlanParts.NONE));
        return waited == null ? null : new PlanFound(HookUpPlan.Phase.Kind.STEP, fresh, moves, waited);
    }

    private @Nullable PlanFound leave(PlanState from) {
        int far = PlanRoles.cylinder(roles.centre);
        PlanScope.Builder builder = emptying(from).takeOff(far);
        if (!roles.manifold) {
            builder.takeOff(PlanRoles.system(roles.centre));
        }
        Node node = search.find(
                from, builder.build(), 12, state -> state.at(far) < 0 && quiet(state) && dry(state, roles.centre));
        return node == null ? null : found(HookUpPlan.Phase.Kind.LEAVE, from, node);
    }

    private PlanScope.Builder emptying(PlanState from) {
        PlanScope.Builder builder = new PlanScope.Builder(from);
        for (ServiceCylinder cylinder : parts.cylinders()) {
            cylinder.connections().forEach(name -> builder.valve(name, Kind.CLOSE));
        }
        builder.valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                .hand(roles.centre, Kind.CLOSE);
        for (int i = 0; i < parts.cylinders().size(); i++) {
            // the hose is emptied into the cylinder that it is on; cold liquid is not shut in for that even for one
            // act. Hoses of a
            // manifold at rest dry only into a cylinder that does not make them mixed
            boolean dries = !parts.hookUp().running() && !from.cylinderMixed(i);
            if (!roles.manifold || dries) {
                builder.valve(parts.cylinders().get(i).connections().get(0), Kind.OPEN_SHORT, Kind.CRACK)
                        .waiting();
            }
        }
        for (int i = 0; i < parts.cylinders().size(); i++) {
            builder.invert(i, false);
        }
        return builder;
    }

    /** At rest nothing draws the liquid from the hoses: a source's vapour pushes it in, through the low hose. */
    private PlanScope.Builder pushing(PlanState from, String source) {
        return emptying(from)
                .takeOff(PlanRoles.system(roles.low))
                .connect(PlanRoles.system(roles.low), source, false)
                .hand(roles.low, Kind.OPEN, Kind.CLOSE)
                .valve(source, Kind.OPEN);
    }

    /** First what holds liquid is emptied into the running suction, then everything comes off in a fixed order. */
    private @Nullable List<PlanFound> takenOff(PlanState from, PlanScope.Builder builder) {
        int centre = PlanRoles.system(roles.centre);
        if (parts.high() >= 0) {
            builder.valve(portName(parts.high()), Kind.CLOSE);
        }
        for (int hose : new int[] {roles.high, roles.manifold ? PlanParts.NONE : roles.centre}) {
            builder.hand(hose, Kind.CLOSE).takeOff(PlanRoles.system(hose));
        }
        if (roles.manifold && centre >= 0 && from.at(centre) >= 0) {
            builder.takeOff(centre).cap(Manifold.CENTRE);
        }
        Node node = search.find(from, builder.build(), 12, state -> noLiquid(state) && takenOff(state) != null);
        Node off = node == null ? null : takenOff(node.state());
        if (node == null || off == null) {
            return null;
        }
        List<PlanMove> moves = new ArrayList<>(node.moves());
        moves.addAll(off.moves());
        PlanFound both = new PlanFound(HookUpPlan.Phase.Kind.TAKE_OFF, from, moves, off.state());
        return PlanWriter.acts(both).size() <= HookUpPlan.Phase.MOST_ACTS
                ? List.of(both)
                : List.of(
                        found(HookUpPlan.Phase.Kind.LEAVE, from, node),
                        new PlanFound(HookUpPlan.Phase.Kind.TAKE_OFF, node.state(), off.moves(), off.state()));
    }

    private @Nullable Node takenOff(PlanState from) {
        Node node = new Node(from, null, null, 0);
        List<Integer> order = new ArrayList<>();
        for (int hose : new int[] {roles.centre, roles.high, roles.low}) {
            if (hose >= 0) {
                order.add(PlanRoles.cylinder(hose));
                order.add(PlanRoles.system(hose));
            }
        }
        for (int end = 0; end < parts.ends().size(); end++) {
            if (!order.contains(end)) {
                order.add(end);
            }
        }
        for (int port = 0; port < parts.ports().size(); port++) {
            node = also(node, Kind.CLOSE, parts.connectionValve(parts.portConnection(port)));
        }
        for (int end : order) {
            int at = node.state().at(end);
            if (at < 0 || parts.behind(at) == Behind.VOLUME || parts.behind(at) == Behind.PUMP) {
                continue;
            }
            node = also(node, Kind.CLOSE, parts.connectionValve(at));
            if (node.state().fitting(end) == EndFitting.OPEN_CLOSE_VALVE) {
                node = also(node, Kind.CLOSE, parts.endValve(end));
            }
            node = also(node, Kind.TAKE_OFF, end);
        }
        return off(node.state()) ? node : null;
    }

    private boolean noLiquid(PlanState state) {
        for (int v = 0; v < parts.volumes().size(); v++) {
            if (mayNotComeOff(state, v)) {
                return false;
            }
        }
        return quiet(state);
    }

    // ---------------------------------------------------------------- proofs and names

    /** Whether a step and the take-off after it are found from here; a hose that is ready and no step to make has an end all the same. */
    @Override
    boolean proved(PlanState state, int cylinder, boolean out) {
        return proved.computeIfAbsent(state, each -> oneStep(each, cylinder, out) != null);
    }

    private final Map<PlanState, Boolean> ends = new HashMap<>();

    @Override
    boolean endProved(PlanState state) {
        PlanState waited = hand.after(state, WAIT);
        return waited != null && ends.computeIfAbsent(waited, each -> end(each) != null);
    }
}
