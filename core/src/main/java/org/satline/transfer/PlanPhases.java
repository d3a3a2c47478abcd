package org.satline.transfer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.satline.transfer.Act.Kind;
import org.satline.transfer.PlanParts.Behind;
import org.satline.transfer.PlanSearch.Node;

/** The phases of the tasks: what each may touch and where it ends. Used for one plan; not thread-safe. */
final class PlanPhases {
    private static final PlanMove WAIT = new PlanMove(Kind.WAIT, 0, PlanParts.NONE);

    /** One phase found. */
    record Found(HookUpPlan.Phase.Kind kind, PlanState start, List<PlanMove> moves, PlanState end) {
        List<Act> acts() {
            return moves.stream().map(move -> move.act(start.parts)).toList();
        }
    }

    private final PlanParts parts;
    private final PlanState start;
    private PlanRoles roles;
    private final PlanHand hand;
    private final PlanSearch search;
    private final Map<PlanState, Boolean> proved = new HashMap<>();

    PlanPhases(HookUp hookUp, HookUpState state) {
        parts = new PlanParts(hookUp, state);
        start = PlanState.of(parts, state);
        roles = new PlanRoles(parts, start);
        hand = new PlanHand(start);
        search = new PlanSearch(hand);
    }

    // ---------------------------------------------------------------- tasks

    @Nullable List<Found> connect(String cylinder) {
        int index = index(cylinder);
        if (!flows(index)) {
            return null;
        }
        List<Found> both = connect(index);
        boolean highFree = roles.high >= 0 && start.at(PlanRoles.system(roles.high)) < 0;
        if (both != null || !highFree) {
            return both;
        }
        // the low side alone may do
        roles = roles.withoutHigh();
        proved.clear();
        ends.clear();
        return connect(index);
    }

    private @Nullable List<Found> connect(int index) {
        List<Found> found = new ArrayList<>();
        PlanState from = start;
        if (roles.manifold && (roles.low >= 0 || roles.high >= 0)) {
            Found hooked = hookUp(from);
            if (hooked == null) {
                return null;
            }
            found.add(hooked);
            from = hooked.end();
        }
        Found purged = purge(from, index);
        if (purged == null) {
            return null;
        }
        found.add(purged);
        return found;
    }

    /** Whether anything can flow where it should at all. */
    private boolean flows(int cylinder) {
        if (parts.cylinders.get(cylinder).use() == ServiceCylinder.Use.RECEIVER) {
            for (SystemPort port : parts.ports) {
                if (port.pressure().pascals() > parts.feedsPa[cylinder]) {
                    return true;
                }
            }
            return false;
        }
        // R-744 goes in through a regulator, which is not among the parts
        return parts.low >= 0
                && !parts.hookUp.gas().carbonDioxide()
                && parts.certain(start.cylinderLevel(cylinder), parts.portLevel[parts.low])
                && (parts.hookUp.running() || !parts.hookUp.gas().glide());
    }

    @Nullable List<Found> step(String cylinder, boolean out) {
        int index = index(cylinder);
        if ((parts.cylinders.get(index).use() == ServiceCylinder.Use.RECEIVER) != out) {
            return null;
        }
        Found step = step(start, index, out);
        return step == null ? null : List.of(step);
    }

    @Nullable List<Found> changeOver(String cylinder) {
        int index = index(cylinder);
        List<Found> found = new ArrayList<>();
        PlanState from = start;
        if (roles.centre >= 0 && from.at(PlanRoles.cylinder(roles.centre)) >= 0) {
            Found left = leave(from);
            if (left == null) {
                return null;
            }
            found.add(left);
            from = left.end();
        }
        Found purged = flows(index) ? purge(from, index) : null;
        if (purged == null) {
            return null;
        }
        found.add(purged);
        return found;
    }

    @Nullable List<Found> end() {
        Found end = end(start);
        return end == null ? null : List.of(end);
    }

    // ---------------------------------------------------------------- phases

