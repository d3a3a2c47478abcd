package org.satline.transfer.planner;

import java.util.List;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/**
 * Which hose is for what: by where it hangs, otherwise by its name ({@code low-hose}, {@code high-hose}, {@code centre-hose},
 * {@code pump-hose}; without a manifold the first hose of another name goes from port to cylinder). Immutable.
 */
final class PlanRoles {
    final int low;
    final int high;
    /** The hose to the cylinder. */
    final int centre;

    final int pump;
    /** The hose from the outlet of a recovery machine to the cylinder. */
    final int outlet;

    final boolean manifold;
    private final PlanParts parts;

    PlanRoles(PlanParts parts, PlanState state) {
        this.parts = parts;
        manifold = parts.hookUp().manifold().isPresent();
        low = manifold ? hose(state, "low", List.of(Manifold.LOW)) : PlanParts.NONE;
        high = manifold ? hose(state, "high", List.of(Manifold.HIGH)) : PlanParts.NONE;
        pump = hose(state, "pump", List.of(HookUp.PUMP, Manifold.VACUUM));
        outlet = hose(state, HookUp.OUTLET_HOSE, List.of(HookUp.MACHINE_OUTLET));
        int named = hose(state, "centre", List.of(Manifold.CENTRE));
        centre = named >= 0 || manifold ? named : other();
    }

    private PlanRoles(PlanRoles all) {
        parts = all.parts;
        low = all.low;
        high = PlanParts.NONE;
        centre = all.centre;
        pump = all.pump;
        outlet = all.outlet;
        manifold = all.manifold;
    }

    /** The same with the high hose left in the van. */
    PlanRoles withoutHigh() {
        return new PlanRoles(this);
    }

    private int other() {
        for (int i = 0; i < parts.hoses().size(); i++) {
            String name = parts.hoses().get(i).name();
            if (i != pump && i != outlet && !name.startsWith("low") && !name.startsWith("high")) {
                return i;
            }
        }
        return parts.hoses().isEmpty() ? PlanParts.NONE : 0;
    }

    private int hose(PlanState state, String name, List<String> at) {
        for (String connection : at) {
            int index = parts.connections().indexOf(connection);
            int end = index < 0 ? PlanParts.NONE : state.endAt(index);
            if (end >= 0) {
                return end / 2;
            }
        }
        for (int i = 0; i < parts.hoses().size(); i++) {
            if (parts.hoses().get(i).name().startsWith(name)) {
                return i;
            }
        }
        return PlanParts.NONE;
    }

    static int system(int hose) {
        return hose < 0 ? PlanParts.NONE : 2 * hose;
    }

    static int cylinder(int hose) {
        return hose < 0 ? PlanParts.NONE : 2 * hose + 1;
    }
}
