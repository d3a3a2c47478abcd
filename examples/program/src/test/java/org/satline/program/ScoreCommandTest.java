package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ScoreCommandTest {
    @Test
    void theSameSeedGivesTheSamePageAndAnotherSeedAnother() {
        String page = ProgramRun.of("score", "--visits", "40", "--seed", "5").out();
        assertThat(page)
                .contains(
                        "Verdict on 40 visits to simulated systems",
                        "Verdict on 40 visits to machines of another build",
                        "acted on in the right direction",
                        "wrong charge advice",
                        "Reliability of the stated probabilities",
                        "Reliability of the stated probability of non-condensable-gas")
                .contains(
                        "advice on the next step",
                        "equal shots of 5 % of the charge",
                        "one correction by the charge estimate");
        assertThat(ProgramRun.of("score", "--visits", "40", "--seed", "5").out())
                .isEqualTo(page);
        assertThat(ProgramRun.of("score", "--visits", "40", "--seed", "6").out())
                .isNotEqualTo(page);
    }

    @Test
    void anImpossibleNumberOfVisitsIsRefused() {
        ProgramRun run = ProgramRun.of("score", "--visits", "0");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("outside [1, 100000]");
    }
}
