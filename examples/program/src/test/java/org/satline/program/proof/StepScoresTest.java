package org.satline.program.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The advice on simulated systems, and on a plant that shares no equation with them. */
class StepScoresTest {
    /** Not used while the constants of the advice were chosen. */
    private static final long FRESH_SEED = 7_351;

    private final StepScores scores = StepScores.ofSaturatingPlants(FRESH_SEED, 4000);

    @Test
    void reachesTheTargetInHalfTheStepsOfEqualShotsWithFewOvershoots() {
        StepScore advised = scores.following(Way.ADVICE);
        StepScore equal = scores.following(Way.EQUAL_SHOTS);
        StepScore once = scores.following(Way.ONE_CORRECTION);
        assertThat(advised.medianSteps())
                .as("%s against %s", advised.text(), equal.text())
                .isLessThanOrEqualTo(equal.medianSteps() / 2);
        assertThat(advised.overshootShare()).as(advised.text()).isLessThanOrEqualTo(0.05);
        assertThat(advised.error95())
                .as("%s against %s", advised.text(), once.text())
                .isLessThan(once.error95());
    }

    @Test
    void startsCoarselyButSafelyWithoutASignal() {
        StepScore advised = scores.pinned(Way.ADVICE);
        assertThat(advised.overshootShare()).as(advised.text()).isLessThanOrEqualTo(0.05);
    }

    @Test
    void doesTheSameOnSimulatedSystems() {
        VisitMaker maker = VisitMaker.simulated(FRESH_SEED);
        SplittableRandom seeds = new SplittableRandom(FRESH_SEED);
        StepScores simulated = new StepScores();
        for (int i = 0; i < 3000; i++) {
            Visit visit = maker.next();
            long noiseSeed = seeds.nextLong();
            if (StepScores.takes(visit)) {
                simulated.add(() -> new SimulatedPlant(visit, noiseSeed));
            }
        }
        StepScore advised = simulated.following(Way.ADVICE);
        StepScore equal = simulated.following(Way.EQUAL_SHOTS);
        assertThat(advised.medianSteps())
                .as("%s against %s", advised.text(), equal.text())
                .isLessThanOrEqualTo(equal.medianSteps() / 2);
        StepScore pinned = simulated.pinned(Way.ADVICE);
        assertThat(advised.overshootShare()).as(advised.text()).isLessThanOrEqualTo(refutesFivePercent(advised));
        assertThat(pinned.overshootShare()).as(pinned.text()).isLessThanOrEqualTo(refutesFivePercent(pinned));
    }

    /** Some hundred visits scatter: above this share 5 % is refuted at a risk of 1 % (normal approximation of the binomial). */
    private static double refutesFivePercent(StepScore score) {
        return 0.05 + 2.33 * Math.sqrt(0.05 * 0.95 / score.visits());
    }
}
