package org.satline.transfer;

/** Why there is no plan, and what would make one possible. */
final class PlanDiagnosis {
    private PlanDiagnosis() {}

    static HookUpPlan of(HookUp hookUp, HookUpState state, PlanTask task) {
        return new HookUpPlan.NoPlan(PlanReason.NO_SWEEP_PATH, PlanPart.VACUUM_PUMP);
    }
}
