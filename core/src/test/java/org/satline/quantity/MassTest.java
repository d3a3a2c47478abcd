package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MassTest {
    private static final Mass GROSS = Mass.ofKilograms(9.5);
    private static final Mass TARE = Mass.ofKilograms(6);

    @Test
    void addsAndTakesAway() {
        assertThat(GROSS.minus(TARE)).isEqualTo(Mass.ofKilograms(3.5));
        assertThat(TARE.plus(Mass.ofKilograms(3.5))).isEqualTo(GROSS);
        assertThat(GROSS.minus(GROSS)).isEqualTo(Mass.ZERO);
    }

    @Test
    void neverFallsBelowNothing() {
        assertThatThrownBy(() -> TARE.minus(GROSS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("mass 9.5 kg cannot be taken from 6.0 kg, [0.0, 6.0] kg is there; check both weighings");
        assertThatThrownBy(() -> Mass.parse("-0.1 kg")).hasMessageContaining("never negative");
        assertThatThrownBy(() -> TARE.plus(MassDifference.ofKilograms(-7))).hasMessageContaining("never negative");
    }

    @Test
    void aScaleCanLose() {
        assertThat(TARE.differenceFrom(GROSS)).isEqualTo(MassDifference.ofKilograms(-3.5));
        assertThat(GROSS.plus(TARE.differenceFrom(GROSS))).isEqualTo(TARE);
        assertThat(MassDifference.parse("-7 oz"))
                .isEqualTo(MassDifference.ofOunces(7).negated());
        assertThat(MassDifference.ofGrams(250)
                        .plus(MassDifference.ofGrams(-125))
                        .minus(MassDifference.ofGrams(125)))
                .isEqualTo(MassDifference.ZERO);
    }

    @Test
    void densityTimesVolumeIsMass() {
        assertThat(Density.ofKilogramsPerCubicMetre(1200).times(Volume.ofLitres(10)))
                .isEqualTo(Mass.ofKilograms(12));
    }
}
