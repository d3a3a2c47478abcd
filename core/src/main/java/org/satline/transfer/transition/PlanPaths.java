package org.satline.transfer.transition;

import java.util.Arrays;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.transition.PlanParts.Behind;

/** What is open to what at one moment, as the planner sees it. Filled anew for each act. Not thread-safe. */
abstract class PlanPaths {
    static final int MAX = 64;
    static final int AIR_END = 100;
    static final int PUMP_END = 101;
    /** A pump that stands still lets air in; nothing is blown through it. */
    static final int STANDING_END = 102;

    static final int CYLINDER_END = 200;

    final PlanParts parts;
    final int volumes;
    PlanState state;
    Act.Kind kind = Act.Kind.WAIT;
    boolean afterShort;

    // passages between nodes; nodes are volumes, then one leak for each hose end, then one for each open connection
    int links;
    final int[] linkA = new int[MAX];
    final int[] linkB = new int[MAX];
    final boolean[] linkThrottled = new boolean[MAX];
    // passages from a node to an end
    int exits;
    final int[] exitNode = new int[MAX];
    final int[] exitEnd = new int[MAX];
    final boolean[] exitThrottled = new boolean[MAX];
    final boolean[] exitLiquid = new boolean[MAX];

    final int[] group;

    PlanPaths(PlanState first) {
        state = first;
        parts = first.parts;
        volumes = parts.volumes.size();
        group = new int[volumes + parts.ends.size() + parts.connections.size()];
    }

    boolean passages() {
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

    void chambers(int which, int valve) {
        if (valve >= 0 && state.isOpen(valve)) {
            link(parts.chamber[which], parts.chamber[PlanParts.CHAMBER_CENTRE], state.cracked(valve));
        }
    }

    boolean hoseEnd(int end) {
        int hose = parts.hoseVolume[end / 2];
        int at = state.at(end);
        boolean tight = at >= 0 && state.tight(end);
        boolean hand = state.fitting(end) == EndFitting.OPEN_CLOSE_VALVE;
        boolean throttled = hand && state.cracked(parts.endValve[end]);
        boolean open = endPasses(end, tight);
        if (tight) {
            if (open && state.couplingAir(end)) {
                // a valve beyond it lets the coupling be swept by a crack; at a bare core its half millilitre is
                // accepted
                boolean core = parts.behind[at] == Behind.PORT && parts.connectionValve[at] < 0;
                boolean evacuated = core && state.content(hose) == PlanState.NOTHING;
                if (state.content(hose) != PlanState.AIR && !evacuated) {
                    return false;
                }
                state.couplingAir(end, false);
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

    boolean endPasses(int end, boolean tight) {
        return switch (state.fitting(end)) {
            case PLAIN_FLARE -> true;
            case SELF_SEALING -> tight;
            case OPEN_CLOSE_VALVE -> state.isOpen(parts.endValve[end]);
        };
    }

    boolean passes(int connection, boolean tight) {
        int valve = parts.connectionValve[connection];
        return valve >= 0 ? state.isOpen(valve) : parts.behind[connection] != Behind.PORT || tight;
    }

    void behind(int node, int connection, boolean alsoThrottled) {
        int valve = parts.connectionValve[connection];
        boolean throttled = alsoThrottled || (valve >= 0 && state.cracked(valve));
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
        boolean maybe = held == VolumeContent.LIQUID || (held == VolumeContent.AIR && at.cylinderOrigin(cylinder) != 0);
        return maybe
                && parts.cylinders.get(cylinder).liquidAt(parts.connections.get(connection), at.inverted(cylinder));
    }

    void link(int a, int b, boolean throttled) {
        linkA[links] = a;
        linkB[links] = b;
        linkThrottled[links++] = throttled;
    }

    void exit(int node, int end, boolean throttled, boolean liquid) {
        exitNode[exits] = node;
        exitEnd[exits] = end;
        exitThrottled[exits] = throttled;
        exitLiquid[exits++] = liquid;
    }

    int groups() {
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

    boolean used(int leak) {
        for (int i = 0; i < exits; i++) {
            if (exitNode[i] == leak) {
                return true;
            }
        }
        return false;
    }

    int levelOf(int exit) {
        int end = exitEnd[exit];
        return end == AIR_END || end == STANDING_END
                ? parts.airLevel
                : end == PUMP_END
                        ? 0
                        : end >= CYLINDER_END ? state.cylinderLevel(end - CYLINDER_END) : parts.portLevel[end];
    }

    int originOf(int exit) {
        int end = exitEnd[exit];
        return end >= CYLINDER_END
                ? state.cylinderOrigin(end - CYLINDER_END)
                : end < parts.ports.size() ? PlanState.GAS_SYSTEM : PlanState.GAS_NONE;
    }

    boolean cold(int end) {
        if (end >= CYLINDER_END) {
            // a source or receiver colder than the air around gives cold liquid
            int level = state.cylinderLevel(end - CYLINDER_END);
            return parts.levels[level]
                    < parts.hookUp
                                    .gas()
                                    .properties()
                                    .bubblePressurePa(parts.hookUp.ambient().kelvins())
                            - 300;
        }
        return end < parts.ports.size() && parts.portCold[end];
    }

    /** So much colder than the air that its liquid boils in a hose; less than that counts as equal. */
    boolean surelyColder(int end) {
        return end >= CYLINDER_END
                ? parts.levels[state.cylinderLevel(end - CYLINDER_END)] < parts.surelyColderPa
                : end < parts.ports.size() && parts.portSurelyCold[end];
    }

    boolean throttledBetween(int a, int b) {
        for (int i = 0; i < links; i++) {
            if ((linkA[i] == a && linkB[i] == b) || (linkA[i] == b && linkB[i] == a)) {
                return linkThrottled[i];
            }
        }
        return false;
    }

    /** The nodes from one exit to another, the shortest way. */
    int[] way(int from, int to) {
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

    boolean throttledIn(int g) {
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
}
