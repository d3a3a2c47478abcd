package org.satline.transfer.planner;

import java.util.List;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanState;

/** One phase found. */
record PlanFound(HookUpPlan.Phase.Kind kind, PlanState start, List<PlanMove> moves, PlanState end) {
    List<Act> acts() {
        return moves.stream().map(move -> move.act(start.parts())).toList();
    }
}
