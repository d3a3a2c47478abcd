package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** All hook-ups; runs in the Maven profile {@code hookups} alone, for it takes long. */
class AllHookUps {
    private static final long SEED = 2026;

    @Test
    void everyPlanReachesWhatItIsForAndBreaksNothing() {
        PlanTrial trial = PlanTrial.all(
                HookUpCases.some(SEED, Integer.getInteger("satline.hookups", Integer.MAX_VALUE)).parallelStream()
                        .map(PlanTrial::of)
                        .toList());
        System.out.println(trial.report());
        if (System.getProperty("satline.readme.write") != null) {
            HookUpShares.write(trial.share);
        }
        assertThat(trial.faults).isEmpty();
        int[] any = trial.share.getOrDefault("any", new int[2]);
        assertThat(any[0] * 2).isGreaterThanOrEqualTo(any[1]);
    }

    /** Random ones; {@code satline.seed} says where to begin. */
    @Test
    void randomHookUpsHoldTheirPlans() {
        long first = Long.getLong("satline.seed", 0);
        int most = Integer.getInteger("satline.hookups", 1500);
        List<PlanTrial> trials = LongStream.range(first, first + most)
                .parallel()
                .mapToObj(seed -> {
                    PlanTrial trial = new PlanTrial();
                    trial.story(RandomHookUps.of(seed));
                    trial.hanging(RandomHookUps.hooked(seed));
                    return trial;
                })
                .toList();
        PlanTrial all = PlanTrial.all(trials);
        System.out.println(all.report());
        assertThat(all.faults).isEmpty();
    }

    @Test
    void whereThereIsNoPlanABlindSearchFindsNoneEither() {
        assertThat(BlindTrial.of(HookUpCases.all(), 20_000).found).isEmpty();
    }
}