    private @Nullable Found hookUp(PlanState from) {
        boolean liquidHigh = roles.high >= 0 && parts.high >= 0 && parts.ports.get(parts.high).liquid();
        if (neverOff(roles.high, parts.high)
                || neverOff(roles.low, parts.low)
                || liquidHigh && parts.hookUp.gas().carbonDioxide()
                || !parts.ventable && !parts.hookUp.pump()) {
            return null;
        }
        Predicate<PlanState> goal = state -> hookedUp(state) && endProved(state);
        PlanScope sweep = hooking(from).build();
        Node node = search.find(from, sweep, 14, goal);
        if (node != null || !parts.hookUp.pump()) {
            return node == null ? null : found(HookUpPlan.Phase.Kind.HOOK_UP, from, node);
        }
        // the low hose first, so that only the high one is left to the pump
        PlanScope open = hooking(from).uncap(Manifold.CENTRE).build();
        Node low = search.find(from, open, 9, state -> quiet(state) && lowReady(state));
        node = low == null ? null : search.find(low.state(), withPump(hooking(low.state())).build(), 14, goal);
        if (low != null && node != null) {
            List<PlanMove> moves = new ArrayList<>(low.moves());
            moves.addAll(node.moves());
            return new Found(HookUpPlan.Phase.Kind.HOOK_UP, from, moves, node.state());
        }
        return evacuated(from, goal);
    }

    /** Everything on and open to the pump at once, as far as it goes; then what is shut, and in which order, is searched. */
    private @Nullable Found evacuated(PlanState from, Predicate<PlanState> goal) {
        PlanScope pump = withPump(hooking(from)).build();
        Node node = new Node(from, null, null, 0);
        for (PlanMove move : pump.forced()) {
            node = also(node, move.kind(), move.target(), move.to());
        }
        for (int hose : new int[] {roles.low, roles.high}) {
            int port = hose == roles.low ? parts.low : parts.high;
            if (hose >= 0 && port >= 0 && parts.ports.get(port).hasValve()) {
                node = also(node, Kind.CONNECT_TIGHT, 2 * hose, parts.portConnection[port]);
                node = also(node, Kind.OPEN, parts.endValve[2 * hose], PlanParts.NONE);
            }
        }
        node = also(node, Kind.OPEN, parts.highValve, PlanParts.NONE);
        node = also(node, Kind.CRACK, parts.lowValve, PlanParts.NONE);
        node = pumping(node);
        int pumpHose = pumpHose();
        PlanScope shutting = new PlanScope.Builder(node.state())
                .valve(Manifold.LOW_VALVE, Kind.CLOSE)
                .valve(Manifold.HIGH_VALVE, Kind.CLOSE)
                .valve(Manifold.VACUUM_VALVE, Kind.CLOSE)
                .hand(pumpHose, Kind.CLOSE)
                .takeOff(PlanRoles.cylinder(pumpHose))
                .pump()
                .connect(PlanRoles.system(roles.high), portName(parts.high), false)
                .connect(PlanRoles.system(roles.low), portName(parts.low), false)
                .handOpening(roles.low)
                .handOpening(roles.high)
                .valve(portName(parts.high), Kind.OPEN)
                .valve(portName(parts.low), Kind.OPEN)
                .build();
        Node done = search.find(node.state(), shutting, 12, goal);
        if (done == null) {
            return null;
        }
        List<PlanMove> moves = new ArrayList<>(node.moves());
        moves.addAll(done.moves());
        return new Found(HookUpPlan.Phase.Kind.HOOK_UP, from, moves, done.state());
    }

    private int pumpHose() {
        return pumpConnection() != null && roles.pump >= 0 ? roles.pump : roles.centre;
    }

