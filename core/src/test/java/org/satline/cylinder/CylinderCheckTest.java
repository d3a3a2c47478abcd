package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.cylinder.Cylinders.receiver;
import static org.satline.cylinder.Cylinders.source;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillingCode;
import org.satline.filling.Provenance;
import org.satline.filling.Stamp;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.OutOfValidityException;

/**
 * What a check of one cylinder finds. Pressures of saturation and densities in the comments: tables of the trade for R-22 (143.7 psig at 80
 * degF; liquid 74 lb/ft3 there, 67 lb/ft3 at 130 degF; vapour 2.9 lb/ft3 at 80 degF; critical at 205 degF), from memory.
 */
class CylinderCheckTest {
    private static List<FindingCode> codes(CheckedCylinder checked, Severity severity) {
        return checked.of(severity).stream().map(Finding::code).toList();
    }

    private static List<FindingCode> dangers(Cylinders cylinders) {
        return codes(cylinders.checked(), Severity.DANGER_NOW);
    }

    private static List<FindingCode> forbidding(Cylinders cylinders) {
        return codes(cylinders.checked(), Severity.FORBIDS);
    }

    private static List<String> asked(Cylinders cylinders) {
        return cylinders.checked().of(Severity.MUST_BE_SUPPLIED).stream()
                .map(each -> each.subject().name())
                .toList();
    }

    /** 0.80 x 30 lb / 62.37 lb/ft3 x 66.6 lb/ft3 = 25.6 lb; 12 lb are inside, so some 13.5 lb may come, less twice the scale's 0.03 lb. */
    @Test
    void theRecoveryCylinderMayBeFilled() {
        CheckedCylinder checked = receiver().checked();
        assertThat(checked.isUsable()).isTrue();
        assertThat(checked.fill()).isInstanceOf(FillAssessment.Allowed.class);
        assertThat(checked.contents().orElseThrow().value().pounds()).isCloseTo(12, within(1e-9)); // round-off
        assertThat(checked.byPressure().orElseThrow().outcome()).isEqualTo(ContentsFinding.Outcome.CONSISTENT);
        assertThat(checked.vessel().orElseThrow().liquid().pounds()).isBetween(10.5, 11.9);
        assertThat(checked.room().orElseThrow()).isInstanceOfSatisfying(Room.Left.class, left -> {
            assertThat(left.room().pounds()).isCloseTo(13.5, within(0.2)); // the table's density, 1 %
            assertThat(left.neverPass().pounds()).isCloseTo(30 + left.room().pounds(), within(1e-9)); // round-off
        });
    }

    /** 26.5 lb against a limit of 25.6; 32.5 lb fill it at about 100 degF (71.2 lb/ft3 x 0.481 ft3 = 34.2); 35.2 lb at 80 degF. */
    @ParameterizedTest
    @CsvSource({"44.5, OVERFILLED", "48.5, OVERFILLED"})
    void tooMuchInsideIsADanger(double gross, CylinderCode code) {
        assertThat(dangers(receiver().weighing(gross))).containsExactly(code);
        assertThat(receiver().weighing(gross).checked().room()).isEmpty();
    }

    @Test
    void withinTheDoubtOfTheScaleItIsFullAndNotOverfilled() {
        CheckedCylinder checked = receiver().checked();
        double limit = ((FillAssessment.Allowed) checked.fill()).limit().pounds();
        Cylinders full = receiver().weighing(18 + limit + 0.02);
        assertThat(dangers(full)).isEmpty();
        assertThat(forbidding(full)).containsExactly(CylinderCode.FULL);
        assertThat(dangers(receiver().weighing(18 + limit + 0.04))).containsExactly(CylinderCode.OVERFILLED);
    }

    /** Liquid of 74 lb/ft3 at 80 degF fills 0.481 ft3 with 35.6 lb; half a pound less fills it within 5 K. */
    @ParameterizedTest
    @ValueSource(doubles = {53.4, 54.5})
    void fullOfLiquidNowOrSoonIsADanger(double gross) {
        assertThat(dangers(receiver().weighing(gross)))
                .containsExactly(CylinderCode.OVERFILLED, CylinderCode.LIQUID_FULL);
        CheckedCylinder brimful = receiver().weighing(56).checked();
        assertThat(brimful.vessel()).isEmpty();
        assertThat(brimful.byPressure()).isEmpty();
        assertThat(codes(brimful, Severity.CAUTION)).contains(CylinderCode.WEIGHT_MISFITS_GAUGE);
    }

