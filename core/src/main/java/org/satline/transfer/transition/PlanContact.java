package org.satline.transfer.transition;

import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.VolumeContent;

/** Which gases meet in what is open together, and what a recovery machine carries over. Not thread-safe. */
abstract class PlanContact extends PlanThrough {
    PlanContact(PlanState first) {
        super(first);
    }

    /** Air open to a cylinder that does not drive it away wanders in. */
    boolean airAtCylinder(int g, int highest) {
        boolean air = false;
        for (int v = 0; v < volumes; v++) {
            air |= group[v] == g && state.content(v) == PlanState.AIR;
        }
        for (int i = 0; air && i < exits; i++) {
            if (group[exitNode[i]] == g
                    && exitEnd[i] >= CYLINDER_END
                    && levelOf(i) == levelOf(highest)
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

    /** Within the errors of the gauges the system may as well flow into the source. */
    boolean mayEnterSource(int g) {
        for (int i = 0; i < exits; i++) {
            int cylinder = exitEnd[i] - CYLINDER_END;
            boolean source = group[exitNode[i]] == g
                    && cylinder >= 0
                    && parts.cylinders.get(cylinder).use() != ServiceCylinder.Use.RECEIVER;
            for (int k = 0; source && k < exits; k++) {
                boolean port = group[exitNode[k]] == g && exitEnd[k] < parts.ports.size();
                if (port && !parts.certain(levelOf(i), levelOf(k)) && !parts.certain(levelOf(k), levelOf(i))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The worst gas of a cylinder to which these volumes are joined without certain flow towards it. */
    int spoiling(int g, int highest) {
        int top = levelOf(highest);
        for (int v = 0; v < volumes; v++) {
            top = group[v] == g ? Math.max(top, state.level(v)) : top;
        }
        int worst = PlanState.GAS_NONE;
        for (int i = 0; i < exits; i++) {
            int cylinder = exitEnd[i] - CYLINDER_END;
            if (group[exitNode[i]] == g
                    && cylinder >= 0
                    && state.cylinderMixed(cylinder)
                    && !parts.certain(top, state.cylinderLevel(cylinder))) {
                worst = Math.max(worst, state.cylinderOrigin(cylinder));
            }
        }
        return worst;
    }

    boolean openToPort(int g) {
        for (int i = 0; i < exits; i++) {
            if (group[exitNode[i]] == g && exitEnd[i] < parts.ports.size()) {
                return true;
            }
        }
        return false;
    }

    boolean holdsCleanHose(int g) {
        for (int h = 0; h < parts.hoses.size(); h++) {
            int v = parts.hoseVolume[h];
            if (group[v] == g && state.holdsRefrigerant(v) && state.content(v) != PlanState.AIR && state.clean(v)) {
                return true;
            }
        }
        return false;
    }

    /** Of a cylinder whose pressure nobody knows nothing is expected to come. */
    boolean mayNotFeed(int g, int highest) {
        int cylinder = exitEnd[highest] - CYLINDER_END;
        boolean unsure = cylinder >= 0 && state.isUnsure(cylinder);
        for (int i = 0; unsure && i < exits; i++) {
            if (group[exitNode[i]] == g && exitEnd[i] != exitEnd[highest]) {
                return true;
            }
        }
        for (int v = 0; unsure && v < volumes; v++) {
            if (group[v] == g && state.level(v) < levelOf(highest)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a cylinder stands above a hose of clean gas, so that it fills it. */
    boolean fillsCleanHose(int g, int highest) {
        for (int h = 0; exitEnd[highest] >= CYLINDER_END && h < parts.hoses.size(); h++) {
            int v = parts.hoseVolume[h];
            if (group[v] == g && state.holdsRefrigerant(v) && state.clean(v) && state.level(v) < levelOf(highest)) {
                return true;
            }
        }
        return false;
    }

    /** The recovery machine draws what its inlet is open to into the cylinder that its outlet is open to, against any pressure. */
    boolean pumpedOver() {
        int inlet = group[parts.machineInlet];
        int outlet = group[parts.machineOutlet];
        int into = -1;
        int from = -1;
        for (int i = 0; i < exits; i++) {
            boolean in = group[exitNode[i]] == inlet;
            boolean out = group[exitNode[i]] == outlet;
            int cylinder = exitEnd[i] - CYLINDER_END;
            boolean receiver = cylinder >= 0 && parts.cylinders.get(cylinder).use() == ServiceCylinder.Use.RECEIVER;
            if ((in && (out || exitEnd[i] >= parts.ports.size())) || (out && !receiver)) {
                return false;
            }
            into = out ? cylinder : into;
            from = in && (from < 0 || levelOf(i) > levelOf(from)) ? i : from;
        }
        boolean airy = into >= 0
                && state.cylinderHolds(into) == VolumeContent.AIR
                && state.cylinderOrigin(into) == PlanState.GAS_NONE;
        if (into < 0 || airy) {
            return false;
        }
        if (from >= 0) {
            takes(into, PlanState.GAS_SYSTEM);
            state.moved(exitLiquid[from] ? PlanState.OUT_LIQUID : PlanState.OUT_VAPOUR);
        }
        for (int v = 0; v < volumes; v++) {
            boolean in = group[v] == inlet;
            if ((in || group[v] == outlet) && state.holdsRefrigerant(v) && !cylinderTakes(v, into)) {
                return false;
            }
            if ((in || group[v] == outlet) && state.content(v) == PlanState.AIR) {
                return false;
            }
            if (in && from < 0) {
                state.set(v, PlanState.NOTHING, 0, PlanState.GAS_NONE);
            } else if (in) {
                state.set(
                        v, exitLiquid[from] ? PlanState.LIQUID : PlanState.VAPOUR, levelOf(from), PlanState.GAS_SYSTEM);
                state.flag(v, PlanState.COLD, exitLiquid[from] && cold(exitEnd[from]));
            } else if (group[v] == outlet) {
                state.set(v, PlanState.VAPOUR, state.cylinderLevel(into), state.cylinderOrigin(into));
            }
        }
        return true;
    }
}