    /** The pump on, its way open, running. */
    private Node pumping(Node from) {
        Node node = from;
        int hose = pumpHose();
        if (hose >= 0) {
            node = also(node, Kind.CONNECT_TIGHT, 2 * hose + 1, parts.connections.indexOf(HookUp.PUMP));
            node = also(node, Kind.OPEN, parts.endValve[2 * hose], PlanParts.NONE);
            node = also(node, Kind.OPEN, parts.endValve[2 * hose + 1], PlanParts.NONE);
        }
        node = also(node, Kind.OPEN, parts.valves.indexOf(Manifold.CHARGING_VALVE), PlanParts.NONE);
        node = also(node, Kind.START, 0, PlanParts.NONE);
        return also(node, Kind.OPEN, parts.valves.indexOf(Manifold.VACUUM_VALVE), PlanParts.NONE);
    }

    /** The hose to the cylinder evacuated, at its place where the pump has its own connection, otherwise before it goes there. */
    private @Nullable Found evacuatedHose(PlanState from, String at, String valve, Predicate<PlanState> goal) {
        Node node = new Node(from, null, null, 0);
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        boolean own = pumpHose() == roles.pump;
        if (own) {
            node = also(node, Kind.CONNECT_TIGHT, PlanRoles.system(roles.pump), parts.connections.indexOf(pumpConnection()));
        }
        node = also(node, Kind.CONNECT_TIGHT, near, parts.connections.indexOf(at));
        if (own) {
            node = also(node, Kind.CONNECT_TIGHT, far, parts.connections.indexOf(valve));
            node = also(node, Kind.OPEN, parts.endValve[near], PlanParts.NONE);
            node = also(node, Kind.OPEN, parts.endValve[far], PlanParts.NONE);
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
        return new Found(HookUpPlan.Phase.Kind.PURGE, from, moves, done.state());
    }

    private PlanScope.Builder hooking(PlanState from) {
        return new PlanScope.Builder(from)
                .force(PlanRoles.cylinder(roles.low), Manifold.LOW)
                .force(PlanRoles.cylinder(roles.high), Manifold.HIGH)
                .turn(roles.low)
                .turn(roles.high)
                .connect(PlanRoles.system(roles.high), portName(parts.high), true)
                .connect(PlanRoles.system(roles.low), portName(parts.low), from.at(PlanRoles.system(Math.max(roles.low, 0))) >= 0)
                .handOpening(roles.low)
                .handOpening(roles.high)
                .opening(portName(parts.high))
                .opening(portName(parts.low))
                .valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE);
    }

    /** Whether neither end of a hose may go on that port: it could never come off again. */
    private boolean neverOff(int hose, int port) {
        if (hose < 0 || port < 0) {
            return false;
        }
        ServiceHose ends = parts.hoses.get(hose);
        boolean plain = ends.systemEnd() == EndFitting.PLAIN_FLARE && ends.cylinderEnd() == EndFitting.PLAIN_FLARE;
        SystemPort at = parts.ports.get(port);
        return !at.hasValve() && (!parts.ventable || at.liquid() && plain) || plain && !parts.ventable;
    }

    private boolean lowReady(PlanState state) {
        return atPort(state, roles.low, parts.low)
                && pure(state, parts.chamber[PlanParts.CHAMBER_LOW], true)
                && pure(state, parts.chamber[PlanParts.CHAMBER_CENTRE], true);
    }

