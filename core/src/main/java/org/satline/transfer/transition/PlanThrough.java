package org.satline.transfer.transition;

import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;

/** What goes from one end of paths to another, and what of it is forbidden. Not thread-safe. */
abstract class PlanThrough extends PlanPaths {
    PlanThrough(PlanState first) {
        super(first);
    }

    boolean through(int from, int to, boolean[] onTheWay) {
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
            state.set(
                    v,
                    liquid ? PlanState.LIQUID : PlanState.VAPOUR,
                    upstream ? levelOf(from) : levelOf(to),
                    originOf(from));
            state.flag(v, PlanState.COLD, liquid && cold(giver));
        }
        return true;
    }

    boolean sweep(int from, int[] way) {
        int giver = exitEnd[from];
        if (exitLiquid[from] || !parts.ventable || giver == PUMP_END || !parts.sweeps(levelOf(from))) {
            return false;
        }
        if (giver >= CYLINDER_END) {
            VolumeContent held = state.cylinderHolds(giver - CYLINDER_END);
            // vapour alone loses its pressure as it sweeps
            if (held != VolumeContent.LIQUID || state.cylinderOrigin(giver - CYLINDER_END) == PlanState.GAS_UNKNOWN) {
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
                dirty |= state.content(v) == PlanState.AIR
                        || (state.holdsRefrigerant(v) && !state.clean(v) && state.origin(v) != originOf(from));
                // pressed together with air for an act, gas that is warmer than the air around condenses
                boolean condensed = state.content(v) == PlanState.AIR
                        && state.holdsRefrigerant(v)
                        && parts.levels[state.level(v)] > parts.ambientPa;
                if (state.liquid(v) || state.unknown(v) || condensed) {
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

    boolean evacuateThrough(int giver, int[] way) {
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

    boolean mayBePumped(int v) {
        if (state.liquid(v) || (state.holdsRefrigerant(v) && !parts.ventable)) {
            return false;
        }
        state.ventedGrams += state.holdsRefrigerant(v) ? parts.vapourGrams(parts.litres[v], state.level(v)) : 0;
        return true;
    }

    boolean into(int from, int cylinder, int[] way) {
        int giver = exitEnd[from];
        if (giver >= parts.ports.size()
                || parts.cylinders.get(cylinder).use() != ServiceCylinder.Use.RECEIVER
                || parts.levels[levelOf(from)] <= parts.feedsPa[cylinder]
                || (state.cylinderHolds(cylinder) == VolumeContent.AIR && state.cylinderOrigin(cylinder) == 0)) {
            return false;
        }
        for (int v : way) {
            if (v < volumes && !cylinderTakes(v, cylinder)) {
                return false;
            }
        }
        takes(cylinder, PlanState.GAS_SYSTEM);
        state.moved(exitLiquid[from] ? PlanState.OUT_LIQUID : PlanState.OUT_VAPOUR);
        return true;
    }

    boolean cylinderTakes(int v, int cylinder) {
        boolean own = state.cylinderOrigin(cylinder) != 0 && state.cylinderOrigin(cylinder) < PlanState.GAS_RECOVERED;
        if (state.content(v) == PlanState.AIR || state.unknown(v) || (own && !state.clean(v))) {
            return false;
        }
        takes(cylinder, state.origin(v));
        return true;
    }

    void takes(int cylinder, int origin) {
        VolumeContent held = state.cylinderHolds(cylinder);
        boolean more = held == VolumeContent.AIR || held == VolumeContent.LIQUID;
        if (state.cylinderLevel(cylinder) < parts.restLevel[cylinder]) {
            state.unsure(cylinder);
        }
        state.cylinder(
                cylinder,
                more ? held : VolumeContent.LIQUID,
                Math.max(state.cylinderLevel(cylinder), parts.restLevel[cylinder]),
                Math.max(state.cylinderOrigin(cylinder), origin));
    }

    boolean intoPort(int from, int port, int[] way, boolean throttled) {
        int giver = exitEnd[from];
        int cylinder = giver - CYLINDER_END;
        // at rest liquid goes in by weight, into the liquid line alone
        boolean weighed = !parts.hookUp.running()
                && port == parts.high
                && parts.ports.get(port).role() == SystemPort.Role.LIQUID_LINE;
        if ((port != parts.low && !weighed)
                || cylinder < 0
                || state.cylinderOrigin(cylinder) == 0
                || state.cylinderOrigin(cylinder) >= PlanState.GAS_RECOVERED
                || state.cylinderHolds(cylinder) == VolumeContent.AIR
                || !parts.certain(levelOf(from), parts.portLevel[port])) {
            return false;
        }
        // at rest nothing draws away what condenses in hoses that are colder than the source
        if (!parts.hookUp.running() && !weighed && parts.levels[levelOf(from)] > parts.ambientPa) {
            return false;
        }
        boolean liquid = exitLiquid[from];
        for (int v : way) {
            if (v < volumes && (state.content(v) == PlanState.AIR || !state.clean(v))) {
                return false;
            }
            liquid |= v < volumes && state.liquid(v);
        }
        if (liquid && !weighed && !metered(throttled)) {
            return false;
        }
        state.moved(exitLiquid[from] ? PlanState.IN_LIQUID : PlanState.IN_VAPOUR);
        return true;
    }

    boolean metered(boolean throttled) {
        return throttled && parts.hookUp.running() && (kind == Act.Kind.CRACK || kind == Act.Kind.OPEN_SHORT);
    }

    /** What is left in a hose goes on through the crack once its feed is shut. */
    boolean runsDry(boolean throttled) {
        return throttled && parts.hookUp.running() && kind == Act.Kind.CLOSE;
    }
}
