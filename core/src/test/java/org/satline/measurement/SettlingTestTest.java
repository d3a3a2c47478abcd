package org.satline.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Series whose slope and spread are known by construction. */
class SettlingTestTest {
    private static List<SettlingTest.Sample> series(int count, DoubleUnaryOperator ofMinutes) {
        List<SettlingTest.Sample> series = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            series.add(new SettlingTest.Sample(30 * i, ofMinutes.applyAsDouble(i / 2.0)));
        }
        return series;
    }

    @Test
    void tellsSettledFromMovingAndNoisy() {
        SettlingTest test = SettlingTest.forLineTemperatures();
        assertThat(test.apply(series(20, t -> 5 + 0.05 * t))).isInstanceOf(SettlingTest.Settled.class);
        assertThat(test.apply(series(20, t -> 5 + 0.1 * t))).isInstanceOf(SettlingTest.Moving.class);
        assertThat(test.apply(series(20, t -> 5 + (2 * t % 2 == 0 ? 0.6 : -0.6))))
                .isInstanceOf(SettlingTest.Moving.class);
        assertThat(test.apply(series(5, t -> 5))).isInstanceOf(SettlingTest.TooShort.class);
        // an exponential approach is moving early and settled late
        assertThat(test.apply(series(20, t -> 5 * Math.exp(-t / 4)))).isInstanceOf(SettlingTest.Moving.class);
        assertThat(test.apply(series(80, t -> 5 * Math.exp(-t / 4)))).isInstanceOf(SettlingTest.Settled.class);
    }

    /** A straight line has the slope that it was given and no spread; the window holds eleven readings of half a minute each. */
    @Test
    void tellsSlopeSpreadAndMean() {
        SettlingTest.Outcome outcome = SettlingTest.forLineTemperatures().apply(series(20, t -> 5 + 0.1 * t));
        assertThat(outcome).isInstanceOfSatisfying(SettlingTest.Moving.class, moving -> {
            assertThat(moving.slopePerMinute()).isCloseTo(0.1, within(1e-12));
            assertThat(moving.spread()).isCloseTo(0, within(1e-12));
        });
        assertThat(SettlingTest.forLineTemperatures().apply(series(20, t -> 5)))
                .isEqualTo(new SettlingTest.Settled(5, 0, 0));
        assertThat(SettlingTest.forLineTemperatures().apply(series(5, t -> 5)))
                .isEqualTo(new SettlingTest.TooShort(300, 5, 5));
    }

    @Test
    void refusesTimesThatDoNotRise() {
        assertThatThrownBy(() -> SettlingTest.forLineTemperatures()
                        .apply(List.of(new SettlingTest.Sample(10, 1), new SettlingTest.Sample(10, 1))))
                .hasMessageContaining("not later");
    }
}
