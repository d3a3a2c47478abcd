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
    private final PlanRoles roles;
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
        Found purged = purge(from, index);
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
        Predicate<PlanState> goal = state -> hookedUp(state) && endProved(state);
        PlanScope.Builder sweep = new PlanScope.Builder(parts)
                .force(PlanRoles.cylinder(roles.low), Manifold.LOW)
                .force(PlanRoles.cylinder(roles.high), Manifold.HIGH)
                .turn(roles.low)
                .turn(roles.high)
                .connect(PlanRoles.system(roles.high), portName(parts.high), true)
                .connect(PlanRoles.system(roles.low), portName(parts.low), true)
                .hand(roles.low, Kind.OPEN, Kind.CLOSE)
                .hand(roles.high, Kind.OPEN, Kind.CLOSE)
                .ports(Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.HIGH_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                .uncap(Manifold.CENTRE);
        Node node = search.find(from, sweep.build(), 14, goal);
        if (node == null && parts.hookUp.pump()) {
            node = search.find(from, withPump(sweep).build(), 20, goal);
        }
        return node == null ? null : found(HookUpPlan.Phase.Kind.HOOK_UP, from, node);
    }

    /** The pump at a connection of its own, or at the end of the hose that later goes to the cylinder. */
    private PlanScope.Builder withPump(PlanScope.Builder builder) {
        boolean own = roles.pump >= 0 && pumpConnection() != null;
        if (own) {
            builder.force(PlanRoles.system(roles.pump), pumpConnection()).force(PlanRoles.cylinder(roles.pump), HookUp.PUMP);
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
        Predicate<PlanState> clean = state -> pure(state, parts.hoses.get(roles.centre).name(), true)
                && pure(state, Manifold.CENTRE_CHAMBER, true)
                && mixedToo.test(state);
        PlanScope.Builder sweep = new PlanScope.Builder(parts)
                .turn(roles.centre)
                .connect(near, at, true)
                .connect(far, valve, true)
                .hand(roles.centre, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.CHARGING_VALVE, Kind.OPEN, Kind.CLOSE)
                .valve(Manifold.LOW_VALVE, Kind.CRACK, Kind.CLOSE)
                .valve(valve, Kind.OPEN_SHORT, Kind.CRACK, Kind.CLOSE);
        if (!roles.manifold) {
            sweep.valve(at, Kind.OPEN, Kind.CLOSE);
        }
        PlanScope sweeps = sweep.build();
        Node node = search.find(from, sweeps, 12, clean);
        if (node == null && parts.hookUp.pump()) {
            node = search.find(from, withPump(sweep).takeOff(far).build(), 18, clean);
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
        PlanScope.Builder builder = new PlanScope.Builder(parts);
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
        PlanScope.Builder builder = emptying().takeOff(far);
        if (!roles.manifold) {
            builder.takeOff(PlanRoles.system(roles.centre));
        }
        Node node = search.find(from, builder.build(), 12, state -> state.at(far) < 0 && quiet(state) && dry(state, roles.centre));
        return node == null ? null : found(HookUpPlan.Phase.Kind.LEAVE, from, node);
    }

    private PlanScope.Builder emptying() {
        PlanScope.Builder builder = new PlanScope.Builder(parts);
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

    private @Nullable Found end(PlanState from) {
        PlanScope.Builder builder = emptying()
                .hand(roles.low, Kind.CLOSE)
                .hand(roles.high, Kind.CLOSE)
                .ports(Kind.CLOSE)
                .pump();
        for (int hose = parts.hoses.size() - 1; hose >= 0; hose--) {
            builder.takeOff(2 * hose).takeOff(2 * hose + 1);
        }
        builder.cap(Manifold.CENTRE);
        PlanScope scope = builder.build();
        List<PlanMove> useful = scope.moves().stream()
                .filter(move -> move.kind() != Kind.TAKE_OFF || usefulOff(move.target(), from))
                .toList();
        Node node = search.find(from, new PlanScope(List.of(), List.of(), useful), 16, this::off);
        return node == null ? null : found(HookUpPlan.Phase.Kind.TAKE_OFF, from, node);
    }

    private boolean usefulOff(int end, PlanState from) {
        int at = from.at(end);
        return at >= 0
                && (parts.behind[at] == Behind.PORT
                        || parts.behind[at] == Behind.CYLINDER
                        || parts.connections.get(at).equals(Manifold.CENTRE));
    }

    // ---------------------------------------------------------------- goals

    private boolean hookedUp(PlanState state) {
        return quiet(state)
                && atPort(state, roles.low, parts.low)
                && atPort(state, roles.high, parts.high)
                && pure(state, Manifold.CENTRE_CHAMBER, true)
                && (roles.low < 0 || pure(state, Manifold.LOW_CHAMBER, true))
                && (roles.high < 0 || pure(state, Manifold.HIGH_CHAMBER, true));
    }

    private boolean atPort(PlanState state, int hose, int port) {
        if (hose < 0 || port < 0) {
            return true;
        }
        int end = 2 * hose;
        int at = parts.connections.indexOf(portName(port));
        return state.at(end) == at
                && state.tight(end)
                && (parts.connectionValve[at] < 0 || state.isOpen(parts.connectionValve[at]))
                && handOpen(state, end)
                && handOpen(state, end + 1)
                && pure(state, parts.hoses.get(hose).name(), true);
    }

    private boolean handOpen(PlanState state, int end) {
        return state.fitting(end) != EndFitting.OPEN_CLOSE_VALVE || state.isOpen(parts.endValve[end]);
    }

    private boolean pure(PlanState state, String volume, boolean clean) {
        int v = parts.volumes.indexOf(volume);
        return v < 0 || state.content(v) != PlanState.AIR && !state.unknown(v) && (!clean || state.clean(v));
    }

    /** Nothing shut in, nothing loose, no valve open but at ports and by hand at hose ends, the pump still. */
    private boolean quiet(PlanState state) {
        for (int end = 0; end < parts.ends.size(); end++) {
            if (state.at(end) >= 0 && !state.tight(end)) {
                return false;
            }
        }
        for (String valve : parts.valves) {
            boolean stays = parts.ends.contains(valve)
                    || parts.hookUp.port(valve).isPresent()
                    || valve.equals(Manifold.CHARGING_VALVE);
            if (!stays && state.isOpen(parts.valves.indexOf(valve))) {
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
                && pure(state, parts.hoses.get(roles.centre).name(), !own)
                && pure(state, Manifold.CENTRE_CHAMBER, !own);
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
        return hose < 0 || !state.liquid(parts.volumes.indexOf(parts.hoses.get(hose).name()));
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
            int valve = parts.connectionValve[parts.connections.indexOf(parts.ports.get(i).name())];
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
