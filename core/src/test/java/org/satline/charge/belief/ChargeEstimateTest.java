package org.satline.charge.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.LineMargin;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** Worked by hand from the structure and typical constants of Li and Braun (from memory). */
class ChargeEstimateTest {
    private static LineMargin margin(Criterion criterion, double kelvins) {
        return new LineMargin(
                criterion,
                TemperatureDifference.ofKelvins(kelvins),
                Temperature.ofCelsius(10),
                UncertaintyBudget.of(criterion.label(), 0.5),
                List.of());
    }

    @Test
    void followsTheFormula() {
        // k_ch = 7.3 / (0.25 * 0.73) = 40 K; [(5.3 - 7.3) - (10 - 5) / 2.5] / 40 = -0.1
        ChargeEstimate estimate = ChargeEstimate.of(
                margin(Criterion.SUPERHEAT, 10),
                5,
                margin(Criterion.SUBCOOLING, 5.3),
                7.3,
                ChargeEstimate.Constants.typical(7.3));
        assertThat(estimate.fraction()).isCloseTo(-0.1, within(1e-12));
        double readings = Math.hypot(0.5, 0.4 * 0.5) / 40;
        double u = Math.sqrt(readings * readings + 0.01 / 3 + 0.03 * 0.03);
        assertThat(estimate.standardUncertainty()).isCloseTo(u, within(1e-12));
        assertThat(estimate.step().source()).contains("Li and Braun");
    }

    @Test
    void refusesAnImpossibleRating() {
        assertThatThrownBy(() -> ChargeEstimate.Constants.typical(0)).hasMessageContaining("rated subcooling");
        assertThatThrownBy(() -> ChargeEstimate.Constants.typical(Double.NaN)).hasMessageContaining("maker's figure");
    }
}