    /** A kilogram scale read as pounds, 28.6 kg of gross weight; and a full source: the danger does not ask for the role. */
    @Test
    void aSourceIsNoLessDangerous() {
        assertThat(dangers(source().weighing(Mass.ofKilograms(28.6).pounds())))
                .contains(CylinderCode.OVERFILLED, CylinderCode.LIQUID_FULL);
    }

    /** 49 CFR 173.304a(a)(2): 105 % of R-22, 31.5 lb in 30 lb of water; makers fill 30 lb; 80 % of the volume would be 25.6 lb. */
    @Test
    void whatAMakerFilledByTheLawIsNotOverfilled() {
        assertThat(dangers(source().weighing(36))).isEmpty();
        assertThat(dangers(source().weighing(39))).contains(CylinderCode.OVERFILLED);
    }

    /** 5/4 of 400 psig is 500 psig; R-22 at 170 degF has some 405 psig; R-744 at 70 degF 839 psig, and a 4BA ends at 500 psig. */
    @Test
    void overPressure() {
        assertThat(dangers(receiver().at(170).reading(520))).contains(CylinderCode.OVER_PRESSURE);
        assertThat(dangers(receiver().at(125).reading(400))).doesNotContain(CylinderCode.OVER_PRESSURE);
        Cylinders carbonDioxide = receiver()
                .marked("DOT-4BA1800")
                .holding("R-744")
                .besideSystemOf("R-744")
                .at(70)
                .reading(839);
        assertThat(dangers(carbonDioxide)).contains(CylinderCode.OVER_PRESSURE);
        assertThat(forbidding(carbonDioxide)).contains(FillingCode.MARK_IMPOSSIBLE);
    }

    @Test
    void aboveTheTestPressureIsADangerToo() {
        Cylinders weak = receiver()
                .marked("EN 13322-1")
                .stamped(each -> each.with(Stamp.TEST_PRESSURE, GaugePressure.ofBars(9)))
                .under("adr");
        assertThat(dangers(weak)).contains(CylinderCode.OVER_PRESSURE); // 143.7 psig are 9.9 bar
    }

    /** By temperature alone, without a gauge: R-410A at 130 degF has 476 psig, a cylinder of 240 psig stands for 300. */
    @Test
    void thePressureByTemperatureCountsWithoutAGauge() {
        Cylinders hot = receiver()
                .marked("DOT-4BA240")
                .holding("R-410A")
                .besideSystemOf("R-410A")
                .at(125)
                .withoutGauge();
        assertThat(dangers(hot)).contains(CylinderCode.OVER_PRESSURE);
    }

    /** At 80 degF R-22 has 143.7 psig: 190 is air or another gas, 100 is colder or another gas. */
    @ParameterizedTest
    @ValueSource(doubles = {190, 100})
    void aPressureThatDoesNotFitTheLabel(double psig) {
        assertThat(forbidding(receiver().reading(psig)))
                .containsExactly(CylinderCode.WRONG_CONTENTS, CylinderCode.PRESSURE_MISFITS_LABEL);
        assertThat(forbidding(receiver().reading(psig).stirred())).containsExactly(CylinderCode.NOT_AT_REST);
    }

    /** The contents now decide, however the scale is used: 12 lb of R-410A keep liquid, so 150 psig at 84 degF is not R-410A. */
    @Test
    void aMislabelledCylinderIsRefusedHoweverTheScaleIsUsed() {
        UnaryOperator<Cylinders> mislabelled =
                each -> each.holding("R-410A").besideSystemOf("R-410A").at(84).reading(150);
        assertThat(forbidding(mislabelled.apply(receiver().weighing(30)))).contains(CylinderCode.WRONG_CONTENTS);
        assertThat(forbidding(mislabelled.apply(receiver().zeroed(18, 12)))).contains(CylinderCode.WRONG_CONTENTS);
    }

    /** Vapour of 0.2 lb in 0.481 ft3 has 0.2 / 86.5 lbmol x 10.73 x 540 / 0.481 = 28 psia; the gauge says 158. */
    @Test
    void aWeightThatCannotGiveThePressure() {
        assertThat(forbidding(source().weighing(6.2).withoutGauge())).isEmpty();
        assertThat(source().weighing(6.2)
                        .withoutGauge()
                        .checked()
                        .inside()
                        .orElseThrow()
                        .value()
                        .psia())
                .isCloseTo(28, within(1.5)); // ideal gas
        assertThat(forbidding(source().weighing(6.2)))
                .contains(CylinderCode.WRONG_CONTENTS, CylinderCode.WEIGHT_MISFITS_PRESSURE);
        assertThat(forbidding(source().weighing(6)))
                .contains(CylinderCode.WRONG_CONTENTS, CylinderCode.NOTHING_TO_GIVE);
    }

