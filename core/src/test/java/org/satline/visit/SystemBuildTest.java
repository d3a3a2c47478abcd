package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.charge.SystemFeature;
import org.satline.charge.margin.MeteringDevice;
import org.satline.duty.LeakCode;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.quantity.Mass;
import org.satline.step.LineCharge.FirstFilling;
import org.satline.visit.file.AVisit;

/**
 * Systems whose readings do not tell the charge as a plain air conditioner's do. The methods: common practice, no source, but for the
 * receiver, which hides 75 to 125 % of the charge of a chiller (Grace, Datta and Tassou, 2005, from memory).
 */
class SystemBuildTest {
    private static AVisit with(String... features) {
        return AVisit.overcharged().with("system.features", List.of(features));
    }

    private static List<FindingCode> codes(VisitReport report) {
        return report.findings().stream().map(Finding::code).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "receiver, READ_AGAIN, CHARGE_BY_SIGHT_GLASS",
        "head-pressure-control, READ_AGAIN, CHARGE_BY_MAKERS_METHOD",
        "several-indoor-units, PREPARE, CHARGE_BY_WEIGHT",
        "transcritical, PREPARE, CHARGE_BY_WEIGHT",
        "chiller, READ_AGAIN, CHARGE_BY_MAKERS_METHOD",
        "low-temperature-room, READ_AGAIN, CHARGE_BY_SIGHT_GLASS",
        "variable-speed-compressor, READ_AGAIN, JUDGED_IN_TEST_MODE"
    })
    void noLevelIsToldWhereNobodyPublishesACriterion(String feature, ActionKind kind, VisitCode code) {
        VisitReport report = with(feature).report();
        assertThat(report.action().kind()).isEqualTo(kind);
        assertThat(report.level()).isEmpty();
        assertThat(report.advice()).isEmpty();
        assertThat(codes(report)).contains(code);
    }

    @ParameterizedTest
    @CsvSource({"suction-accumulator", "electronic-valve", "long-lines", "microchannel-condenser"})
    void aValveWithTheseIsJudgedWithCare(String feature) {
        VisitReport report = with(feature).report();
        assertThat(report.action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        assertThat(codes(report)).contains(VisitCode.JUDGED_WITH_CARE);
    }

    @Test
    void anAccumulatorBehindAnOrificeHidesTheCharge() {
        assertThat(SystemFeature.SUCTION_ACCUMULATOR
                        .judged(MeteringDevice.FIXED_ORIFICE)
                        .method())
                .isEqualTo(SystemFeature.Method.WEIGH_IN);
    }

    @Test
    void theMakersTestModeWithTheMakersTargetLetsItBeJudged() {
        AVisit held = with("variable-speed-compressor").with("system.makersTestMode", true);
        assertThat(held.report().action().kind()).isEqualTo(ActionKind.TAKE_OUT);
        VisitReport untargeted = held.without("system.targetSubcooling").report();
        assertThat(untargeted.action().movesNow()).isFalse();
        assertThat(untargeted.ask()).contains("system.targetSubcooling");
        assertThat(with("variable-speed-compressor").report().ask()).contains("system.makersTestMode");
    }

    @Test
    void heatingTellsNoLevel() {
        assertThat(AVisit.overcharged().with("system.mode", "heating").report().level())
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(SystemFeature.class)
    void everyFeatureHasItsMethodWithItsBasis(SystemFeature feature) {
        for (MeteringDevice metering : MeteringDevice.values()) {
            assertThat(feature.judged(metering).basis()).isNotBlank();
            assertThat(feature.judged(metering).source()).isNotBlank();
        }
    }

    /** 4 to 8 degF in a room below freezing: common practice, no source. */
    @Test
    void theUsualSuperheatOfAnApplicationIsToldAndJudgesNothing() {
        VisitReport report = with("low-temperature-room").report();
        assertThat(codes(report)).contains(VisitCode.USUAL_SUPERHEAT);
        assertThat(SystemFeature.LOW_TEMPERATURE_ROOM
                        .usualSuperheat()
                        .orElseThrow()
                        .low()
                        .kelvins())
                .isCloseTo(4 / 1.8, within(1e-9));
    }

    @Test
    void anUnknownFeatureAndOneNamedTwiceAreRefused() {
        assertThatThrownBy(() -> with("turbine").read())
                .isInstanceOfSatisfying(
                        FieldException.class, e -> assertThat(e.path()).isEqualTo("system.features"));
        assertThatThrownBy(() -> with("receiver", "receiver").read()).isInstanceOf(FieldException.class);
    }

    private static AVisit evacuated() {
        AVisit visit = AVisit.overcharged().withSource().with("system.evacuated", true);
        for (String reading : List.of("suctionPressure", "suctionLine", "liquidPressure", "liquidLine")) {
            visit = visit.without("readings." + reading);
        }
        return visit;
    }

    /** Gross 41.35 lb less the 3.2 kg of the plate (arithmetic). */
    @Test
    void anEvacuatedSystemIsFilledByWeight() {
        VisitReport report = evacuated().report();
        FirstFilling filling = report.firstFilling().orElseThrow();
        assertThat(report.action().kind()).isEqualTo(ActionKind.PREPARE);
        assertThat(report.level()).isEmpty();
        assertThat(codes(report)).contains(VisitCode.FIRST_FILLING);
        assertThat(filling.weighIn().value().kilograms()).isEqualTo(3.2);
        assertThat(filling.scaleAtEnd().kilograms())
                .isCloseTo(Mass.ofPounds(41.35).kilograms() - 3.2, within(1e-9));
        // half a digit of a plate in tenths of a kilogram bounds it from below: 1 % of 3.2 kg over the root of three
        assertThat(filling.weighIn().standardUncertainty()).isGreaterThan(0.018).isLessThan(0.05);
    }

    @Test
    void theLineSetTakesMoreThanThePlate() {
        VisitReport report = evacuated()
                .with("system.lineSet.liquidTube", "3/8")
                .with("system.lineSet.suctionTube", "3/4")
                .with("system.lineSet.covered", "15 ft")
                .with("system.lineSet.actual", "45 ft")
                .report();
        double more = report.firstFilling().orElseThrow().weighIn().value().kilograms() - 3.2;
        // makers print some 0.6 oz for each foot of 3/8 in liquid line with R-410A (common practice, no source)
        assertThat(more).isCloseTo(Mass.ofOunces(0.6 * 30).kilograms(), within(0.25 * 0.51));
    }

    @Test
    void whatIsMissingForTheFillingIsAskedFor() {
        VisitReport report = evacuated().without("system.fullCharge").report();
        assertThat(report.firstFilling()).isEmpty();
        assertThat(report.ask()).contains("system.fullCharge");
        VisitReport none = evacuated().withoutCylinder().report();
        assertThat(none.ask()).contains("cylinder");
        assertThat(none.action().kind()).isEqualTo(ActionKind.PREPARE);
    }

    @Test
    void anEvacuatedSystemShowsNoPressures() {
        assertThatThrownBy(() ->
                        AVisit.overcharged().with("system.evacuated", true).read())
                .isInstanceOf(FieldException.class);
    }

    /** R-410A: GWP 2088 (AR4), so that 5 t of carbon dioxide equivalent are 2.4 kg: Regulation (EU) 2024/573, article 5, from memory. */
    @Test
    void aLeakAsksForItsTestAndWhatTheLawSays() {
        List<FindingCode> small = codes(AVisit.shortOfCharge().report());
        assertThat(small).contains(VisitCode.LEAK_LIKELY, LeakCode.LEAK_TEST, LeakCode.LEAK_CHECK_DUE);
        // 40 CFR 84.106 starts at 15 lb
        assertThat(small).doesNotContain(LeakCode.LEAK_RATE_LIMIT);
        assertThat(codes(AVisit.shortOfCharge()
                        .with("system.fullCharge", "16 lb")
                        .report()))
                .contains(LeakCode.LEAK_RATE_LIMIT);
        assertThat(codes(AVisit.shortOfCharge()
                        .with("system.fullCharge", "2.3 kg")
                        .report()))
                .doesNotContain(LeakCode.LEAK_CHECK_DUE);
    }

    @Test
    void afterOwnRemovalNothingIsSaidOfLeaks() {
        List<FindingCode> codes = new ArrayList<>(codes(AVisit.shortOfCharge()
                .moved("-0.3 kg", List.of(AVisit.earlier("0 kg", "16.1 degF")))
                .report()));
        assertThat(codes).contains(VisitCode.OWN_REMOVAL);
        codes.retainAll(
                List.of(VisitCode.LEAK_LIKELY, LeakCode.LEAK_TEST, LeakCode.LEAK_RATE_LIMIT, LeakCode.LEAK_CHECK_DUE));
        assertThat(codes).isEmpty();
    }
}
