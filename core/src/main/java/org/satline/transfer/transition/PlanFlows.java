package org.satline.transfer.transition;

import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.VolumeContent;

/**
 * What the planner expects to happen as things are open, in classes of content and levels of pressure, and what it forbids. It is stricter
 * than nature: what it cannot tell it forbids. Changes the state that it is given. Not thread-safe.
 */
final class PlanFlows extends PlanContact {
    /** Pressures are told apart by steps of a few hundred pascals. */
    private static final double SURELY = 0.99;
    /** The same where a hose empties into a cylinder whose gas it presses together; our choice. */
    private static final double SURELY_OVER_AIR = 0.95;

    private boolean wide;

    PlanFlows(PlanState first) {
        super(first);
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
        return (!changed.runs(1) || pumpedOver()) && shutIn(groups);
    }

    private boolean flow(int g) {
        int highest = -1;
        boolean lowPort = false;
        boolean highPort = false;
        boolean standing = false;
        boolean more = false;
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
                    int leak = exitNode[i] - volumes;
                    wide |= leak < 0 || leak >= parts.ends.size() || state.at(leak) < 0;
                }
            }
        }
        if (highest < 0) {
            return evenOut(g) && (kind != Act.Kind.WAIT || asWarmAsTheAir(g));
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
        if (airAtCylinder(g, highest) || mayEnterSource(g) || mayNotFeed(g, highest)) {
            return false;
        }
        int spoiling = spoiling(g, highest);
        boolean apart = parts.hookUp.manifold().isEmpty() && !openToPort(g) && !fillsCleanHose(g, highest);
        if (spoiling > 0 && !apart && holdsCleanHose(g)) {
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
                if (spoiling > 0 && state.holdsRefrigerant(v)) {
                    state.set(v, state.content(v), state.level(v), Math.max(state.origin(v), spoiling));
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
            boolean harmless = state.content(v) == PlanState.AIR && !state.unknown(v) && parts.ventable;
            if (group[v] == g && state.holdsRefrigerant(v) && !harmless) {
                return false;
            }
        }
        exitEnd[highest] = AIR_END;
        return !more;
    }

    private boolean expose(int v, boolean atAir) {
        if (atAir && state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR) {
            if (wide || afterShort || state.has(v, PlanState.EXPOSED)) {
                if (state.liquid(v) || state.unknown(v) || !parts.ventable) {
                    return false;
                }
                state.set(v, PlanState.AIR, parts.airLevel, PlanState.GAS_NONE);
                state.flag(v, PlanState.EXPOSED, false);
            } else {
                state.flag(v, PlanState.EXPOSED, true);
            }
        } else {
            state.flag(v, PlanState.EXPOSED, false);
        }
        return true;
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
        boolean sinksIn = giver == taker
                && exitLiquid[giver]
                && !surelyColder(exitEnd[giver])
                && !state.liquid(v)
                && state.content(v) != PlanState.AIR;
        boolean port = exitEnd[giver] < parts.ports.size() && target <= parts.airLevel;
        if (port && state.content(v) == PlanState.AIR && state.level(v) == target) {
            // at the pressure of a port that does not drive it back nothing keeps the air out of it
            return false;
        }
        if (state.level(v) == target && !sinksIn) {
            return kind != Act.Kind.WAIT || waited(v, giver);
        }
        if (exitEnd[giver] == AIR_END) {
            if (state.liquid(v) || state.unknown(v) || (state.holdsRefrigerant(v) && !parts.ventable)) {
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

    /**
     * A wait makes a hose as warm as the air: from one that is warmer than the cylinder the liquid goes over, into a colder one it comes.
     */
    private boolean waited(int v, int giver) {
        state.flag(v, PlanState.COLD, false);
        int cylinder = exitEnd[giver] - CYLINDER_END;
        if (state.content(v) == PlanState.AIR || !state.holdsRefrigerant(v)) {
            return true;
        }
        double own = parts.levels[state.level(v)];
        if (cylinder < 0) {
            // at a port colder air fills it with liquid; what boils there goes into the system
            boolean fills = exitEnd[giver] < parts.ports.size() && own > parts.ambientPa;
            state.set(v, fills ? PlanState.LIQUID : state.content(v), state.level(v), state.origin(v));
            return state.clean(v) || !state.liquid(v);
        }
        boolean receives = parts.cylinders.get(cylinder).use() == ServiceCylinder.Use.RECEIVER;
        boolean boils = state.liquid(v) && own < parts.ambientPa;
        if (boils && !receives && state.origin(v) != PlanState.GAS_SOURCE) {
            return false;
        }
        if (boils && receives) {
            // over air the pressure rises as it takes
            boolean air = state.cylinderHolds(cylinder) == VolumeContent.AIR;
            boolean dries = own < parts.ambientPa * (air ? SURELY_OVER_AIR : SURELY);
            state.set(v, dries ? PlanState.VAPOUR : state.content(v), state.level(v), state.origin(v));
            return cylinderTakes(v, cylinder);
        }
        if (own >= parts.ambientPa) {
            state.set(v, PlanState.LIQUID, state.level(v), state.origin(v));
        }
        return true;
    }

    private boolean lower(int v, int target, int taker) {
        int to = exitEnd[taker];
        boolean air = state.content(v) == PlanState.AIR;
        boolean refrigerant = state.holdsRefrigerant(v);
        if (to == AIR_END) {
            if (state.liquid(v) || (refrigerant && (!parts.ventable || state.unknown(v)))) {
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
            // liquid that is colder than the cylinder's pressure asks for stays where it is
            boolean flashes = parts.levels[target] < parts.flashesPa;
            byte left = !state.liquid(v) ? PlanState.VAPOUR : flashes ? PlanState.PARTLY : state.content(v);
            state.set(v, left, target, state.origin(v));
            return true;
        }
        if (air || !state.clean(v)) {
            return false;
        }
        boolean throttled = throttledIn(group[exitNode[taker]]);
        // what is colder than the suction does not boil away into it
        boolean stays = state.liquid(v) && parts.levels[target] >= parts.staysLiquidPa;
        if (stays || (state.liquid(v) && (to != parts.low || !(metered(throttled) || runsDry(throttled))))) {
            return false;
        }
        state.set(v, PlanState.VAPOUR, target, state.origin(v));
        return true;
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
            cleanHose |=
                    state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR && state.clean(v) && parts.isHose[v];
            state.flag(v, PlanState.EXPOSED, false);
        }
        if (same) {
            return true;
        }
        if (cleanHose && origin >= PlanState.GAS_RECOVERED) {
            return false;
        }
        byte content =
                air ? PlanState.AIR : liquid ? PlanState.LIQUID : origin == 0 ? PlanState.NOTHING : PlanState.VAPOUR;
        if (air && (liquid || (origin != 0 && !parts.ventable))) {
            return false;
        }
        for (int v = 0; v < volumes; v++) {
            if (group[v] == g) {
                state.set(v, content, air || liquid ? top : lowest, origin);
            }
        }
        return true;
    }

    /** In colder air a part of vapour shut in condenses; liquid that is left brings its volume to the pressure that belongs to the air. */
    private boolean asWarmAsTheAir(int g) {
        int warm = parts.level(parts.ambientPa);
        for (int v = 0; v < volumes; v++) {
            boolean above =
                    group[v] == g && state.holdsRefrigerant(v) && parts.levels[state.level(v)] > parts.ambientPa;
            if (above && state.content(v) == PlanState.AIR) {
                return false;
            }
            if (above || (group[v] == g && state.content(v) == PlanState.PARTLY)) {
                state.set(v, (byte) Math.max(state.content(v), PlanState.PARTLY), warm, state.origin(v));
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
