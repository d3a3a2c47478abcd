package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
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
                .waterCapacity(Mass.ofKilograms(waterCapacity))
                .tare(Mass.ofKilograms(waterCapacity * 0.5))
                .flammableMark(true)
                .build();
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
            double cool = cooler.outcomeOf(rule).maximumKilograms().orElse(Double.NaN);
            double warmer = hotter.outcomeOf(rule).maximumKilograms().orElse(Double.NaN);
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
                    .acceptingPartialStamps());
            double least = Double.POSITIVE_INFINITY;
            for (FillRule rule : RULES.jurisdiction(set).rules()) {
                least = Math.min(
                        least, assessment.outcomeOf(rule).maximumKilograms().orElse(Double.POSITIVE_INFINITY));
            }
            double strictest = assessment.limits().isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : assessment.limits().get(0).maximumContents().kilograms();
            assertThat(strictest).isEqualTo(least);
            assertThat(assessment.governing())
                    .isEqualTo(
                            assessment.isRefused()
                                    ? Optional.empty()
                                    : Optional.of(assessment.limits().get(0)));
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
            if (assessment.outcomeOf(rule) instanceof MassLimit limit) {
                double t =
                        rule.temperature().orElse(question.maximumTemperature()).kelvins();
                double overall = limit.maximumContents().kilograms()
                        / question.stamps().volume().cubicMetres();
                assertThat(overall).isLessThan(Samples.curve(gas).bubbleLiquidDensity(t));
            }
        }
    }

    @Property(tries = 300)
    void roomIsNeverBelowZeroWithoutSayingSo(
            @ForAll @DoubleRange(min = 10, max = 60) double gross,
            @ForAll @DoubleRange(min = 0, max = 30) double transferred,
            @ForAll @DoubleRange(min = 0, max = 0.5) double uncertainty,
            @ForAll @DoubleRange(min = 0, max = 1) double hose,
            @ForAll boolean zeroed) {
        CylinderStamps stamps = Samples.recovery().tare(Mass.ofKilograms(12)).build();
        Reading<Mass> before = Reading.ofExpanded(Mass.ofKilograms(gross), uncertainty, "scale, gross");
        Scale scale = zeroed
                ? new Scale.ZeroedAfterHookUp(
                        before,
                        Reading.ofExpanded(MassDifference.ofKilograms(transferred), uncertainty, "scale, since zeroed"))
                : new Scale.RunningGross(before);
        Room room = RoomFinder.find(stamps, Mass.ofKilograms(15), scale, Mass.ofKilograms(hose));
        if (room instanceof Room.Left left) {
            assertThat(left.room().kilograms()).isPositive();
            assertThat(left.contents().kilograms() + left.room().kilograms()).isLessThanOrEqualTo(15);
            assertThat(left.stopReading().kilograms()).isPositive();
        } else {
            assertThat(room.cautions()).isNotEmpty();
        }
    }
}
