package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** All hook-ups; runs in the Maven profile {@code hookups} alone, for it takes long. */
class AllHookUps {
    private static final long SEED = 2026;

    @Test
    void everyPlanReachesWhatItIsForAndBreaksNothing() {
        PlanTrial trial = new PlanTrial();
        HookUpCases.some(SEED, Integer.getInteger("satline.hookups", Integer.MAX_VALUE))
                .forEach(trial::story);
        System.out.println(trial.report());
        if (System.getProperty("satline.readme.write") != null) {
            HookUpShares.write(trial.share);
        }
        assertThat(trial.faults).isEmpty();
        int[] any = trial.share.getOrDefault("any", new int[2]);
        assertThat(any[0] * 2).isGreaterThanOrEqualTo(any[1]);
    }

    @Test
    void whereThereIsNoPlanABlindSearchFindsNoneEither() {
        BlindTrial trial = new BlindTrial(20_000);
        HookUpCases.all().forEach(trial::site);
        assertThat(trial.found).isEmpty();
    }
}
