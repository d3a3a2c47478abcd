package org.satline.transfer;

import java.util.List;

/** One phase found. */
record PlanFound(HookUpPlan.Phase.Kind kind, PlanState start, List<PlanMove> moves, PlanState end) {
    List<Act> acts() {
        return moves.stream().map(move -> move.act(start.parts)).toList();
    }
}
