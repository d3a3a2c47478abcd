package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.simulator.HookUpSimulator;

/** A seeded part of the hook-ups; {@link AllHookUps} goes through all of them. */
class HookUpPlansTest {
    private static final long SEED = 15;

    private static List<PlanTrial> trials = List.of();

    @BeforeAll
    static void play() {
        trials = HookUpCases.some(SEED, 100).parallelStream().map(PlanTrial::of).toList();
    }

    @Test
    void everyPlanReachesWhatItIsForAndBreaksNothing() {
        PlanTrial trial = PlanTrial.all(trials);
        assertThat(HookUpCases.all()).hasSizeGreaterThan(5000);
        assertThat(trial.faults).as(trial.report()).isEmpty();
        int[] any = trial.share.getOrDefault("any", new int[2]);
        assertThat(any[0] * 2).as(trial.report()).isGreaterThanOrEqualTo(any[1]);
        assertThat(trial.longest).isBetween(10, HookUpPlan.Phase.MOST_ACTS);
        assertThat(HookUpShares.printed()).allSatisfy((kind, printed) -> {
            int[] counted = trial.share.getOrDefault(kind, new int[2]);
            // four standard deviations of a share of so many drawn: one fault in some 10 000 seeds
            double allowed = 4 * Math.sqrt(0.25 / Math.max(counted[1], 1));
            assertThat((double) counted[0] / counted[1]).as(kind).isCloseTo(printed, within(allowed));
        });
    }

    /** Named parts are put into the hook-up, and the plan that there is then breaks nothing either. */
    @Test
    void whatIsNamedMakesAPlanThatBreaksNothing() {
        List<PlanTrial.NoPlanCase> refused = PlanTrial.all(trials.subList(0, 60)).refused;
        assertThat(refused).hasSizeGreaterThan(30);
        refused.parallelStream().forEach(HookUpPlansTest::isHelpedByItsParts);
    }

    private static void isHelpedByItsParts(PlanTrial.NoPlanCase each) {
        List<PlanPart> parts = each.why().parts();
        List<FittedHookUp> fitted =
                new ArrayList<>(List.of(new FittedHookUp(each.site().hookUp(), each.state())));
        for (PlanPart part : parts.isEmpty() ? List.of(PlanPart.values()) : parts) {
            List<FittedHookUp> more = new ArrayList<>();
            fitted.forEach(with -> more.addAll(FittedHookUp.with(part, with.hookUp(), with.state(), each.task())));
            if (parts.isEmpty()) {
                assertThat(more).as("%s", each).noneMatch(with -> holds(with, each.task()));
            } else {
                fitted = more;
            }
        }
        if (!parts.isEmpty()) {
            assertThat(fitted).as("%s", each).anyMatch(with -> holds(with, each.task()));
        }
    }

    private static boolean holds(FittedHookUp with, PlanTask task) {
        return HookUpPlanner.plan(with.hookUp(), with.state(), task) instanceof HookUpPlan.Planned planned
                && HookUpSimulator.violations(new HookUpSimulator(with.hookUp()).play(with.state(), planned.acts()))
                        .isEmpty();
    }

    @Test
    void whereThereIsNoPlanABlindSearchFindsNoneEither() {
        BlindTrial trial = BlindTrial.of(HookUpCases.some(SEED, 300), 800);
        assertThat(trial.searched).isGreaterThan(500);
        assertThat(trial.found).as(trial.found.toString()).isEmpty();
        // it finds steps that are there: otherwise it would prove nothing
        assertThat(trial.steps[0]).isGreaterThan(20);
        assertThat(trial.steps[1] * 10).isGreaterThanOrEqualTo(trial.steps[0] * 9);
    }
}