    /** 1 % of the tare is the usual scatter (common practice, no source): 0.18 lb of 18. */
    @ParameterizedTest
    @ValueSource(doubles = {18, 17.82, 18.06, 18.17})
    void anEvacuatedCylinderOfNearlyItsTareIsEmpty(double gross) {
        CheckedCylinder checked =
                receiver().saidToBeEmpty().readingPsia(0.1).weighing(gross).checked();
        assertThat(checked.isUsable()).isTrue();
        assertThat(checked.holds()).isEmpty();
        assertThat(checked.room()).containsInstanceOf(Room.Left.class);
    }

    @Test
    void whatHangsOnItIsTakenOff() {
        Cylinders hung = receiver().saidToBeEmpty().readingPsia(0.1);
        assertThat(asked(hung.weighing(18.8))).contains("cylinder.holding");
        assertThat(hung.hanging(18.8, 0.8).checked().isUsable()).isTrue();
    }

    @Test
    void farBelowTheTareIsAContradiction() {
        assertThat(forbidding(receiver().weighing(17))).contains(CylinderCode.BELOW_TARE);
        assertThat(forbidding(receiver().zeroed(10, 1.1))).contains(CylinderCode.BELOW_TARE);
        assertThat(receiver().weighing(17).checked().room()).isEmpty();
    }

    @Test
    void anEvacuatedCylinderHoldsNoAir() {
        Cylinders empty = receiver().saidToBeEmpty().weighing(18);
        assertThat(forbidding(empty.readingPsia(14.7)))
                .containsExactly(CylinderCode.WRONG_CONTENTS, CylinderCode.AIR_IN_EMPTY);
        assertThat(asked(empty.withoutGauge())).containsExactly("cylinder.pressure");
    }

    @Test
    void aLabelLeftOutIsAskedFor() {
        assertThat(asked(receiver().saidToBeEmpty())).contains("cylinder.holding");
        assertThat(asked(source().saidToBeEmpty())).contains("cylinder.holding");
    }

    /** New and evacuated, then 4 lb of the system's R-22 since the scale was zeroed: it holds R-22. */
    @Test
    void whatCameInSinceIsTheSystems() {
        CheckedCylinder checked = receiver().saidToBeEmpty().zeroed(18, 4).checked();
        assertThat(checked.isUsable()).isTrue();
        assertThat(checked.holds().orElseThrow().designation()).isEqualTo("R-22");
    }

    @Test
    void refrigerantsDoNotMeet() {
        assertThat(forbidding(receiver().besideSystemOf("R-407C"))).contains(FillingCode.MIXING);
        assertThat(forbidding(source().besideSystemOf("R-407C"))).contains(FillingCode.MIXING);
        assertThat(forbidding(source().from(Provenance.MIXED_RECOVERED))).contains(FillingCode.MIXING);
    }

    @Test
    void itIsNotWarmerThanItsLimitIsMadeFor() {
        assertThat(forbidding(receiver().warmestAt(32))).contains(CylinderCode.WARMER_THAN_WARMEST);
        assertThatThrownBy(() -> receiver().warmestAt(300).cylinder())
                .isInstanceOf(OutOfValidityException.class)
                .hasMessageContaining("cylinder.warmest");
    }

    /** 49 CFR 180.205(c): a receiver past its date is not filled; a source is used up with a caution. */
    @Test
    void theRetestDateBindsTheReceiver() {
        UnaryOperator<CylinderStamps> overdue = each -> each.with(Stamp.RETEST_DUE, Cylinders.TODAY.minusDays(1));
        assertThat(forbidding(receiver().stamped(overdue))).containsExactly(FillingCode.RETEST_PAST);
        assertThat(asked(receiver().stamped(each -> each.without(Stamp.RETEST_DUE))))
                .containsExactly("cylinder.retestDue");
        assertThat(asked(receiver().onNoDay())).containsExactly("date");
        CheckedCylinder old = source().marked("DOT-4BA400").stamped(overdue).checked();
        assertThat(codes(old, Severity.CAUTION)).contains(FillingCode.RETEST_PAST);
        assertThat(codes(source().marked("DOT-4BA400").checked(), Severity.CAUTION))
                .contains(FillingCode.RETEST_NOT_CHECKED);
    }

