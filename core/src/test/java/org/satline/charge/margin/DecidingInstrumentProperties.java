package org.satline.charge.margin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.explanation.Figure;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;

/** The instrument that is said to decide a reading decides it when it is used, and none that is a hair worse does. */
class DecidingInstrumentProperties {
    private static Deviation deviation(double differenceK, double toleranceK, UncertaintyBudget budget) {
        return new Deviation(
                Criterion.SUBCOOLING,
                TemperatureDifference.ofKelvins(6 + differenceK),
                TemperatureDifference.ofKelvins(6),
                TemperatureDifference.ofKelvins(toleranceK),
                budget);
    }

    private static UncertaintyBudget budget(double gauge, double thermometer) {
        return UncertaintyBudget.of("gauge", gauge).plus(UncertaintyBudget.of("thermometer", thermometer));
    }

    /** The budget with the errors named made smaller to a share. */
    private static UncertaintyBudget better(UncertaintyBudget today, DecidingInstrument deciding, double share) {
        UncertaintyBudget better = UncertaintyBudget.none();
        for (Map.Entry<String, Double> each : today.contributions().entrySet()) {
            double left = deciding.origins().contains(each.getKey()) ? share : 1;
            better = better.plus(UncertaintyBudget.of(each.getKey(), left * each.getValue()));
        }
        return better;
    }

    @Property
    void theShareNamedDecidesAndAHairMoreDoesNot(
            @ForAll @DoubleRange(min = -5, max = 5) double differenceK,
            @ForAll @DoubleRange(min = 0.3, max = 3) double toleranceK,
            @ForAll @DoubleRange(min = 0.05, max = 3) double gaugeK,
            @ForAll @DoubleRange(min = 0, max = 3) double thermometerK,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double producersRisk,
            @ForAll @DoubleRange(min = 0.01, max = 0.3) double consumersRisk) {
        DecisionRule rule = new DecisionRule(producersRisk, consumersRisk);
        UncertaintyBudget today = budget(gaugeK, thermometerK);
        Deviation now = deviation(differenceK, toleranceK, today);
        Assume.that(rule.decide(now).isEmpty());
        DecidingInstrument deciding = DecidingInstrument.of(now, rule);
        assertThat(deciding.largestShare()).isLessThan(1);
        if (!deciding.attainable()) {
            // an instrument twenty times as good in all that is read is refused as unheard of, so it would not do
            // either
            assertThat(rule.decide(deviation(differenceK, toleranceK, better(today, deciding, 0.051))))
                    .isEmpty();
            return;
        }
        double share = deciding.largestShare();
        // a hair: the share is found to some 1E-15, and a square root of a difference of squares loses half of the
        // digits
        double hair = 1e-6;
        assertThat(rule.decide(deviation(differenceK, toleranceK, better(today, deciding, share - hair))))
                .isPresent();
        assertThat(rule.decide(deviation(differenceK, toleranceK, better(today, deciding, share + hair))))
                .isEmpty();
    }

    @Example
    void bothEdgesOfTheBandCount() {
        // 0.2025 K off in a band of 3 degF, u 0.9024 K: 1.92 % beyond one edge, 5.24 % beyond the other. Both together
        // are 5 % where
        // Phi(-1.4641 / u) + Phi(-1.8692 / u) = 0.05: by a table of the normal distribution, u = 0.8275 gives
        // Phi(-1.769) + Phi(-2.259) = 0.0384 + 0.0119 = 0.0503 and u = 0.825 gives 0.0380 + 0.0117 = 0.0497
        Deviation now = deviation(0.2025, 3 / 1.8, UncertaintyBudget.of("thermometer", 0.9024));
        DecidingInstrument deciding = DecidingInstrument.of(now, DecisionRule.usual());
        assertThat(deciding.largestShare()).isCloseTo(0.8263 / 0.9024, within(0.0015));
        assertThat(deciding.origins()).containsExactly("thermometer");
        assertThat(deciding.attainable()).isTrue();
    }

    @Example
    void onTheEdgeNoInstrumentDecides() {
        Deviation now = deviation(1.5, 1.5, UncertaintyBudget.of("thermometer", 0.5));
        DecidingInstrument deciding = DecidingInstrument.of(now, DecisionRule.usual());
        assertThat(deciding.attainable()).isFalse();
        assertThat(deciding.largestShare()).isZero();
    }

    @Property
    void aLevelIsDecidedWhereItsProbabilityReachesTheWantedOne(
            @ForAll @DoubleRange(min = -3, max = 3) double differenceK,
            @ForAll @DoubleRange(min = 0.1, max = 2) double standardUncertaintyK) {
        Deviation now = deviation(differenceK, 1.5, UncertaintyBudget.of("thermometer", standardUncertaintyK));
        boolean reached = now.probabilities().stream().anyMatch(figure -> ((Figure.Plain) figure).value() >= 0.95);
        assertThat(reached).isEqualTo(DecisionRule.usual().decide(now).isPresent());
    }

    @Example
    void aProbabilityJustBelowTheWantedOneDoesNotDecide() {
        // Phi(1.638) = 0.9493 (table of the normal distribution): the farther edge, 4 K off, takes nothing from it
        Deviation below = deviation(1.638, 1, UncertaintyBudget.of("thermometer", 0.638 / 1.638));
        assertThat(below.probability(ChargeLevel.HIGH)).isCloseTo(0.9493, within(0.00005));
        assertThat(DecisionRule.usual().decide(below)).isEmpty();
        Deviation above = deviation(1.66, 1, UncertaintyBudget.of("thermometer", 0.66 / 1.66));
        assertThat(DecisionRule.usual().decide(above)).isEqualTo(Optional.of(ChargeLevel.HIGH));
    }
}
