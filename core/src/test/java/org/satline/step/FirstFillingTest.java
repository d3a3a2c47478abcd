package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.step.LineCharge.FirstFilling;

/** Arithmetic: what goes in leaves the scale; limits as rectangular distributions (JCGM 100:2008, 4.3.7). */
class FirstFillingTest {
    private static final Reading<Mass> SCALE = Reading.of(Mass.ofKilograms(14), 0.01, "scale");

    @Test
    void plateAndLineSetGoInAndLeaveTheScale() {
        LineCharge line = new LineCharge(Mass.ofKilograms(0.3), List.of(), List.of());
        FirstFilling filling = FirstFilling.of(Mass.ofKilograms(2.5), Optional.of(line), SCALE);
        assertThat(filling.weighIn().value().kilograms()).isCloseTo(2.8, within(1e-12));
        assertThat(filling.scaleAtEnd().kilograms()).isCloseTo(11.2, within(1e-12));
        // 1 % of 2.5 kg and 15 % of 0.3 kg as limits, and 10 g
        double u = Math.sqrt(0.025 * 0.025 / 3 + 0.045 * 0.045 / 3 + 0.01 * 0.01);
        assertThat(filling.weighIn().standardUncertainty()).isCloseTo(u, within(1e-12));
    }

    @Test
    void withoutALongerLineThePlateAlone() {
        FirstFilling filling = FirstFilling.of(Mass.ofKilograms(2.5), Optional.empty(), SCALE);
        assertThat(filling.weighIn().value()).isEqualTo(Mass.ofKilograms(2.5));
    }

    @Test
    void moreThanStandsOnTheScaleOrNothingIsRefused() {
        assertThatThrownBy(() -> FirstFilling.of(Mass.ofKilograms(15), Optional.empty(), SCALE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fuller");
        assertThatThrownBy(() -> FirstFilling.of(Mass.ZERO, Optional.empty(), SCALE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("plate");
    }
}
