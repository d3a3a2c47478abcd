package org.satline.transfer;

import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.quantity.Parts;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;

/** Whether refrigerant may go through the hose to the cylinder. */
public enum HoseState implements Coded {
    /** Joined and free of air: it may. */
    READY,
    /** It holds air, or hangs elsewhere: a plan makes it ready. */
    NOT_PURGED,
    /** No plan makes it ready. */
    CANNOT_BE_PURGED,
    /** What it holds is not known or was not said. */
    UNKNOWN;

    /**
     * Tells it from what the hoses hold and from the plan that makes them ready.
     *
     * @param hookUp the parts on site
     * @param state how they stand
     * @param connect the plan of {@link PlanTask.Kind#CONNECT_AND_PURGE} for the cylinder; empty where no hoses were given
     * @return the state of the way to the cylinder
     */
    public static HoseState of(HookUp hookUp, HookUpState state, Optional<HookUpPlan> connect) {
        Parts.required("hookUp state connect", hookUp, state, connect);
        if (connect.isEmpty()) {
            return UNKNOWN;
        }
        HookUpPlan plan = connect.get();
        boolean unknown = hookUp.hoses().stream()
                .anyMatch(hose -> state.volume(hose.name()).origin() == GasOrigin.UNKNOWN);
        if (plan instanceof HookUpPlan.NoPlan none) {
            return unknown && none.reason() == PlanReason.UNKNOWN_CONTENTS ? UNKNOWN : CANNOT_BE_PURGED;
        }
        return ((HookUpPlan.Planned) plan).phases().isEmpty() ? READY : NOT_PURGED;
    }
}
