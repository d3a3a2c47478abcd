package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Parts;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.simulator.HookUpSimulator;

/**
 * Finds the shortest safe order of valves and joints for one task: breadth first over what is open, joined and held, with the invariants as
 * what is forbidden. No plan begins that has no end: the step and the take-off that follow are found with it. It has its own idea of what
 * flows; {@link HookUpSimulator} is another one, and tests hold every plan to it. Stateless, thread-safe.
 */
public final class HookUpPlanner {
    private HookUpPlanner() {}

    /**
     * Plans a task.
     *
     * @param hookUp the parts on site
     * @param state how they stand
     * @param task what is wanted
     * @return the acts by phase, or why there are none and which part would make them possible
     * @throws IllegalArgumentException if the task names a cylinder that is not there
     */
    public static HookUpPlan plan(HookUp hookUp, HookUpState state, PlanTask task) {
        Parts.required("hookUp state task", hookUp, state, task);
        if (task.kind() != PlanTask.Kind.END_OF_JOB
                && hookUp.cylinders().stream().noneMatch(each -> each.name().equals(task.cylinder()))) {
            throw new IllegalArgumentException("no cylinder is called \"" + task.cylinder() + "\"; known are "
                    + hookUp.cylinders().stream().map(ServiceCylinder::name).toList());
        }
        Optional<List<HookUpPlan.Phase>> phases = attempt(hookUp, state, task);
        return phases.<HookUpPlan>map(HookUpPlan.Planned::new).orElseGet(() -> PlanDiagnosis.of(hookUp, state, task));
    }

    /** The plan without a reason where there is none. */
    static Optional<List<HookUpPlan.Phase>> attempt(HookUp hookUp, HookUpState state, PlanTask task) {
        if (PlanDiagnosis.isTranscritical(hookUp)) {
            return Optional.empty();
        }
        PlanPhases phases = new PlanPhases(hookUp, state);
        List<PlanFound> found = switch (task.kind()) {
            case CONNECT_AND_PURGE -> phases.connect(task.cylinder());
            case STEP_OUT -> phases.step(task.cylinder(), true);
            case STEP_IN -> phases.step(task.cylinder(), false);
            case CHANGE_OVER -> phases.changeOver(task.cylinder());
            case END_OF_JOB -> phases.end();
        };
        if (found == null) {
            return Optional.empty();
        }
        if (found.stream().anyMatch(each -> PlanWriter.acts(each).size() > HookUpPlan.Phase.MOST_ACTS)) {
            return Optional.empty();
        }
        List<HookUpPlan.Phase> made = new ArrayList<>();
        for (PlanFound each : found) {
            if (!each.acts().isEmpty()) {
                made.add(PlanWriter.phase(each, task));
            }
        }
        return Optional.of(made);
    }
}
