package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.filling.Samples.curve;
import static org.satline.filling.Samples.european;
import static org.satline.filling.Samples.question;
import static org.satline.filling.Samples.recovery;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Volume;

class StampCheckTest {
    private static List<FindingCode> reasons(FillQuestion question) {
        return StampCheck.of(question).stream()
                .filter(each -> each.severity() != Severity.CAUTION)
                .map(Finding::code)
                .toList();
    }

    @Test
    void aWholeSetOfStampsGivesNoReason() {
        assertThat(reasons(question(recovery(), "R-410A"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "DOT-4BA400, 4BA, 400",
        "4bw 260, 4BW, 260",
        "DOT-3AA2015, 3AA, 2015",
        "ICC-4BA300, 4BA, 300",
        "DOT-3AL1800, 3AL, 1800",
        "4B240ET, 4B, 240",
        "DOT-39, 39, ",
        "UN, '', ",
    })
    void readsMarks(String mark, String type, Double psig) {
        CylinderSpecification specification = CylinderSpecification.parse(mark);
        assertThat(specification.type()).isEqualTo(type);
        assertThat(specification
                        .markedPressure()
                        .map(p -> (double) Math.round(p.psig()))
                        .orElse(null))
                .isEqualTo(psig);
    }

    @Test
    void aPortableTankIsRecognised() {
        assertThat(CylinderSpecification.parse("UN portable tank T50").isPortableTank())
                .isTrue();
        assertThatThrownBy(() -> CylinderSpecification.parse(" ")).hasMessageContaining("blank");
    }

    @Test
    void aMarkIsShortAndHoldsNothingHidden() {
        assertThatThrownBy(() -> CylinderSpecification.parse("DOT-4BA400" + " ".repeat(100)))
                .isInstanceOf(IllegalArgumentException.class);
        // erases the line of a terminal; turns the direction of text; begins a new row
        for (String hidden : List.of("\u001b[2K", "\u009b2K", "\u202e", "\n", "\u2028", "\udb40\udc41")) {
            assertThatThrownBy(() -> CylinderSpecification.parse("DOT-4BA400" + hidden))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageNotContaining(hidden);
        }
    }

    /** Common practice, no source: from cartridges to the largest portable tanks. */
    @Test
    void waterCapacityIsBoundedOnBothSides() {
        Mass tare = Mass.ofKilograms(0.05);
        for (double inside : new double[] {0.1, 30_000}) {
            assertThat(CylinderStamps.of(tare, Mass.ofKilograms(inside))
                            .waterCapacity()
                            .kilograms())
                    .isEqualTo(inside);
        }
        for (double outside : new double[] {Double.MIN_VALUE, 0.0999, 30_001}) {
            assertThatThrownBy(() -> CylinderStamps.of(tare, Mass.ofKilograms(outside)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("[0.1, 30000] kg");
        }
        assertThatThrownBy(() -> CylinderStamps.of(tare, Volume.ofLitres(0.09)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** ADR 2025, 4.2.5.2.6: T50 is an instruction for portable tanks; letters beside it make it something else. */
    @ParameterizedTest
    @CsvSource({
        "T50, true",
        "UN-T50, true",
        "portable  tank, true",
        "T50/UN, true",
        "LOT50, false",
        "T500, false",
        "KT50A, false",
        "DOT-4BT50, false",
        "DOT-4BA400 T50, false",
        "4BW 260 T50, false",
        "EN 13322 T50, false",
        "DOT-SP 12345 portable tank, false",
        "\u042250, false",
        "importable tank, false",
        "portable tanks, false"
    })
    void onlyAWordOfItsOwnMakesAPortableTank(String mark, boolean tank) {
        assertThat(CylinderSpecification.parse(mark).isPortableTank()).isEqualTo(tank);
    }

    /** 49 CFR 178.65(i). A statement never makes a cylinder refillable that is marked non-refillable. */
    @ParameterizedTest
    @ValueSource(strings = {"DOT-39", "DOT39", "DOT-39 NRC 228/286", "TC-39M", "Non-refillable"})
    void aNonRefillableMarkIsBelievedAgainstWhatIsStated(String mark) {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse(mark));
        assertThat(stamps.refillable()).contains(false);
        assertThat(reasons(question(stamps, "R-410A"))).containsExactly(FillingCode.NOT_REFILLABLE);
        CylinderStamps stated = stamps.with(Stamp.REFILLABLE, true);
        assertThat(stated.refillable()).contains(false);
        assertThat(reasons(question(stated, "R-410A")))
                .containsExactly(FillingCode.REFILLABLE_AGAINST_MARK, FillingCode.NOT_REFILLABLE);
        assertThat(stated).isNotEqualTo(stamps.with(Stamp.REFILLABLE, false));
    }

    @Test
    void missingTareOrWaterCapacityIsAnError() {
        Map<Stamp, Object> tareAlone = Map.of(Stamp.TARE, Mass.ofPounds(26));
        assertThatThrownBy(() -> new CylinderStamps(tareAlone))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("waterCapacity is missing");
        assertThatThrownBy(() -> CylinderStamps.of(Mass.ZERO, Mass.ofPounds(26)))
                .hasMessageContaining("tare");
    }

    /** 999.0 kg/m3 of water at 60 degF: 11.9 L are 11.888 kg. */
    @Test
    void aWaterCapacityMayBeAVolume() {
        CylinderStamps stamps = CylinderStamps.of(Mass.ofKilograms(6), Volume.ofLitres(11.9));
        assertThat(stamps.waterCapacity().kilograms()).isCloseTo(11.888, within(5e-4)); // half of the last digit
        assertThat(stamps.volume().litres()).isCloseTo(11.9, within(1e-9)); // round-off
        Volume litres = Volume.ofLitres(11.9);
        assertThatThrownBy(() -> stamps.with(Stamp.TARE, litres)).hasMessageContaining("tare");
    }

    /** Marks of the trade: 49 CFR 178.35(f) and 178.36 to 178.68, CSA B339 (bar), ADR 6.2.4.1, EN ISO 11118; from memory. */
    @ParameterizedTest
    @CsvSource({
        "DOT39NRC, NON_REFILLABLE, ",
        "DOT-39 NRC, NON_REFILLABLE, ",
        "39NRC, NON_REFILLABLE, ",
        "DOT39NRC260/325, NON_REFILLABLE, 260",
        "DOT-39 NRC 400/500 M1234, NON_REFILLABLE, 400",
        "39, NON_REFILLABLE, ",
        "tc-39m, NON_REFILLABLE, ",
        "DOT-39/TC-39M, NON_REFILLABLE, ",
        "ISO 11118, NON_REFILLABLE, ",
        "dot 4ba 400, REFILLABLE, 400",
        "'DOT - 4BA400 ', REFILLABLE, 400",
        "DOT-4BW400/TC-4BWM28, REFILLABLE, 400",
        "TC-4BAM28, REFILLABLE, 406",
        "TC-3AAM124, REFILLABLE, 1798",
        "UN ISO 4706, REFILLABLE, ",
        "EN 13322-1, REFILLABLE, ",
        "EN 14208, REFILLABLE, ",
        "UN, UNKNOWN, ",
        "ADR, UNKNOWN, ",
        "DOT-SP 12345, UNKNOWN, ",
        "4L200, NOT_FOR_REFRIGERANT, ",
        "DOT-4L, NOT_FOR_REFRIGERANT, ",
        "8AL, NOT_FOR_REFRIGERANT, ",
        "DOT-8, NOT_FOR_REFRIGERANT, ",
        "DOT-4D300, NOT_FOR_REFRIGERANT, ",
        "4DA500, NOT_FOR_REFRIGERANT, ",
        "3HT1850, NOT_FOR_REFRIGERANT, ",
    })
    void aMarkSaysWhatItIsFor(String mark, CylinderSpecification.Kind kind, Integer psig) {
        CylinderSpecification specification = CylinderSpecification.parse(mark);
        assertThat(specification.kind()).isEqualTo(kind);
        assertThat(specification
                        .markedPressure()
                        .map(p -> (int) Math.round(p.psig()))
                        .orElse(null))
                .isEqualTo(psig);
    }

    /** 49 CFR 178.51 and 178.61: service pressure of 4BA and 4BW at least 225 and not over 500 psig; 178.50: 4B 150 to 500; 178.37. */
    @ParameterizedTest
    @CsvSource({
        "DOT-4BA500, false",
        "DOT-4BA600, true",
        "DOT-4BA2400, true",
        "DOT-4BW260, false",
        "DOT-4BW1800, true",
        "DOT-4B600, true",
        "TC-4BAM34, false",
        "TC-4BAM40, true",
        "DOT-3AA1800, false",
        "DOT-3AA100, true"
    })
    void aMarkThatNoSpecificationKnowsIsImpossible(String mark, boolean impossible) {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse(mark));
        assertThat(reasons(question(stamps, "R-134a")).contains(FillingCode.MARK_IMPOSSIBLE))
                .isEqualTo(impossible);
    }

    @Test
    void aVesselForSomethingElseTakesNoRefrigerant() {
        CylinderStamps stamps = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("8AL"));
        assertThat(reasons(question(stamps, "R-22"))).containsExactly(FillingCode.NOT_FOR_REFRIGERANT);
    }

    @Test
    void whatIsStatedOfRefillingMustFitTheMark() {
        assertThat(reasons(question(recovery().with(Stamp.REFILLABLE, false), "R-22")))
                .containsExactly(FillingCode.REFILLABLE_AGAINST_MARK);
        CylinderStamps exempt = recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-SP 12345"));
        assertThat(reasons(question(exempt, "R-22"))).containsExactly(CommonCode.NOT_GIVEN);
        assertThat(reasons(question(exempt.with(Stamp.REFILLABLE, true), "R-22")))
                .isEmpty();
    }

    /** 49 CFR 178.65(i): a specification 39 cylinder is not refilled. */
    @Test
    void aNonRefillableCylinderReceivesNothing() {
        assertThat(reasons(question(
                        recovery().with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-39")), "R-410A")))
                .containsExactly(FillingCode.NOT_REFILLABLE);
    }

    @Test
    void theRetestDayItselfIsStillGood() {
        CylinderStamps stamps = recovery().with(Stamp.RETEST_DUE, Samples.TODAY);
        assertThat(reasons(question(stamps, "R-410A"))).isEmpty();
        assertThat(reasons(question(stamps, "R-410A").on(Samples.TODAY.plusDays(1))))
                .containsExactly(FillingCode.RETEST_PAST);
        assertThat(reasons(FillQuestion.of(stamps, curve("R-410A")))).containsExactly(CommonCode.NOT_GIVEN);
    }

    @ParameterizedTest
    @CsvSource({"R-454B", "R-152a", "R-290", "R-717"})
    void aFlammableRefrigerantNeedsTheMark(String designation) {
        assertThat(reasons(question(recovery(), designation))).containsExactly(FillingCode.FLAMMABLE);
        assertThat(reasons(question(recovery().with(Stamp.FLAMMABLE_MARK, true), designation)))
                .isEmpty();
    }

    @Test
    void oneRefrigerantInACylinder() {
        assertThat(reasons(
                        question(recovery(), "R-410A").holding(curve("R-134a").refrigerant(), Provenance.RECOVERED)))
                .containsExactly(FillingCode.MIXING);
        assertThat(reasons(
                        question(recovery(), "R-410A").holding(curve("R-410A").refrigerant(), Provenance.RECOVERED)))
                .isEmpty();
    }

    @Test
    void anUnknownRefrigerantIsRefusedUnlessCandidatesBoundIt() {
        CylinderStamps stamps = recovery();
        assertThat(reasons(FillQuestion.of(stamps).on(Samples.TODAY))).containsExactly(FillingCode.CONTENTS_UNKNOWN);
        assertThat(reasons(
                        FillQuestion.of(stamps, curve("R-22"), curve("R-407C")).on(Samples.TODAY)))
                .isEmpty();
    }

    /** Sizes of the trade: common practice, no source. The same figures with one of them in the wrong unit are found out. */
    @ParameterizedTest
    @CsvSource({"47.6, 26", "123, 60", "1000, 380", "1600, 700"})
    void poundsAndKilogramsMixedUpAreFoundOut(double waterCapacity, double tare) {
        CylinderStamps right = recovery()
                .with(Stamp.WATER_CAPACITY, Mass.ofPounds(waterCapacity))
                .with(Stamp.TARE, Mass.ofPounds(tare));
        assertThat(reasons(question(right, "R-410A"))).isEmpty();
        CylinderStamps light = recovery()
                .with(Stamp.WATER_CAPACITY, Mass.ofKilograms(waterCapacity))
                .with(Stamp.TARE, Mass.ofPounds(tare));
        assertThat(reasons(question(light, "R-410A"))).containsExactly(FillingCode.TARE_MISFITS_CAPACITY);
    }

    @Test
    void contradictoryPressuresAreFoundOut() {
        CylinderStamps stamps = recovery().with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(260));
        assertThat(reasons(question(stamps, "R-410A"))).containsExactly(FillingCode.SERVICE_PRESSURE_MISFITS_MARK);
        stamps = european(18).with(Stamp.SERVICE_PRESSURE, GaugePressure.ofBars(24));
        assertThat(reasons(question(stamps, "R-134a"))).containsExactly(FillingCode.TEST_BELOW_SERVICE);
    }

    @Test
    void aCalculationTakesWhatStampsThereAre() {
        CylinderStamps bare = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6));
        FillQuestion question = FillQuestion.of(bare, curve("R-454B"));
        assertThat(reasons(question)).containsExactly(CommonCode.NOT_GIVEN, CommonCode.NOT_GIVEN, CommonCode.NOT_GIVEN);
        assertThat(reasons(question.calculating())).isEmpty();
        // but a date given on both sides is still held together
        CylinderStamps dated = recovery().with(Stamp.RETEST_DUE, LocalDate.of(2029, 1, 1));
        assertThat(reasons(question(dated, "R-410A").calculating())).containsExactly(FillingCode.RETEST_PAST);
    }
}
