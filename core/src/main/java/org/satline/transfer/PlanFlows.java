package org.satline.transfer;

import java.util.Arrays;
import org.satline.transfer.PlanParts.Behind;

/**
 * What the planner expects to happen as things are open, in classes of content and levels of pressure, and what it forbids. It is stricter
 * than nature: what it cannot tell it forbids. Changes the state that it is given. Not thread-safe.
 */
final class PlanFlows {
    private static final int MAX = 64;
    private static final int AIR_END = 100;
    private static final int PUMP_END = 101;
    /** A pump that stands still lets air in; nothing is blown through it. */
    private static final int STANDING_END = 102;
    private static final int CYLINDER_END = 200;

    private final PlanParts parts;
    private final int volumes;
    private PlanState state;
    private Act.Kind kind = Act.Kind.WAIT;
    private boolean afterShort;

    // passages between nodes; nodes are volumes, then one leak for each hose end, then one for each open connection
    private int links;
    private final int[] linkA = new int[MAX];
    private final int[] linkB = new int[MAX];
    private final boolean[] linkThrottled = new boolean[MAX];
    // passages from a node to an end
    private int exits;
    private final int[] exitNode = new int[MAX];
    private final int[] exitEnd = new int[MAX];
    private final boolean[] exitThrottled = new boolean[MAX];
    private final boolean[] exitLiquid = new boolean[MAX];

    private final int[] group;
    private boolean openToAir;
    private boolean wide;

    PlanFlows(PlanState first) {
        state = first;
        parts = first.parts;
        volumes = parts.volumes.size();
        group = new int[volumes + parts.ends.size() + parts.connections.size()];
    }

    /** Lets everything flow; false where an act that does this is forbidden. */
    boolean settle(PlanState changed, Act.Kind act, boolean shutAgain) {
        state = changed;
        afterShort = shutAgain;
        kind = act;
        links = 0;
        exits = 0;
        if (!passages()) {
            return false;
        }
        int groups = groups();
        for (int g = 0; g < groups; g++) {
            if (!flow(g)) {
                return false;
            }
        }
        return shutIn(groups);
    }

    // ---------------------------------------------------------------- what is open to what

    private boolean passages() {
        for (int end = 0; end < parts.ends.size(); end++) {
            if (!hoseEnd(end)) {
                return false;
            }
        }
        for (int c = 0; c < parts.connections.size(); c++) {
            if (!state.capped(c)
                    && parts.behind[c] != Behind.PUMP
                    && state.endAt(c) == PlanParts.NONE
                    && passes(c, false)) {
                int leak = volumes + parts.ends.size() + c;
                exit(leak, AIR_END, false, false);
                behind(leak, c, false);
            }
        }
        chambers(PlanParts.CHAMBER_LOW, parts.lowValve);
        chambers(PlanParts.CHAMBER_HIGH, parts.highValve);
        return true;
    }

    private void chambers(int which, int valve) {
        if (valve >= 0 && state.isOpen(valve)) {
            link(parts.chamber[which], parts.chamber[PlanParts.CHAMBER_CENTRE], state.cracked(valve));
        }
    }

    private boolean hoseEnd(int end) {
        int hose = parts.hoseVolume[end / 2];
        int at = state.at(end);
        boolean tight = at >= 0 && state.tight(end);
        boolean hand = state.fitting(end) == EndFitting.OPEN_CLOSE_VALVE;
        boolean throttled = hand && state.cracked(parts.endValve[end]);
        boolean open = endPasses(end, tight);
        if (tight) {
            if (open && state.couplingAir(end)) {
                if (state.content(hose) != PlanState.AIR && state.content(hose) != PlanState.NOTHING) {
                    return false;
                }
                state.couplingAir(end, false);
                state.set(hose, PlanState.AIR, state.level(hose), state.origin(hose));
            }
            if (open && passes(at, true)) {
                behind(hose, at, throttled);
            }
            return true;
        }
        boolean other = at >= 0 && passes(at, false);
        if (open || other) {
            int leak = volumes + end;
            exit(leak, AIR_END, false, false);
            if (open) {
                link(hose, leak, throttled);
            }
            if (other) {
                behind(leak, at, false);
            }
        }
        return true;
    }

