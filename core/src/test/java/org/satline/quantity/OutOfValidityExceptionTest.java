package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OutOfValidityExceptionTest {

    @Test
    void namesValueRangeAndOwner() {
        OutOfValidityException e = OutOfValidityException.of(
                "temperature",
                310,
                "K",
                216.592,
                304.1282,
                "the saturation line of R-744",
                "ask for a single-phase state");
        assertThat(e)
                .hasMessage("temperature 310.0 K is outside [216.592, 304.1282] K of the saturation line of R-744;"
                        + " ask for a single-phase state");
        assertThat(e.whose()).isEqualTo("the saturation line of R-744");
        assertThat(e.advice()).isEqualTo("ask for a single-phase state");
    }

    @Test
    void doesWithoutUnitAndAdvice() {
        assertThat(OutOfValidityException.of("mass fraction", Double.NaN, "", 0, 1, "a composition", ""))
                .hasMessage("mass fraction NaN is outside [0.0, 1.0] of a composition");
    }
}