    @Test
    void withoutAScaleNothingMoves() {
        assertThat(asked(receiver().withoutScale())).containsExactly("cylinder.scaleReading");
        assertThat(asked(source().withoutScale())).containsExactly("cylinder.scaleReading");
    }

    /** Groups A3, A2L and B2L (ASHRAE 34). */
    @ParameterizedTest
    @CsvSource({"R-290, DOT-4BA240", "R-32, DOT-4BA400", "R-717, DOT-3A480"})
    void flammableGasAsksForTheMark(String gas, String mark) {
        Cylinders cylinders =
                receiver().holding(gas).besideSystemOf(gas).marked(mark).withoutGauge();
        assertThat(asked(cylinders)).contains("cylinder.flammableMark");
        assertThat(forbidding(cylinders.stamped(each -> each.with(Stamp.FLAMMABLE_MARK, false))))
                .contains(FillingCode.FLAMMABLE);
    }

    @ParameterizedTest
    @CsvSource({"UN ISO 4706", "ADR", "DOT-SP 12345"})
    void aMarkWithoutPressureAsksForIt(String mark) {
        assertThat(asked(receiver().marked(mark))).contains("cylinder.servicePressure");
    }

    /** P200: R-22 needs a test pressure of 27 bar and may fill 1.03; 80 % of the liquid at 130 degF, 25.6 lb, governs what is recovered. */
    @Test
    void theEuropeanSetStopsRecoveredGasAtTheSamePractice() {
        Cylinders european = receiver()
                .marked("EN 13322-1")
                .stamped(each -> each.with(Stamp.TEST_PRESSURE, GaugePressure.ofBars(48)))
                .under("adr");
        FillAssessment.Allowed allowed =
                (FillAssessment.Allowed) european.checked().fill();
        assertThat(allowed.governing().rule().name()).isEqualTo("liquid-80-warmest");
        assertThat(allowed.limit().pounds()).isCloseTo(25.6, within(0.2)); // the table's density, 1 %
    }

    @Test
    void aSourceOnAZeroedScaleLoses() {
        CheckedCylinder checked = source().zeroed(30, -0.55).checked();
        assertThat(checked.isUsable()).isTrue();
        assertThat(checked.contents().orElseThrow().value().pounds()).isCloseTo(23.45, within(1e-9)); // 30 - 6 - 0.55
        Weighing weighing = checked.cylinder().weighing().orElseThrow();
        assertThat(weighing.showsAfter(MassDifference.ofPounds(-0.5)).pounds())
                .isCloseTo(-1.05, within(1e-9)); // round-off
        assertThat(source().zeroed(30, 0).checked().isUsable()).isTrue();
    }

    /** 30 lb of water are 0.481 ft3; vapour of R-407C at 80 degF has some 3.4 lb/ft3, 1.6 lb. */
    @Test
    void aBlendOfWhichNoLiquidIsLeftIsNotGiven() {
        Cylinders blend = source().holding("R-407C").besideSystemOf("R-407C").withoutGauge();
        assertThat(forbidding(blend.weighing(7))).containsExactly(CylinderCode.NOTHING_TO_GIVE);
        assertThat(forbidding(blend.weighing(20))).isEmpty();
    }

    @Test
    void recoveredGasInADisposableIsLeftAlone() {
        assertThat(forbidding(source().from(Provenance.RECOVERED))).contains(CylinderCode.RECOVERED_IN_NON_REFILLABLE);
    }

    @Test
    void findingsStandInTheOrderOfTheirWeight() {
        CheckedCylinder checked = receiver()
                .weighing(56)
                .besideSystemOf("R-407C")
                .stamped(each -> each.without(Stamp.RETEST_DUE))
                .checked();
        assertThat(checked.findings())
                .isSortedAccordingTo((a, b) -> a.severity().compareTo(b.severity()));
        assertThat(checked.isDangerous()).isTrue();
        assertThat(checked.forbids()).isTrue();
        assertThat(codes(checked, Severity.MUST_BE_SUPPLIED)).contains(CommonCode.NOT_GIVEN);
    }

    @Test
    void anInvertedCylinderGivesLiquidAtItsVapourValve() {
        Cylinder upright = source().cylinder();
        assertThat(upright.reaches()).isEqualTo(Valve.LIQUID);
        assertThat(receiver().cylinder().reaches()).isEqualTo(Valve.VAPOUR);
    }
}
