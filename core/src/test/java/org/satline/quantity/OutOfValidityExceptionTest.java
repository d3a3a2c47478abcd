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

    @Test
    void printsNoDustOfBinaryArithmetic() {
        assertThat(OutOfValidityException.of("temperature", 126.85000000000002, "degC", -50, 70, "the fill rules", ""))
                .hasMessage("temperature 126.85 degC is outside [-50.0, 70.0] degC of the fill rules");
        OutOfValidityException e =
                OutOfValidityException.of("pressure", 12_500_000, "Pa", 389.5637885685359, 4059262.454322851, "a", "");
        assertThat(e).hasMessage("pressure 12500000 Pa is outside [389.5638, 4059262.0] Pa of a");
        assertThat(e.low()).isEqualTo(389.5637885685359);
        assertThat(e.high()).isEqualTo(4059262.454322851);
    }

    @Test
    void printsAsManyDigitsAsItTakesToSeeTheValueOutside() {
        assertThat(OutOfValidityException.of("temperature", 304.12820001, "K", 216.592, 304.1282, "a", ""))
                .hasMessage("temperature 304.12820001 K is outside [216.592, 304.1282] K of a");
        double next = Math.nextUp(304.1282);
        assertThat(OutOfValidityException.of("temperature", next, "K", 216.592, 304.1282, "a", ""))
                .hasMessage("temperature " + next + " K is outside [216.592, 304.1282] K of a");
    }
}
