package org.satline.charge.belief;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Survey of 4000 residential systems in California, Home Energy Magazine, cited in full in priors.csv. */
class PriorsReferenceTest {
    @Test
    void priorsAreThoseOfTheSurvey() {
        assertThat(Priors.value("under")).isEqualTo(0.34);
        assertThat(Priors.value("over")).isEqualTo(0.28);
        assertThat(Priors.value("right")).isEqualTo(0.38);
    }
}