    /** The pump at a connection of its own, or at the end of the hose that later goes to the cylinder. */
    private PlanScope.Builder withPump(PlanScope.Builder builder) {
        boolean own = roles.pump >= 0 && pumpConnection() != null;
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

    private @Nullable String pumpConnection() {
        for (String name : List.of(Manifold.VACUUM, Manifold.CENTRE_2)) {
            if (parts.connections.contains(name)) {
                return name;
            }
        }
        return null;
    }

    private @Nullable Found purge(PlanState from, int cylinder) {
        boolean out = parts.cylinders.get(cylinder).use() == ServiceCylinder.Use.RECEIVER;
        String valve = valveOf(cylinder, out);
        String at = roles.manifold ? Manifold.CENTRE : directPort(from, out);
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        if (near < 0) {
            return null;
        }
        Predicate<PlanState> mixedToo = state -> ready(state, cylinder, at, out) && proved(state, cylinder, out);
        Predicate<PlanState> clean = state -> pure(state, parts.hoseVolume[roles.centre], true)
                && pure(state, parts.chamber[PlanParts.CHAMBER_CENTRE], true)
                && mixedToo.test(state);
        PlanScope.Builder sweep = new PlanScope.Builder(from)
                .turn(roles.centre)
                .connect(near, at, true)
                .connect(far, valve, true)
                .handOpening(roles.centre)
                .opening(Manifold.CHARGING_VALVE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                .valve(valve, Kind.OPEN_SHORT, Kind.CRACK, Kind.CLOSE);
        if (!roles.manifold) {
            sweep.valve(at, Kind.OPEN, Kind.CLOSE);
        }
        PlanScope sweeps = sweep.build();
        Node node = search.find(from, sweeps, 12, clean);
        if (node == null && parts.hookUp.pump() && roles.manifold) {
            Found evacuated = evacuatedHose(from, at, valve, clean);
            if (evacuated != null) {
                return evacuated;
            }
        }
        if (node == null && out) {
            node = search.find(from, sweeps, 12, mixedToo);
        }
        return node == null ? null : found(HookUpPlan.Phase.Kind.PURGE, from, node);
    }

    private @Nullable Found step(PlanState from, int cylinder, boolean out) {
        PlanState fresh = from.copy();
        fresh.forgetMoved();
        String valve = valveOf(cylinder, out);
        PlanScope.Builder builder = new PlanScope.Builder(from);
        if (out) {
            builder.valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                    .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                    .valve(valve, Kind.OPEN_SHORT, Kind.CLOSE);
        } else {
            builder.invert(cylinder, true)
                    .valve(valve, Kind.OPEN, Kind.CLOSE)
                    .valve(Manifold.HIGH_VALVE, Kind.CLOSE);
            if (roles.manifold) {
                builder.valve(Manifold.LOW_VALVE, Kind.OPEN_SHORT, Kind.CLOSE);
            } else {
                builder.valve(valve, Kind.OPEN_SHORT);
            }
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
        if (node == null && !parts.hookUp.gas().glide()) {
            node = search.find(fresh, scope, 9, state -> stepped(state, cylinder, vapour, out) && endProved(state));
        }
        if (node == null) {
            return null;
        }
        PlanState waited = hand.after(node.state(), WAIT);
        List<PlanMove> moves = new ArrayList<>(node.moves());
        if (!out) {
            int fill = moves.indexOf(new PlanMove(Kind.OPEN, parts.valves.indexOf(valve), PlanParts.NONE));
            moves.add(Math.max(fill, 0), new PlanMove(Kind.ZERO_SCALE, 0, PlanParts.NONE));
        }
        moves.add(WAIT);
        moves.add(new PlanMove(Kind.READ_SCALE, 0, PlanParts.NONE));
        return waited == null ? null : new Found(HookUpPlan.Phase.Kind.STEP, fresh, moves, waited);
    }

    private @Nullable Found leave(PlanState from) {
        int far = PlanRoles.cylinder(roles.centre);
        PlanScope.Builder builder = emptying(from).takeOff(far);
        if (!roles.manifold) {
            builder.takeOff(PlanRoles.system(roles.centre));
        }
        Node node = search.find(from, builder.build(), 12, state -> state.at(far) < 0 && quiet(state) && dry(state, roles.centre));
        return node == null ? null : found(HookUpPlan.Phase.Kind.LEAVE, from, node);
    }

    private PlanScope.Builder emptying(PlanState from) {
        PlanScope.Builder builder = new PlanScope.Builder(from);
        for (ServiceCylinder cylinder : parts.cylinders) {
            cylinder.connections().forEach(name -> builder.valve(name, Kind.CLOSE));
        }
        builder.hand(roles.centre, Kind.CLOSE)
                .valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE);
        for (int i = 0; i < parts.cylinders.size(); i++) {
            builder.invert(i, false);
        }
        return builder;
    }

    /** First what holds liquid is emptied into the running suction, then everything comes off in a fixed order. */
    private @Nullable Found end(PlanState from) {
        int centre = PlanRoles.system(roles.centre);
        PlanScope.Builder builder = emptying(from).pump();
        if (parts.high >= 0) {
            builder.valve(portName(parts.high), Kind.CLOSE);
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
        return new Found(HookUpPlan.Phase.Kind.TAKE_OFF, from, moves, off.state());
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
        for (int end = 0; end < parts.ends.size(); end++) {
            if (!order.contains(end)) {
                order.add(end);
            }
        }
        for (int end : order) {
            int at = node.state().at(end);
            if (at < 0 || parts.behind[at] == Behind.VOLUME || parts.behind[at] == Behind.PUMP) {
                continue;
            }
            node = also(node, Kind.CLOSE, parts.connectionValve[at]);
            if (node.state().fitting(end) == EndFitting.OPEN_CLOSE_VALVE) {
                node = also(node, Kind.CLOSE, parts.endValve[end]);
            }
            node = also(node, Kind.TAKE_OFF, end);
        }
        return off(node.state()) ? node : null;
    }

    private Node also(Node node, Kind kind, int target) {
        return also(node, kind, target, PlanParts.NONE);
    }

    /** The move made where it can be; where not, as before. */
    private Node also(Node node, Kind kind, int target, int to) {
        PlanMove move = new PlanMove(kind, target, to);
        PlanState next = target < 0 ? null : hand.after(node.state(), move);
        return next == null ? node : new Node(next, node, move, node.depth() + 1);
    }

    private boolean noLiquid(PlanState state) {
        for (int v = 0; v < parts.volumes.size(); v++) {
            if (state.content(v) == PlanState.LIQUID) {
                return false;
            }
        }
        return quiet(state);
    }

    // ---------------------------------------------------------------- goals

    private boolean hookedUp(PlanState state) {
        return quiet(state)
                && atPort(state, roles.low, parts.low)
                && atPort(state, roles.high, parts.high)
                && pure(state, parts.chamber[PlanParts.CHAMBER_CENTRE], true)
                && (roles.low < 0 || pure(state, parts.chamber[PlanParts.CHAMBER_LOW], true))
                && (roles.high < 0 || pure(state, parts.chamber[PlanParts.CHAMBER_HIGH], true));
    }

    private boolean atPort(PlanState state, int hose, int port) {
        if (hose < 0 || port < 0) {
            return true;
        }
        int end = 2 * hose;
        boolean core = !parts.ports.get(port).hasValve();
        boolean plain = state.fitting(end) == EndFitting.PLAIN_FLARE;
        if (plain && (core && parts.ports.get(port).liquid() || !parts.ventable)) {
            // it could never come off again
            return false;
        }
        int at = parts.portConnection[port];
        return state.at(end) == at
                && state.tight(end)
                && (parts.connectionValve[at] < 0 || state.isOpen(parts.connectionValve[at]))
                && handOpen(state, end)
                && handOpen(state, end + 1)
                && pure(state, parts.hoseVolume[hose], true);
    }

    private boolean handOpen(PlanState state, int end) {
        return state.fitting(end) != EndFitting.OPEN_CLOSE_VALVE || state.isOpen(parts.endValve[end]);
    }

    private boolean pure(PlanState state, int v, boolean clean) {
        return v < 0 || state.content(v) != PlanState.AIR && !state.unknown(v) && (!clean || state.clean(v));
    }

    /** Nothing shut in, nothing loose, no valve open but at ports and by hand at hose ends, the pump still. */
    private boolean quiet(PlanState state) {
        for (int end = 0; end < parts.ends.size(); end++) {
            if (state.at(end) >= 0 && !state.tight(end)) {
                return false;
            }
        }
        for (int valve = 0; valve < parts.valves.size(); valve++) {
            if (state.isOpen(valve) && !parts.mayStayOpen[valve]) {
                return false;
            }
        }
        return !state.anyShutIn() && !state.runs(0);
    }

    private boolean ready(PlanState state, int cylinder, String at, boolean out) {
        int near = PlanRoles.system(roles.centre);
        int far = PlanRoles.cylinder(roles.centre);
        boolean own = out && state.cylinderOrigin(cylinder) >= GasOrigin.RECOVERED.ordinal();
        int charging = parts.valves.indexOf(Manifold.CHARGING_VALVE);
        return quiet(state)
                && state.at(near) == parts.connections.indexOf(at)
                && state.at(far) == parts.connections.indexOf(valveOf(cylinder, out))
                && handOpen(state, near)
                && handOpen(state, far)
                && (charging < 0 || state.isOpen(charging))
                && pure(state, parts.hoseVolume[roles.centre], !own)
                && pure(state, parts.chamber[PlanParts.CHAMBER_CENTRE], !own);
    }

    private boolean stepped(PlanState state, int cylinder, byte way, boolean out) {
        if ((state.moved() & way) == 0 || state.anyShutIn()) {
            return false;
        }
        int valve = parts.valves.indexOf(valveOf(cylinder, out));
        int low = parts.valves.indexOf(Manifold.LOW_VALVE);
        boolean shut = (!out || !state.isOpen(valve)) && (low < 0 || !state.isOpen(low));
        return shut && hand.after(state, WAIT) != null;
    }

    private boolean dry(PlanState state, int hose) {
        return hose < 0 || !state.liquid(parts.hoseVolume[hose]);
    }

    private boolean off(PlanState state) {
        if (!quiet(state)) {
            return false;
        }
        for (int end = 0; end < parts.ends.size(); end++) {
            int at = state.at(end);
            if (at >= 0 && (parts.behind[at] == Behind.PORT || parts.behind[at] == Behind.CYLINDER)) {
                return false;
            }
        }
        for (int v = 0; v < parts.volumes.size(); v++) {
            if (state.content(v) == PlanState.LIQUID) {
                return false;
            }
        }
        for (int i = 0; i < parts.ports.size(); i++) {
            int valve = parts.connectionValve[parts.portConnection[i]];
            if (valve >= 0 && state.isOpen(valve)) {
                return false;
            }
        }
        return true;
    }

    // ---------------------------------------------------------------- proofs and names

    /** Whether a step and the take-off after it are found from here; a hose that is ready and no step to make has an end all the same. */
    private boolean proved(PlanState state, int cylinder, boolean out) {
        return proved.computeIfAbsent(state, each -> step(each, cylinder, out) != null);
    }

    private final Map<PlanState, Boolean> ends = new HashMap<>();

    private boolean endProved(PlanState state) {
        PlanState waited = hand.after(state, WAIT);
        return waited != null && ends.computeIfAbsent(waited, each -> end(each) != null);
    }

    private static Found found(HookUpPlan.Phase.Kind kind, PlanState from, Node node) {
        return new Found(kind, from, node.moves(), node.state());
    }

    private int index(String cylinder) {
        return parts.cylinders.indexOf(parts.hookUp.cylinder(cylinder).orElseThrow());
    }

    /** The valve of the cylinder that is used: vapour to take in, liquid to give. */
    private String valveOf(int cylinder, boolean out) {
        List<String> valves = parts.cylinders.get(cylinder).connections();
        return out ? valves.get(0) : valves.get(valves.size() - 1);
    }

    private String portName(int port) {
        return port < 0 ? "" : parts.ports.get(port).name();
    }

    private String directPort(PlanState state, boolean out) {
        int at = state.at(PlanRoles.system(roles.centre));
        if (at >= 0 && parts.behind[at] == Behind.PORT) {
            return parts.connections.get(at);
        }
        return portName(out && parts.high >= 0 ? parts.high : parts.low);
    }
}
