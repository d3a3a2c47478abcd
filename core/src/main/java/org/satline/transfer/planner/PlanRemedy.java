package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanTask;

/** Which part makes a plan possible: proved by putting it into the hook-up and planning again. Stateless. */
final class PlanRemedy {
    /** Parts of the hook-up itself, the only ones that are tried two at a time. */
    private static final Set<PlanPart> HARDWARE = EnumSet.of(
            PlanPart.VACUUM_PUMP,
            PlanPart.CORE_TOOL,
            PlanPart.SHUT_OFF_AT_PORT,
            PlanPart.OTHER_HOSE,
            PlanPart.MANIFOLD);

    private PlanRemedy() {}

    /**
     * Finds the parts.
     *
     * @param likely the part that the reason speaks of; tried first
     * @return one part, or the likely one with a second; empty where none is found
     */
    static List<PlanPart> of(HookUp hookUp, HookUpState state, PlanTask task, PlanPart likely) {
        if (helps(hookUp, state, task, likely)) {
            return List.of(likely);
        }
        for (PlanPart part : PlanPart.values()) {
            if (part != likely && helps(hookUp, state, task, part)) {
                return List.of(part);
            }
        }
        if (!HARDWARE.contains(likely) && likely != PlanPart.RECOVERY_MACHINE) {
            return List.of();
        }
        for (FittedHookUp with : FittedHookUp.with(likely, hookUp, state, task)) {
            for (PlanPart part : HARDWARE) {
                if (part != likely && helps(with.hookUp(), with.state(), task, part)) {
                    return List.of(likely, part);
                }
            }
        }
        return List.of();
    }

    /** Whether there is a plan with that part. */
    static boolean helps(HookUp hookUp, HookUpState state, PlanTask task, PlanPart part) {
        return FittedHookUp.with(part, hookUp, state, task).stream().anyMatch(with -> isPlanned(with, task));
    }

    /** Whether there is a plan with all of these parts. */
    static boolean help(HookUp hookUp, HookUpState state, PlanTask task, List<PlanPart> parts) {
        List<FittedHookUp> all = new ArrayList<>(List.of(new FittedHookUp(hookUp, state)));
        for (PlanPart part : parts) {
            List<FittedHookUp> more = new ArrayList<>();
            all.forEach(each -> more.addAll(FittedHookUp.with(part, each.hookUp(), each.state(), task)));
            all = more;
        }
        return all.stream().anyMatch(with -> isPlanned(with, task));
    }

    private static boolean isPlanned(FittedHookUp with, PlanTask task) {
        Optional<List<HookUpPlan.Phase>> found = HookUpPlanner.attempt(with.hookUp(), with.state(), task);
        return found.isPresent();
    }
}
