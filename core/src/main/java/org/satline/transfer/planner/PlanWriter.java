package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.satline.quantity.Mass;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.PlanNote;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.transition.PlanHand;
import org.satline.transfer.transition.PlanMove;
import org.satline.transfer.transition.PlanParts;
import org.satline.transfer.transition.PlanState;

/** Writes a phase that was found as the acts that people see. */
final class PlanWriter {
    private PlanWriter() {}

    /** The acts with what belongs to the end of a job. */
    static List<Act> acts(PlanFound found) {
        List<Act> acts = new ArrayList<>(found.acts());
        if (found.kind() == HookUpPlan.Phase.Kind.TAKE_OFF) {
            PlanParts parts = found.start().parts();
            for (SystemPort port : parts.ports()) {
                if (!found.end().capped(parts.connections().indexOf(port.name()))) {
                    acts.add(Act.of(Act.Kind.CAP, port.name()));
                }
            }
            acts.add(Act.of(Act.Kind.READ_SCALE, "scale"));
        }
        return acts;
    }

    static HookUpPlan.Phase phase(PlanFound found, PlanTask task) {
        List<Act> acts = acts(found);
        task.amount()
                .ifPresent(most -> acts.replaceAll(
                        act -> act.kind() == Act.Kind.OPEN_SHORT && found.kind() == HookUpPlan.Phase.Kind.STEP
                                ? act.until(most)
                                : act));
        double vented = Math.max(0, found.end().ventedGrams() - found.start().ventedGrams());
        return new HookUpPlan.Phase(found.kind(), acts, Mass.ofGrams(vented), notes(found, acts, vented));
    }

    private static List<PlanNote> notes(PlanFound found, List<Act> acts, double vented) {
        Set<PlanNote> notes = EnumSet.noneOf(PlanNote.class);
        PlanHand hand = new PlanHand(found.start());
        PlanState state = found.start();
        boolean mixed = false;
        for (PlanMove move : found.moves()) {
            PlanState next = hand.after(state, move);
            if (next == null) {
                break;
            }
            if (next.anyShutIn()) {
                notes.add(PlanNote.NEXT_ACT_AT_ONCE);
                if (move.kind() == Act.Kind.TAKE_OFF) {
                    notes.add(PlanNote.COUPLING_SPILLS);
                }
            }
            state = next;
        }
        for (int v = 0; v < state.parts().volumes().size(); v++) {
            mixed |= state.holdsRefrigerant(v) && !state.clean(v) && !state.unknown(v);
        }
        if (vented > 0) {
            notes.add(PlanNote.VENTS_VAPOUR);
        }
        if (mixed) {
            notes.add(PlanNote.HOSE_IS_MIXED);
        }
        boolean in = (state.moved() & (PlanState.IN_LIQUID | PlanState.IN_VAPOUR)) != 0;
        if (in && acts.stream().anyMatch(act -> act.kind() == Act.Kind.OPEN_SHORT)) {
            notes.add(PlanNote.LIQUID_INTO_SUCTION);
        }
        return List.copyOf(notes);
    }
}
