package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.satline.cylinder.Samples.curve;
import static org.satline.cylinder.Samples.european;
import static org.satline.cylinder.Samples.known;
import static org.satline.cylinder.Samples.question;
import static org.satline.cylinder.Samples.recovery;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.cylinder.Refusal.Reason;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;

class StampCheckTest {
    private static List<Reason> reasons(FillQuestion question) {
        return StampCheck.refusals(question).stream().map(Refusal::reason).toList();
    }

    @Test
    void aWholeSetOfStampsGivesNoReason() {
        assertThat(reasons(question(recovery().build(), "R-410A"))).isEmpty();
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
        CylinderStamps.Builder stamps = recovery().specification(CylinderSpecification.parse(mark));
        assertThat(stamps.build().refillable()).contains(false);
        assertThat(reasons(question(stamps.build(), "R-410A"))).containsExactly(Reason.NOT_REFILLABLE);
        CylinderStamps stated = stamps.refillable(true).build();
        assertThat(stated.refillable()).contains(false);
        assertThat(reasons(question(stated, "R-410A")))
                .containsExactly(Reason.STAMPS_CONTRADICTORY, Reason.NOT_REFILLABLE);
        assertThat(stated).isNotEqualTo(stamps.refillable(false).build());
    }

    @Test
    void missingTareOrWaterCapacityIsAnError() {
        assertThatThrownBy(
                        () -> CylinderStamps.builder().tare(Mass.ofPounds(26)).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("water capacity (WC) is missing");
    }

    /** 49 CFR 178.65(i): a specification 39 cylinder is not refilled. */
    @Test
    void aNonRefillableCylinderReceivesNothing() {
        assertThat(reasons(question(
                        recovery()
                                .specification(CylinderSpecification.parse("DOT-39"))
                                .build(),
                        "R-410A")))
                .containsExactly(Reason.NOT_REFILLABLE);
    }

    @Test
    void theRetestDayItselfIsStillGood() {
        CylinderStamps stamps = recovery().retestDue(Samples.TODAY).build();
        assertThat(reasons(question(stamps, "R-410A"))).isEmpty();
        assertThat(reasons(question(stamps, "R-410A").on(Samples.TODAY.plusDays(1))))
                .containsExactly(Reason.RETEST_PAST);
        assertThat(reasons(FillQuestion.of(stamps, known("R-410A")))).containsExactly(Reason.STAMP_MISSING);
    }

    @ParameterizedTest
    @CsvSource({"R-454B", "R-152a", "R-290", "R-717"})
    void aFlammableRefrigerantNeedsTheMark(String designation) {
        assertThat(reasons(question(recovery().build(), designation))).containsExactly(Reason.NOT_MARKED_FLAMMABLE);
        assertThat(reasons(question(recovery().flammableMark(true).build(), designation)))
                .isEmpty();
    }

    @Test
    void oneRefrigerantInACylinder() {
        assertThat(reasons(question(recovery().build(), "R-410A")
                        .holding(curve("R-134a").refrigerant())))
                .containsExactly(Reason.MIXED_CONTENTS);
        assertThat(reasons(question(recovery().build(), "R-410A")
                        .holding(curve("R-410A").refrigerant())))
                .isEmpty();
    }

    @Test
    void anUnknownRefrigerantIsRefusedUnlessCandidatesBoundIt() {
        CylinderStamps stamps = recovery().build();
        assertThat(reasons(
                        FillQuestion.of(stamps, new CylinderContents.Unknown()).on(Samples.TODAY)))
                .containsExactly(Reason.CONTENTS_UNKNOWN);
        CylinderContents two = new CylinderContents.OneOf(List.of(curve("R-22"), curve("R-407C")));
        assertThat(reasons(FillQuestion.of(stamps, two).on(Samples.TODAY))).isEmpty();
        assertThatThrownBy(() -> new CylinderContents.OneOf(List.of())).hasMessageContaining("no candidate");
    }

    /** Sizes of the trade: common practice, no source. The same figures with one of them in the wrong unit are found out. */
    @ParameterizedTest
    @CsvSource({"47.6, 26", "123, 60", "1000, 380", "1600, 700"})
    void poundsAndKilogramsMixedUpAreFoundOut(double waterCapacity, double tare) {
        CylinderStamps.Builder right =
                recovery().waterCapacity(Mass.ofPounds(waterCapacity)).tare(Mass.ofPounds(tare));
        assertThat(reasons(question(right.build(), "R-410A"))).isEmpty();
        CylinderStamps.Builder light =
                recovery().waterCapacity(Mass.ofKilograms(waterCapacity)).tare(Mass.ofPounds(tare));
        assertThat(reasons(question(light.build(), "R-410A"))).containsExactly(Reason.STAMPS_CONTRADICTORY);
    }

    @Test
    void contradictoryPressuresAreFoundOut() {
        CylinderStamps.Builder stamps = recovery().servicePressure(GaugePressure.ofPsig(260));
        assertThat(reasons(question(stamps.build(), "R-410A"))).containsExactly(Reason.STAMPS_CONTRADICTORY);
        stamps = european(18).servicePressure(GaugePressure.ofBars(24));
        assertThat(reasons(question(stamps.build(), "R-134a"))).containsExactly(Reason.STAMPS_CONTRADICTORY);
    }

    @Test
    void aCalculationTakesWhatStampsThereAre() {
        CylinderStamps bare = CylinderStamps.builder()
                .tare(Mass.ofPounds(26))
                .waterCapacity(Mass.ofPounds(47.6))
                .build();
        FillQuestion question = FillQuestion.of(bare, known("R-454B"));
        assertThat(reasons(question)).containsExactly(Reason.STAMP_MISSING, Reason.STAMP_MISSING, Reason.STAMP_MISSING);
        assertThat(reasons(question.acceptingPartialStamps())).isEmpty();
        // but a date given on both sides is still held together
        CylinderStamps dated = recovery().retestDue(LocalDate.of(2029, 1, 1)).build();
        assertThat(reasons(question(dated, "R-410A").acceptingPartialStamps())).containsExactly(Reason.RETEST_PAST);
    }
}
