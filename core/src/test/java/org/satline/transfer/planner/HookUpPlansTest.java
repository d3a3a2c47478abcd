package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A seeded part of the hook-ups; {@link AllHookUps} goes through all of them. */
class HookUpPlansTest {
    private static final long SEED = 15;

    @Test
    void everyPlanReachesWhatItIsForAndBreaksNothing() {
        PlanTrial trial = new PlanTrial();
        HookUpCases.some(SEED, 100).forEach(trial::story);
        assertThat(HookUpCases.all()).hasSizeGreaterThan(5000);
        assertThat(trial.faults).as(trial.report()).isEmpty();
        int[] any = trial.share.getOrDefault("any", new int[2]);
        assertThat(any[0] * 2).as(trial.report()).isGreaterThanOrEqualTo(any[1]);
    }

    @Test
    void whereThereIsNoPlanABlindSearchFindsNoneEither() {
        BlindTrial trial = new BlindTrial(500);
        HookUpCases.some(SEED, 40).forEach(trial::site);
        assertThat(trial.searched).isGreaterThan(20);
        assertThat(trial.found).as(trial.found.toString()).isEmpty();
    }
}
