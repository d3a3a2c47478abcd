package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.DecisionRule;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Levels by the decision of the California Energy Code, Reference Appendix RA3.2 (2008, installer): superheat within
 * 5 degF, subcooling within 3 degF of
 * the target; with a doubt of the readings by the guard bands of JCGM 106:2012, 5 % on either side.
 */
class ChargeJudgeTest {
    private static ChargeLevel published(Judgement judgement) {
        return judgement.evidence().deviation().orElseThrow().level();
    }

    private static ChargeLevel decided(Judgement judgement) {
        assertThat(judgement).isInstanceOf(Judgement.Decided.class);
        return ((Judgement.Decided) judgement).level();
    }

    private static Finding finding(Judgement judgement, ChargeCode code) {
        return judgement.evidence().findings().stream()
                .filter(each -> each.code() == code)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "10, 10, 10, ON_TARGET",
        "10, 13, 10, ON_TARGET",
        "10, 7, 10, ON_TARGET",
        "10, 13.1, 10, HIGH",
        "10, 6.9, 10, LOW",
        "30, 2, 10, LOW",
    })
    void subcoolingDecidesWithAValve(double superheat, double subcooling, double target, ChargeLevel expected) {
        Judgement judgement = Case.valve(superheat, subcooling, 0)
                .target(Optional.of(TemperatureDifference.ofFahrenheitDegrees(target)))
                .judged();
        assertThat(published(judgement)).isEqualTo(expected);
        assertThat(decided(judgement)).isEqualTo(expected);
    }

    /** Chart: 60 degF wet bulb and 65 degF condenser air give 19 degF. */
    @ParameterizedTest
    @CsvSource({"19, 10, ON_TARGET", "24, 10, ON_TARGET", "14, 10, ON_TARGET", "24.1, 5, LOW", "13.9, 12, HIGH"})
    void superheatDecidesWithAnOrifice(double superheat, double subcooling, ChargeLevel expected) {
        Judgement judgement = Case.orifice(superheat, subcooling, 0)
                .degF(Place.RETURN_WET_BULB, 60)
                .degF(Place.OUTDOOR_AIR, 65)
                .judged();
        assertThat(judgement.evidence().deviation().orElseThrow().target().fahrenheitDegrees())
                .isCloseTo(19, within(1e-9));
        assertThat(published(judgement)).isEqualTo(expected);
    }

    /** With u = 0.3 K = 0.54 degF the guard band is 0.89 degF: on target to 2.1 degF, low or high from 3.9 degF. */
    @ParameterizedTest
    @CsvSource({
        "10, 10, on-target, false",
        "10, 12, on-target, false",
        "10, 12.5, on-target, true",
        "10, 13.8, high, false",
        "10, 14, high, false",
        "10, 6, low, false",
        "10, 6.5, low, false",
        "10, 7.5, on-target, true",
        "10, 8, on-target, false",
        "35, 14.5, not-charge, false",
        "35, 2, low, false",
        "0.5, 14, undecided, false",
    })
    void doubtDecidesWithAValve(double superheatF, double subcoolingF, String label, boolean goodEnough) {
        Judgement judgement = Case.valve(superheatF, subcoolingF, 0.3).judged();
        assertThat(judgement.label()).isEqualTo(label);
        assertThat(judgement instanceof Judgement.Decided decided && decided.goodEnough())
                .isEqualTo(goodEnough);
    }

    /**
     * Chart: 64 degF wet bulb and 85 degF condenser air give 11 degF; the slopes of the chart there are 1.75 and
     * -0.6.
     */
    @ParameterizedTest
    @CsvSource({
        "11, 11, on-target, false",
        "14, 11, on-target, false",
        "8, 11, on-target, false",
        "19, 3, low, false",
        "3, 16, high, false",
        "22, 25, not-charge, false",
        "15.9, 9, on-target, true",
        "16.1, 9, undecided, false",
        "4, 0.2, not-charge, false",
    })
    void doubtDecidesWithAnOrifice(double superheatF, double subcoolingF, String label, boolean goodEnough) {
        Judgement judgement = Case.orifice(superheatF, subcoolingF, 0.3).judged();
        assertThat(judgement.label()).isEqualTo(label);
        assertThat(judgement instanceof Judgement.Decided decided && decided.goodEnough())
                .isEqualTo(goodEnough);
        Deviation deviation = judgement.evidence().deviation().orElseThrow();
        assertThat(deviation.criterion()).isEqualTo(Criterion.SUPERHEAT);
        assertThat(deviation.target().kelvins()).isCloseTo(11 / 1.8, within(1e-9));
        double u = 0.3 * Math.sqrt(1 + 1.75 * 1.75 + 0.6 * 0.6);
        assertThat(deviation.standardUncertaintyK()).isCloseTo(u, within(1e-6));
    }

    /**
     * 2.5 degF in a band of 3 degF, u = 0.54 degF: Phi(0.926) = 0.823 by a table of the normal distribution; the
     * other edge takes nothing.
     */
    @Test
    void insideTheBandAsReadIsGoodEnough() {
        Judgement.Decided decided =
                (Judgement.Decided) Case.valve(10, 12.5, 0.3).judged();
        assertThat(decided.level()).isEqualTo(ChargeLevel.ON_TARGET);
        assertThat(decided.evidence().deviation().orElseThrow().probability(ChargeLevel.ON_TARGET))
                .isCloseTo(0.823, within(0.0005));
        assertThat(finding(decided, ChargeCode.GOOD_ENOUGH).severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding(decided, ChargeCode.GOOD_ENOUGH).subject().name()).isEqualTo("liquidLine probe");
    }

    /**
     * So doubtful a reading inside the band that a wrong charge is likelier on neither side than a right one is:
     * below 1/2, yet the likeliest.
     */
    @Test
    void outsideTheBandNothingIsGoodEnough() {
        Judgement.Undecided above =
                (Judgement.Undecided) Case.valve(10, 13.2, 0.7).judged();
        assertThat(above.evidence().deviation().orElseThrow().likeliest()).isEqualTo(ChargeLevel.HIGH);
        assertThat(above.deciding().orElseThrow().attainable()).isTrue();
        assertThat(finding(above, ChargeCode.NOT_DECIDED).severity()).isEqualTo(Severity.FORBIDS);
        assertThat(above.evidence().findings().get(0).code()).isEqualTo(ChargeCode.NOT_DECIDED);
    }

    /** The better instrument that is named, one that is as good as the share says, decides. */
    @Test
    void theInstrumentNamedDecidesWhenItIsUsed() {
        double uK = 0.7;
        Judgement.Undecided now = (Judgement.Undecided) Case.valve(10, 13.2, uK).judged();
        double share = now.deciding().orElseThrow().largestShare();
        Deviation deviation = now.evidence().deviation().orElseThrow();
        DecisionRule rule = DecisionRule.usual();
        assertThat(rule.decide(withUncertainty(deviation, uK * (share - 1e-6)))).contains(ChargeLevel.HIGH);
        assertThat(rule.decide(withUncertainty(deviation, uK * (share + 1e-6)))).isEmpty();
    }

    private static Deviation withUncertainty(Deviation d, double uK) {
        return new Deviation(d.criterion(), d.measured(), d.target(), d.tolerance(), UncertaintyBudget.of("all", uK));
    }

    @Test
    void otherRisksDecideOtherwise() {
        ChargeCase it = Case.valve(10, 13.8, 0.3).made();
        assertThat(decided(ChargeJudge.usual().accepting(0.1, 0.05).judge(it))).isEqualTo(ChargeLevel.HIGH);
        assertThatThrownBy(() -> ChargeJudge.usual().accepting(0.5, 0.05)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theRiskOfTheLevelIsTold() {
        Judgement on = Case.valve(10, 10, 0.3).judged();
        Judgement low = Case.valve(35, 2, 0.3).judged();
        assertThat(Case.codes(on)).contains(ChargeCode.CONSUMERS_RISK).doesNotContain(ChargeCode.PRODUCERS_RISK);
        assertThat(Case.codes(low)).contains(ChargeCode.PRODUCERS_RISK).doesNotContain(ChargeCode.CONSUMERS_RISK);
    }

    /**
     * Contradictions, signs by Rossi and Braun (1997) and the range of a valve by RA3.2; within their doubt they name
     * no fault.
     */
    @ParameterizedTest
    @CsvSource({
        "EXPANSION_VALVE, 30, 14, EVAPORATOR_STARVES",
        "EXPANSION_VALVE, 3.5, 14, VALVE_FLOODS",
        "FIXED_ORIFICE, 24, 20, AMPLE_SUBCOOLING",
        "FIXED_ORIFICE, 4, 0.5, SCANT_SUBCOOLING",
    })
    void contradictingReadingsGiveNoLevel(
            MeteringDevice metering, double superheat, double subcooling, ChargeCode code) {
        Case it = metering == MeteringDevice.EXPANSION_VALVE
                ? Case.valve(superheat, subcooling, 0.3)
                : Case.orifice(superheat, subcooling, 0.3);
        Judgement judgement = it.judged();
        assertThat(judgement).isNotInstanceOf(Judgement.Decided.class);
        assertThat(finding(judgement, code).severity()).isEqualTo(Severity.FORBIDS);
    }

    @Test
    void aContradictionBeyondItsDoubtNamesAFaultThatIsNotTheCharge() {
        Judgement.OtherFault fault =
                (Judgement.OtherFault) Case.valve(35, 14.5, 0.3).judged();
        assertThat(fault.fault().ofCharge()).isFalse();
        assertThat(fault.probability())
                .isEqualTo(fault.evidence().faults().stream()
                        .filter(each -> each.fault() == fault.fault())
                        .findFirst()
                        .orElseThrow()
                        .probability());
        assertThat(Case.codes(fault)).contains(ChargeCode.EVAPORATOR_STARVES, ChargeCode.FAULT_LIKELIER);
        // as read a hair beyond the range of a valve, 25 degF: likely, not told as fact
        Judgement hair = Case.valve(25.3, 14.5, 0.3).judged();
        assertThat(Case.codes(hair)).doesNotContain(ChargeCode.EVAPORATOR_STARVES);
        assertThat(hair.evidence().weighed().belief().probability(Fault.LIQUID_LINE_RESTRICTION))
                .isLessThan(0.95);
    }

    /**
     * Subcooling alone never condemns another part: condensing temperature 9 K over ambient speaks against a fouled
     * condenser.
     */
    @Test
    void aFaultWithoutAReadingOfItsOwnDoesNotReplaceTheCharge() {
        SaturationCurve r407c = SaturationCurves.solving(Catalogue.standard().find("R-407C"));
        SystemReadings readings = SystemReadings.builder()
                .suction(reading(Pressure.ofPascals(550_000), "low side"), reading(287, "suction line"))
                .liquid(reading(Pressure.ofPascals(1_800_000), "high side"), reading(314, "liquid line"))
                .put(Place.RETURN_WET_BULB, reading(291, "wet bulb"))
                .put(Place.OUTDOOR_AIR, reading(305, "outdoor air"))
                .put(Place.RETURN_DRY_BULB, reading(298, "return air"))
                .put(Place.SUPPLY_DRY_BULB, reading(287, "supply air"))
                .build();
        Judgement judgement = ChargeJudge.usual()
                .judge(new ChargeCase(
                        r407c,
                        readings,
                        ChargeQuestion.of(
                                MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5.6))),
                        OperatingConditions.unknown()));
        assertThat(decided(judgement)).isEqualTo(ChargeLevel.LOW);
        assertThat(finding(judgement, ChargeCode.FAULT_NOT_RULED_OUT).severity())
                .isEqualTo(Severity.CAUTION);
    }

    private static Reading<Pressure> reading(Pressure value, String origin) {
        return Reading.of(value, 7000, origin);
    }

    private static Reading<Temperature> reading(double kelvins, String origin) {
        return Reading.of(Temperature.ofKelvins(kelvins), 0.5, origin);
    }

    @Test
    void outsideTheChartOrWithoutTargetThereIsNoLevel() {
        Judgement dash = Case.orifice(10, 10, 0)
                .degF(Place.RETURN_WET_BULB, 50)
                .degF(Place.OUTDOOR_AIR, 90)
                .judged();
        assertThat(Case.codes(dash)).containsExactly(ChargeCode.TARGET_AT_DASH);
        Judgement outside = Case.orifice(10, 10, 0)
                .degF(Place.RETURN_DRY_BULB, 90)
                .degF(Place.RETURN_WET_BULB, 80)
                .judged();
        assertThat(Case.codes(outside)).containsExactly(ChargeCode.TARGET_OUTSIDE_CHART);
        assertThat(missing(Case.valve(10, 10, 0).target(Optional.empty()))).isEqualTo("system.targetSubcooling");
        assertThat(missing(Case.orifice(10, 10, 0).without(Place.RETURN_WET_BULB)))
                .isEqualTo("readings.returnWetBulb");
        assertThat(missing(Case.valve(10, 10, 0).without(Place.LIQUID_PRESSURE, Place.LIQUID_LINE)))
                .isEqualTo("readings.liquidPressure readings.liquidLine");
    }

    private static String missing(Case it) {
        Judgement judgement = it.judged();
        assertThat(judgement).isInstanceOf(Judgement.Undecided.class);
        assertThat(judgement.evidence().findings()).allSatisfy(finding -> {
            assertThat(finding.code()).isEqualTo(CommonCode.NOT_GIVEN);
            assertThat(finding.severity()).isEqualTo(Severity.MUST_BE_SUPPLIED);
        });
        return String.join(
                " ",
                judgement.evidence().findings().stream()
                        .map(finding -> finding.subject().name())
                        .toList());
    }

    /** Without outdoor and return air it is not known whether the system cools at all. */
    @Test
    void withoutEitherAirTheModeIsNotKnown() {
        Case blind = Case.valve(10, 2, 0.3).without(Place.OUTDOOR_AIR, Place.RETURN_DRY_BULB, Place.RETURN_WET_BULB);
        Judgement judgement = blind.judged();
        assertThat(judgement).isInstanceOf(Judgement.Undecided.class);
        assertThat(judgement.evidence().findings().get(0).code()).isEqualTo(ChargeCode.MODE_NOT_KNOWN);
        assertThat(Case.codes(judgement)).contains(CommonCode.NOT_GIVEN);
        assertThat(decided(blind.degF(Place.RETURN_DRY_BULB, 76).judged())).isEqualTo(ChargeLevel.LOW);
        assertThat(decided(blind.degF(Place.OUTDOOR_AIR, 85).judged())).isEqualTo(ChargeLevel.LOW);
    }

    /** What stands in the way of any judgement is told even where there is no target to judge by. */
    @Test
    void aConditionThatIsNotMetComesBeforeAMissingTarget() {
        Judgement soon = Case.valve(10, 10, 0.3)
                .target(Optional.empty())
                .running(Duration.ofMinutes(5))
                .judged();
        assertThat(soon).isInstanceOf(Judgement.Undecided.class);
        assertThat(soon.evidence().findings()).extracting(Finding::code).startsWith(ChargeCode.GATE_NOT_MET);
        assertThat(Case.codes(soon)).contains(CommonCode.NOT_GIVEN);
        Judgement gas = Case.valve(10, 10, 0.3)
                .target(Optional.empty())
                .standing(200_000, 5000)
                .judged();
        assertThat(gas)
                .isInstanceOfSatisfying(
                        Judgement.OtherFault.class,
                        fault -> assertThat(fault.fault()).isEqualTo(Fault.NON_CONDENSABLE_GAS));
    }

    /**
     * 50 K over the outdoor air, common practice 15 to 30 degF: air or a fouled condenser first; once the pressure at
     * rest clears the refrigerant, the condenser.
     */
    @Test
    void farTooHotACondenserIsNotTheCharge() {
        Case hot = Case.valve(10, 20, 0.3).degF(Place.OUTDOOR_AIR, 60);
        assertThat(hot.judged()).isNotInstanceOf(Judgement.Decided.class);
        assertThat(hot.standing(0, 5000).judged())
                .isInstanceOfSatisfying(
                        Judgement.OtherFault.class,
                        other -> assertThat(other.fault()).isEqualTo(Fault.CONDENSER_FOULING));
    }

    @Property(tries = 100)
    void probabilitiesAddUpAndFollowTheDeviation(
            @ForAll @DoubleRange(min = -1, max = 22) double subcoolingF,
            @ForAll @DoubleRange(min = 0, max = 5) double moreF,
            @ForAll @DoubleRange(min = 0, max = 2) double uK) {
        // liquid warmer than its bubble point by more than the expanded uncertainty is refused
        Assume.that(subcoolingF / 1.8 >= -2 * uK);
        Deviation less =
                Case.valve(10, subcoolingF, uK).judged().evidence().deviation().orElseThrow();
        Deviation more = Case.valve(10, subcoolingF + moreF, uK)
                .judged()
                .evidence()
                .deviation()
                .orElseThrow();
        double sum = 0;
        for (ChargeLevel each : ChargeLevel.values()) {
            sum += less.probability(each);
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
        assertThat(more.probability(ChargeLevel.HIGH))
                .isGreaterThanOrEqualTo(less.probability(ChargeLevel.HIGH) - 1e-12);
        assertThat(more.probability(ChargeLevel.LOW)).isLessThanOrEqualTo(less.probability(ChargeLevel.LOW) + 1e-12);
    }

    @Property(tries = 100)
    void superheatFallsWhenSuctionPressureRises(
            @ForAll @DoubleRange(min = 500_000, max = 1_300_000) double low,
            @ForAll @DoubleRange(min = 3500, max = 280_000) double rise) {
        assertThat(superheatK(low + rise)).isLessThan(superheatK(low));
    }

    private static double superheatK(double suctionPa) {
        return Margins.of(
                        Case.R410A,
                        SystemReadings.builder()
                                .suction(
                                        Reading.exact(Pressure.ofPascals(suctionPa)),
                                        Reading.exact(Temperature.ofCelsius(24)))
                                .build())
                .superheat()
                .orElseThrow()
                .value()
                .kelvins();
    }
}
