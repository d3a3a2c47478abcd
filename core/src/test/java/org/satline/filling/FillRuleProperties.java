package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;

class FillRuleProperties {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();
    private static final FillRules RULES = ASSESSOR.rules();

    @Provide
    Arbitrary<String> gases() {
        return Arbitraries.of(
                "R-22", "R-32", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-454B", "R-600a", "R-744");
    }

    private static FillQuestion question(String gas, double waterCapacity, double warmest) {
        CylinderStamps stamps = Samples.recovery()
                .with(Stamp.WATER_CAPACITY, Mass.ofKilograms(waterCapacity))
                .with(Stamp.TARE, Mass.ofKilograms(waterCapacity * 0.5))
                .with(Stamp.FLAMMABLE_MARK, true);
        return Samples.question(stamps, gas).warmestAt(Temperature.ofCelsius(warmest));
    }

    @Property(tries = 100)
    void warmerNeverAllowsMore(
            @ForAll("gases") String gas,
            @ForAll @DoubleRange(min = 1, max = 500) double waterCapacity,
            @ForAll @DoubleRange(min = -20, max = 65) double warm,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        FillAssessment cooler = ASSESSOR.assess(question(gas, waterCapacity, warm));
        FillAssessment hotter = ASSESSOR.assess(question(gas, waterCapacity, warm + more));
        for (FillRule rule : RULES.all()) {
            double cool = Samples.kilograms(cooler.answers().outcomeOf(rule)).orElse(Double.NaN);
            double warmer = Samples.kilograms(hotter.answers().outcomeOf(rule)).orElse(Double.NaN);
            assertThat(warmer > cool).as(rule.name()).isFalse();
        }
    }

    @Property(tries = 100)
    void theGoverningLimitIsTheSmallestOfItsSet(
            @ForAll("gases") String gas,
            @ForAll @DoubleRange(min = 1, max = 500) double waterCapacity,
            @ForAll @DoubleRange(min = 10, max = 65) double warmest) {
        for (String set : List.of("us", "adr")) {
            FillAssessment assessment = ASSESSOR.assess(question(gas, waterCapacity, warmest)
                    .under(RULES.jurisdiction(set))
                    .calculating());
            double least = Double.POSITIVE_INFINITY;
            for (FillRule rule : RULES.jurisdiction(set).rules()) {
                least = Math.min(
                        least,
                        Samples.kilograms(assessment.answers().outcomeOf(rule)).orElse(Double.POSITIVE_INFINITY));
            }
            List<MassLimit> limits = assessment.answers().limits(EnumSet.allOf(FillRule.Basis.class));
            double strictest = limits.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : limits.get(0).maximumContents().kilograms();
            assertThat(strictest).isEqualTo(least);
            if (assessment instanceof FillAssessment.Allowed allowed) {
                assertThat(allowed.governing()).isEqualTo(limits.get(0));
            }
        }
    }

    @Property(tries = 100)
    void aComputedLimitIsNotLiquidFullAtItsTemperature(
            @ForAll("gases") String gas,
            @ForAll @DoubleRange(min = 1, max = 500) double waterCapacity,
            @ForAll @DoubleRange(min = 10, max = 65) double warmest) {
        FillQuestion question = question(gas, waterCapacity, warmest);
        FillAssessment assessment = ASSESSOR.assess(question);
        for (String name : List.of(
                "liquid-80-warmest", "liquid-80-77F", "not-liquid-full-131F", "liquid-95-50C", "not-liquid-full-60C")) {
            FillRule rule = RULES.rule(name);
            if (assessment.answers().outcomeOf(rule) instanceof MassLimit limit) {
                double t =
                        rule.temperature().orElse(question.maximumTemperature()).kelvins();
                double overall = limit.maximumContents().kilograms()
                        / question.stamps().volume().cubicMetres();
                assertThat(overall).isLessThan(Samples.curve(gas).bubbleLiquidDensity(t));
            }
        }
    }
}
