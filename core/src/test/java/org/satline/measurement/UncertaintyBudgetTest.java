package org.satline.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** JCGM 100:2008: clause 5.1.2 (independent), 5.2.2 (correlated), 4.3.7 (limits), 7.2.6 (rounding). */
class UncertaintyBudgetTest {
    @Test
    void independentErrorsAddInSquares() {
        UncertaintyBudget sum = UncertaintyBudget.of("a", 3).plus(UncertaintyBudget.of("b", 4));
        assertThat(sum.combined()).isCloseTo(5, within(1e-15));
    }

    @Test
    void aCommonErrorCancelsInADifference() {
        UncertaintyBudget common = UncertaintyBudget.of("thermometer", 0.7);
        assertThat(common.minus(common).combined()).isZero();
        assertThat(common.plus(common).combined()).isCloseTo(1.4, within(1e-15));
    }

    /** Example of EN 837-1 class 1.6, span 0 to 35 bar: limit 0.56 bar, u = 0.56 / sqrt(3) = 0.32 bar. */
    @Test
    void limitsBecomeAStandardUncertainty() {
        assertThat(StandardUncertainty.ofLimits(0.016 * 35)).isCloseTo(0.32, within(0.005));
    }

    @Test
    void valuesAreReportedWithTwoDigitsOfUncertainty() {
        assertThat(ReportedValue.of(5.8349, 0.642, "K").toString()).isEqualTo("5.8 K +/- 1.3 K (k = 2)");
    }

    @Test
    void brokenUncertaintiesAreRefused() {
        assertThatThrownBy(() -> UncertaintyBudget.of("a", Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> UncertaintyBudget.of("a", -1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> UncertaintyBudget.of("a", 1).scaled(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
