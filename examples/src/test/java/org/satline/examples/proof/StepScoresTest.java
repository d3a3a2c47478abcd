package org.satline.examples.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The advice on a plant that shares no equation with its prior nor with the simulated systems. */
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
}