    private boolean endPasses(int end, boolean tight) {
        return switch (state.fitting(end)) {
            case PLAIN_FLARE -> true;
            case SELF_SEALING -> tight;
            case OPEN_CLOSE_VALVE -> state.isOpen(parts.endValve[end]);
        };
    }

    private boolean passes(int connection, boolean tight) {
        int valve = parts.connectionValve[connection];
        return valve >= 0 ? state.isOpen(valve) : parts.behind[connection] != Behind.PORT || tight;
    }

    private void behind(int node, int connection, boolean alsoThrottled) {
        int valve = parts.connectionValve[connection];
        boolean throttled = alsoThrottled || valve >= 0 && state.cracked(valve);
        int index = parts.behindIndex[connection];
        switch (parts.behind[connection]) {
            case PORT -> exit(node, index, throttled, parts.ports.get(index).liquid());
            case VOLUME -> link(node, index, throttled);
            case CYLINDER -> exit(node, CYLINDER_END + index, throttled, liquidAt(state, connection));
            case PUMP -> exit(node, state.runs(0) ? PUMP_END : STANDING_END, throttled, false);
        }
    }

    boolean liquidAt(PlanState at, int connection) {
        int cylinder = parts.behindIndex[connection];
        VolumeContent held = at.cylinderHolds(cylinder);
        boolean maybe = held == VolumeContent.LIQUID || held == VolumeContent.AIR && at.cylinderOrigin(cylinder) != 0;
        return maybe
                && parts.cylinders.get(cylinder).liquidAt(parts.connections.get(connection), at.inverted(cylinder));
    }

    private void link(int a, int b, boolean throttled) {
        linkA[links] = a;
        linkB[links] = b;
        linkThrottled[links++] = throttled;
    }

    private void exit(int node, int end, boolean throttled, boolean liquid) {
        exitNode[exits] = node;
        exitEnd[exits] = end;
        exitThrottled[exits] = throttled;
        exitLiquid[exits++] = liquid;
    }

    private int groups() {
        Arrays.fill(group, -1);
        int count = 0;
        for (int node = 0; node < group.length; node++) {
            if (group[node] < 0 && (node < volumes || used(node))) {
                group[node] = count;
                boolean more = true;
                while (more) {
                    more = false;
                    for (int i = 0; i < links; i++) {
                        boolean a = group[linkA[i]] == count;
                        boolean b = group[linkB[i]] == count;
                        if (a != b) {
                            group[a ? linkB[i] : linkA[i]] = count;
                            more = true;
                        }
                    }
                }
                count++;
            }
        }
        return count;
    }

    private boolean used(int leak) {
        for (int i = 0; i < exits; i++) {
            if (exitNode[i] == leak) {
                return true;
            }
        }
        return false;
    }

    // ---------------------------------------------------------------- what flows

    private int levelOf(int exit) {
        int end = exitEnd[exit];
        return end == AIR_END || end == STANDING_END
                ? parts.airLevel
                : end == PUMP_END ? 0 : end >= CYLINDER_END ? state.cylinderLevel(end - CYLINDER_END) : parts.portLevel[end];
    }

    private boolean flow(int g) {
        int highest = -1;
        boolean lowPort = false;
        boolean highPort = false;
        boolean standing = false;
        boolean more = false;
        openToAir = false;
        wide = false;
        for (int i = 0; i < exits; i++) {
            if (group[exitNode[i]] == g) {
                if (highest < 0 || levelOf(i) > levelOf(highest)) {
                    highest = i;
                }
                lowPort |= exitEnd[i] == parts.low;
                highPort |= exitEnd[i] < parts.ports.size() && exitEnd[i] != parts.low;
                standing |= exitEnd[i] == STANDING_END;
                more |= exitEnd[i] < AIR_END || exitEnd[i] >= CYLINDER_END;
                if (exitEnd[i] == AIR_END) {
                    openToAir = true;
                    int leak = exitNode[i] - volumes;
                    wide |= leak < 0 || leak >= parts.ends.size() || state.at(leak) < 0;
                }
            }
        }
        if (highest < 0) {
            return evenOut(g);
        }
        if (parts.hookUp.running() && lowPort && highPort) {
            return false;
        }
        if (standing && !airDrawn(g, highest, more)) {
            return false;
        }
        // of two valves of one cylinder the one that gives liquid counts
        for (int i = 0; i < exits; i++) {
            if (group[exitNode[i]] == g && exitEnd[i] == exitEnd[highest] && exitLiquid[i]) {
                highest = i;
            }
        }
        if (airAtCylinder(g, highest)) {
            return false;
        }
        boolean spoilt = spoilt(g, highest);
        if (spoilt && holdsCleanHose(g)) {
            return false;
        }
        boolean[] onTheWay = new boolean[volumes];
        boolean sinks = false;
        int lowest = highest;
        for (int i = 0; i < exits; i++) {
            if (group[exitNode[i]] == g && levelOf(i) < levelOf(highest)) {
                sinks = true;
                lowest = levelOf(i) < levelOf(lowest) ? i : lowest;
                if (!through(highest, i, onTheWay)) {
                    return false;
                }
            }
        }
        for (int v = 0; v < volumes; v++) {
            if (group[v] == g && !onTheWay[v]) {
                int target = sinks ? beside(v, onTheWay, levelOf(highest)) : levelOf(highest);
                if (!bring(v, target, highest, lowest)) {
                    return false;
                }
            }
        }
        for (int v = 0; v < volumes; v++) {
            if (group[v] == g) {
                if (spoilt && state.holdsRefrigerant(v)) {
                    state.set(v, state.content(v), state.level(v), Math.max(state.origin(v), GasOrigin.RECOVERED.ordinal()));
                }
                if (!expose(v, !sinks && exitEnd[highest] == AIR_END)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Through a standing pump air comes in, where that does no harm. */
    private boolean airDrawn(int g, int highest, boolean more) {
        for (int v = 0; v < volumes; v++) {
            if (group[v] == g && state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR) {
                return false;
            }
        }
        exitEnd[highest] = AIR_END;
        return !more;
    }

    private boolean expose(int v, boolean atAir) {
        if (atAir && state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR) {
            if (wide || afterShort || state.has(v, PlanState.EXPOSED)) {
                state.set(v, PlanState.AIR, parts.airLevel, GasOrigin.NONE.ordinal());
                state.flag(v, PlanState.EXPOSED, false);
            } else {
                state.flag(v, PlanState.EXPOSED, true);
            }
        } else {
            state.flag(v, PlanState.EXPOSED, false);
        }
        return true;
    }

    /** Air open to a cylinder that does not drive it away wanders in. */
    private boolean airAtCylinder(int g, int highest) {
        boolean air = false;
        for (int v = 0; v < volumes; v++) {
            air |= group[v] == g && state.content(v) == PlanState.AIR;
        }
        for (int i = 0; air && i < exits; i++) {
            if (group[exitNode[i]] == g && exitEnd[i] >= CYLINDER_END && levelOf(i) == levelOf(highest)
                    && exitEnd[i] != exitEnd[highest]) {
                return true;
            }
            if (group[exitNode[i]] == g && exitEnd[i] >= CYLINDER_END && exitEnd[i] == exitEnd[highest]) {
                for (int v = 0; v < volumes; v++) {
                    if (group[v] == g && state.content(v) == PlanState.AIR && state.level(v) >= levelOf(highest)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean spoilt(int g, int highest) {
        int top = levelOf(highest);
        for (int v = 0; v < volumes; v++) {
            top = group[v] == g ? Math.max(top, state.level(v)) : top;
        }
        for (int i = 0; i < exits; i++) {
            int cylinder = exitEnd[i] - CYLINDER_END;
            if (group[exitNode[i]] == g
                    && cylinder >= 0
                    && state.cylinderOrigin(cylinder) >= GasOrigin.RECOVERED.ordinal()
                    && !parts.certain(top, state.cylinderLevel(cylinder))) {
                return true;
            }
        }
        return false;
    }

    private boolean holdsCleanHose(int g) {
        for (int h = 0; h < parts.hoses.size(); h++) {
            int v = parts.hoseVolume[h];
            if (group[v] == g && state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR && state.clean(v)) {
                return true;
            }
        }
        return false;
    }

    private int beside(int v, boolean[] onTheWay, int fallback) {
        for (int i = 0; i < links; i++) {
            if (linkA[i] == v || linkB[i] == v) {
                int other = linkA[i] == v ? linkB[i] : linkA[i];
                if (other < volumes && onTheWay[other]) {
                    return state.level(other);
                }
            }
        }
        return fallback;
    }

    private int originOf(int exit) {
        int end = exitEnd[exit];
        return end >= CYLINDER_END
                ? state.cylinderOrigin(end - CYLINDER_END)
                : end < parts.ports.size() ? GasOrigin.SYSTEM.ordinal() : GasOrigin.NONE.ordinal();
    }

    private boolean through(int from, int to, boolean[] onTheWay) {
        int giver = exitEnd[from];
        int taker = exitEnd[to];
        if (giver == AIR_END) {
            return false;
        }
        int[] way = way(from, to);
        int narrow = way.length;
        for (int i = way.length - 1; i > 0; i--) {
            narrow = throttledBetween(way[i - 1], way[i]) ? i : narrow;
        }
        narrow = exitThrottled[from] ? 0 : narrow;
        boolean throttled = narrow < way.length || exitThrottled[to];
        boolean ok = taker == AIR_END
                ? sweep(from, way)
                : taker == PUMP_END
                        ? evacuateThrough(giver, way)
                        : taker >= CYLINDER_END
                                ? into(from, taker - CYLINDER_END, way)
                                : intoPort(from, taker, way, throttled);
        if (!ok) {
            return false;
        }
        for (int i = 0; i < way.length; i++) {
            int v = way[i];
            if (v >= volumes) {
                continue;
            }
            onTheWay[v] = true;
            if (taker == PUMP_END) {
                state.set(v, PlanState.NOTHING, 0, 0);
                continue;
            }
            boolean upstream = taker == AIR_END || i < narrow;
            boolean liquid = upstream && exitLiquid[from];
            state.set(v, liquid ? PlanState.LIQUID : PlanState.VAPOUR, upstream ? levelOf(from) : levelOf(to), originOf(from));
            state.flag(v, PlanState.COLD, liquid && cold(giver));
        }
        return true;
    }

    private boolean cold(int end) {
        if (end >= CYLINDER_END) {
            // a source or receiver colder than the air around gives cold liquid
            int level = state.cylinderLevel(end - CYLINDER_END);
            return parts.levels[level] < parts.hookUp.gas().properties()
                    .bubblePressurePa(parts.hookUp.ambient().kelvins()) - 300;
        }
        return end < parts.ports.size() && parts.portCold[end];
    }

    private boolean throttledBetween(int a, int b) {
        for (int i = 0; i < links; i++) {
            if (linkA[i] == a && linkB[i] == b || linkA[i] == b && linkB[i] == a) {
                return linkThrottled[i];
            }
        }
        return false;
    }

    /** The nodes from one exit to another, the shortest way. */
    private int[] way(int from, int to) {
        int[] came = new int[group.length];
        Arrays.fill(came, -2);
        int[] queue = new int[group.length];
        int head = 0;
        int tail = 0;
        queue[tail++] = exitNode[from];
        came[exitNode[from]] = -1;
        while (head < tail) {
            int here = queue[head++];
            for (int i = 0; i < links; i++) {
                int there = linkA[i] == here ? linkB[i] : linkB[i] == here ? linkA[i] : -1;
                if (there >= 0 && came[there] == -2) {
                    came[there] = here;
                    queue[tail++] = there;
                }
            }
        }
        int length = 0;
        for (int at = exitNode[to]; at >= 0; at = came[at]) {
            length++;
        }
        int[] way = new int[length];
        for (int at = exitNode[to]; at >= 0; at = came[at]) {
            way[--length] = at;
        }
        return way;
    }

    private boolean sweep(int from, int[] way) {
        int giver = exitEnd[from];
        if (exitLiquid[from] || !parts.ventable || giver == PUMP_END || !parts.sweeps(levelOf(from))) {
            return false;
        }
        if (giver >= CYLINDER_END) {
            VolumeContent held = state.cylinderHolds(giver - CYLINDER_END);
            if (held == VolumeContent.AIR || held == VolumeContent.NOTHING
                    || state.cylinderOrigin(giver - CYLINDER_END) == GasOrigin.UNKNOWN.ordinal()) {
                return false;
            }
        }
        boolean dirty = false;
        boolean coupling = true;
        double litres = 0;
        for (int v : way) {
            if (v < volumes) {
                coupling = false;
                litres += parts.litres[v];
                dirty |= state.content(v) == PlanState.AIR || state.holdsRefrigerant(v) && !state.clean(v) && state.origin(v) != originOf(from);
                if (state.liquid(v) || state.unknown(v)) {
                    return false;
                }
            } else if (v - volumes < parts.ends.size()) {
                if (state.at(v - volumes) < 0) {
                    // swept out of an end that is off, air is back before it is on
                    return false;
                }
                dirty |= coupling && state.couplingAir(v - volumes);
                state.couplingAir(v - volumes, false);
            }
        }
        double grams = coupling
                ? HookUpPractice.VAPOUR_PER_OPENING_G.value()
                : HookUpPractice.SWEEP_VOLUMES.value() * parts.vapourGrams(litres, levelOf(from));
        state.ventedGrams += grams;
        boolean short1 = kind == Act.Kind.CRACK || kind == Act.Kind.OPEN_SHORT;
        return dirty && grams <= HookUpPractice.MOST_SWEPT_G.value() && (!coupling || short1);
    }

    private boolean evacuateThrough(int giver, int[] way) {
        if (giver < CYLINDER_END || state.cylinderOrigin(giver - CYLINDER_END) != 0) {
            return false;
        }
        int cylinder = giver - CYLINDER_END;
        for (int v : way) {
            if (v < volumes && !mayBePumped(v)) {
                return false;
            }
        }
        state.cylinder(cylinder, VolumeContent.NOTHING, 0, 0);
        return true;
    }

    private boolean mayBePumped(int v) {
        if (state.liquid(v) || state.holdsRefrigerant(v) && !parts.ventable) {
            return false;
        }
        state.ventedGrams += state.holdsRefrigerant(v) ? parts.vapourGrams(parts.litres[v], state.level(v)) : 0;
        return true;
    }

    private boolean into(int from, int cylinder, int[] way) {
        int giver = exitEnd[from];
        if (giver >= parts.ports.size()
                || parts.cylinders.get(cylinder).use() != ServiceCylinder.Use.RECEIVER
                || parts.levels[levelOf(from)] <= parts.feedsPa[cylinder]
                || state.cylinderHolds(cylinder) == VolumeContent.AIR && state.cylinderOrigin(cylinder) == 0) {
            return false;
        }
        for (int v : way) {
            if (v < volumes && !cylinderTakes(v, cylinder)) {
                return false;
            }
        }
        takes(cylinder, GasOrigin.SYSTEM.ordinal());
        state.moved(exitLiquid[from] ? PlanState.OUT_LIQUID : PlanState.OUT_VAPOUR);
        return true;
    }

    private boolean cylinderTakes(int v, int cylinder) {
        boolean own = state.cylinderOrigin(cylinder) != 0 && state.cylinderOrigin(cylinder) < GasOrigin.RECOVERED.ordinal();
        if (state.content(v) == PlanState.AIR || state.unknown(v) || own && !state.clean(v)) {
            return false;
        }
        takes(cylinder, state.origin(v));
        return true;
    }

    private void takes(int cylinder, int origin) {
        VolumeContent held = state.cylinderHolds(cylinder);
        boolean more = held == VolumeContent.AIR || held == VolumeContent.LIQUID;
        state.cylinder(
                cylinder,
                more ? held : VolumeContent.LIQUID,
                Math.max(state.cylinderLevel(cylinder), parts.restLevel[cylinder]),
                Math.max(state.cylinderOrigin(cylinder), origin));
    }

    private boolean intoPort(int from, int port, int[] way, boolean throttled) {
        int giver = exitEnd[from];
        int cylinder = giver - CYLINDER_END;
        if (port != parts.low
                || cylinder < 0
                || state.cylinderOrigin(cylinder) == 0
                || state.cylinderOrigin(cylinder) >= GasOrigin.RECOVERED.ordinal()
                || state.cylinderHolds(cylinder) == VolumeContent.AIR
                || !parts.certain(levelOf(from), parts.portLevel[port])) {
            return false;
        }
        boolean liquid = exitLiquid[from];
        for (int v : way) {
            if (v < volumes && (state.content(v) == PlanState.AIR || !state.clean(v))) {
                return false;
            }
            liquid |= v < volumes && state.liquid(v);
        }
        if (liquid && !metered(throttled)) {
            return false;
        }
        state.moved(exitLiquid[from] ? PlanState.IN_LIQUID : PlanState.IN_VAPOUR);
        return true;
    }

    private boolean metered(boolean throttled) {
        return throttled && parts.hookUp.running() && (kind == Act.Kind.CRACK || kind == Act.Kind.OPEN_SHORT);
    }

    /** A dead end takes the level of what it is joined to. */
    private boolean bring(int v, int target, int giver, int taker) {
        int to = exitEnd[taker];
        if (exitEnd[giver] == PUMP_END) {
            if (!mayBePumped(v)) {
                return false;
            }
            state.set(v, PlanState.NOTHING, 0, 0);
            return true;
        }
        if (state.level(v) > target) {
            return lower(v, target, taker);
        }
        if (state.level(v) == target) {
            return true;
        }
        if (exitEnd[giver] == AIR_END) {
            if (state.liquid(v) || state.unknown(v) || state.holdsRefrigerant(v) && !parts.ventable) {
                return false;
            }
            state.set(v, PlanState.AIR, target, state.origin(v));
            return to == AIR_END;
        }
        int cylinder = exitEnd[giver] - CYLINDER_END;
        boolean airy = cylinder >= 0 && state.cylinderHolds(cylinder) == VolumeContent.AIR;
        if (cylinder >= 0 && state.cylinderOrigin(cylinder) == 0) {
            state.set(v, airy ? PlanState.AIR : state.content(v), target, state.origin(v));
            return true;
        }
        byte content = airy || state.content(v) == PlanState.AIR
                ? PlanState.AIR
                : exitLiquid[giver] ? PlanState.LIQUID : state.liquid(v) ? state.content(v) : PlanState.VAPOUR;
        state.set(v, content, target, Math.max(state.origin(v), originOf(giver)));
        state.flag(v, PlanState.COLD, content == PlanState.LIQUID && cold(exitEnd[giver]));
        return true;
    }

    private boolean lower(int v, int target, int taker) {
        int to = exitEnd[taker];
        boolean air = state.content(v) == PlanState.AIR;
        boolean refrigerant = state.holdsRefrigerant(v);
        if (to == AIR_END) {
            if (state.liquid(v) || refrigerant && (!parts.ventable || state.unknown(v))) {
                return false;
            }
            state.ventedGrams += refrigerant ? parts.vapourGrams(parts.litres[v], state.level(v)) : 0;
            state.set(v, state.content(v), target, state.origin(v));
            return true;
        }
        if (to == PUMP_END) {
            return false;
        }
        if (to >= CYLINDER_END) {
            int cylinder = to - CYLINDER_END;
            if (parts.cylinders.get(cylinder).use() != ServiceCylinder.Use.RECEIVER || !cylinderTakes(v, cylinder)) {
                return false;
            }
            state.set(v, state.liquid(v) ? PlanState.PARTLY : PlanState.VAPOUR, target, state.origin(v));
            return true;
        }
        if (air || !state.clean(v)) {
            return false;
        }
        if (state.liquid(v)) {
            if (to != parts.low || !metered(throttledIn(group[exitNode[taker]]))) {
                return false;
            }
        }
        state.set(v, PlanState.VAPOUR, target, state.origin(v));
        return true;
    }

    private boolean throttledIn(int g) {
        for (int i = 0; i < links; i++) {
            if (group[linkA[i]] == g && linkThrottled[i]) {
                return true;
            }
        }
        for (int i = 0; i < exits; i++) {
            if (group[exitNode[i]] == g && exitThrottled[i]) {
                return true;
            }
        }
        return false;
    }

    /** Volumes open to each other alone. */
    private boolean evenOut(int g) {
        int first = -1;
        boolean same = true;
        boolean air = false;
        boolean liquid = false;
        boolean cleanHose = false;
        int origin = 0;
        int lowest = Integer.MAX_VALUE;
        int top = 0;
        for (int v = 0; v < volumes; v++) {
            if (group[v] != g) {
                continue;
            }
            first = first < 0 ? v : first;
            same &= state.content(v) == state.content(first)
                    && state.level(v) == state.level(first)
                    && state.clean(v) == state.clean(first);
            air |= state.content(v) == PlanState.AIR;
            liquid |= state.liquid(v);
            origin = Math.max(origin, state.origin(v));
            lowest = Math.min(lowest, state.level(v));
            top = Math.max(top, state.level(v));
            cleanHose |= state.holdsRefrigerant(v)
                    && state.content(v) != PlanState.AIR
                    && state.clean(v)
                    && parts.isHose[v];
            state.flag(v, PlanState.EXPOSED, false);
        }
        if (same) {
            return true;
        }
        if (cleanHose && origin >= GasOrigin.RECOVERED.ordinal()) {
            return false;
        }
        byte content = air ? PlanState.AIR : liquid ? PlanState.LIQUID : origin == 0 ? PlanState.NOTHING : PlanState.VAPOUR;
        if (air && liquid) {
            return false;
        }
        for (int v = 0; v < volumes; v++) {
            if (group[v] == g) {
                state.set(v, content, liquid ? top : lowest, origin);
            }
        }
        return true;
    }

    private boolean shutIn(int groups) {
        boolean never = kind == Act.Kind.WAIT || parts.hookUp.gas().carbonDioxide();
        for (int g = 0; g < groups; g++) {
            boolean shut = true;
            for (int i = 0; i < exits; i++) {
                shut &= group[exitNode[i]] != g;
            }
            for (int v = 0; v < volumes; v++) {
                if (group[v] != g) {
                    continue;
                }
                boolean full = shut && state.content(v) == PlanState.LIQUID;
                if (full && (never || state.has(v, PlanState.SHUT_IN) || state.has(v, PlanState.COLD))) {
                    return false;
                }
                state.flag(v, PlanState.SHUT_IN, full);
            }
        }
        return true;
    }
}
