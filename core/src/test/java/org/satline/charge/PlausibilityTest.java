package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Readings that no running system shows are refused with the fields that contradict each other. Heat flows from warm
 * to cold, and pressure
 * falls along the flow; the room beside the doubt of the readings, 2 K for contact of clamps and drop of pressure, is
 * common practice, no
 * source.
 */
class PlausibilityTest {
    private static void refused(Case it, String... fields) {
        assertThatExceptionOfType(ImplausibleReadingException.class)
                .isThrownBy(it::judged)
                .satisfies(refusal -> assertThat(refusal.fields()).containsExactly(fields));
    }

    private static double dewF() {
        return Case.R410A.dewTemperature(Case.SUCTION).fahrenheit();
    }

    private static double bubbleF() {
        return Case.R410A.bubbleTemperature(Case.LIQUID).fahrenheit();
    }

    @Test
    void swappedGauges() {
        refused(
                Case.valve(10, 10, 0)
                        .put(Place.SUCTION_PRESSURE, Reading.exact(Case.LIQUID))
                        .put(Place.LIQUID_PRESSURE, Reading.exact(Case.SUCTION)),
                "readings.suctionPressure",
                "readings.liquidPressure");
        // also where the curve ends: swapped gauges come before the range of the curve
        refused(
                Case.valve(10, 10, 0).put(Place.SUCTION_PRESSURE, Reading.exact(Pressure.ofMegapascals(9))),
                "readings.suctionPressure",
                "readings.liquidPressure");
    }

    @Test
    void aWetBulbAboveTheDryBulb() {
        refused(
                Case.valve(10, 10, 0.1).degF(Place.RETURN_WET_BULB, 78),
                "readings.returnWetBulb",
                "readings.returnDryBulb");
        assertThat(Case.valve(10, 10, 0.1).degF(Place.RETURN_WET_BULB, 76).judged())
                .isInstanceOf(Judgement.Decided.class);
    }

    /** 2 K + 3 u = 3.6 degF with exact readings. */
    @ParameterizedTest
    @CsvSource({"3.5, false", "3.7, true"})
    void coilsOnTheWrongSideOfTheirAir(double beyondF, boolean refused) {
        double condensing = Case.R410A.dewTemperature(Case.LIQUID).fahrenheit();
        Case cold = Case.valve(10, 0, 0)
                .without(Place.LIQUID_LINE, Place.SUCTION_LINE)
                .degF(Place.OUTDOOR_AIR, condensing + beyondF);
        double evaporating = Case.R410A.bubbleTemperature(Case.SUCTION).fahrenheit();
        Case warm = Case.valve(10, 10, 0)
                .without(Place.SUCTION_LINE, Place.RETURN_WET_BULB)
                .degF(Place.RETURN_DRY_BULB, evaporating - beyondF)
                .target(Optional.empty());
        Case untold = cold.target(Optional.empty());
        if (refused) {
            refused(untold, "readings.liquidPressure", "readings.outdoorAir");
            refused(warm, "readings.suctionPressure", "readings.returnDryBulb");
        } else {
            assertThat(untold.judged()).isInstanceOf(Judgement.Undecided.class);
            assertThat(warm.judged()).isInstanceOf(Judgement.Undecided.class);
        }
    }

    @Test
    void aLiquidLineColderThanItsAir() {
        refused(Case.valve(10, 10, 0).degF(Place.LIQUID_LINE, 85 - 3.7), "readings.liquidLine", "readings.outdoorAir");
        assertThat(Case.valve(10, 10, 0).degF(Place.LIQUID_LINE, 85 - 3.5).judged())
                .isNotInstanceOf(Judgement.Undecided.class);
    }

    @Test
    void aLiquidLineColderThanTheEvaporator() {
        double evaporating = Case.R410A.bubbleTemperature(Case.SUCTION).fahrenheit();
        refused(
                Case.valve(10, 10, 0).without(Place.OUTDOOR_AIR).degF(Place.LIQUID_LINE, evaporating - 3.7),
                "readings.liquidLine",
                "readings.suctionPressure");
    }

    @Test
    void hotGasColderThanItCondenses() {
        refused(
                Case.valve(10, 10, 0).degF(Place.DISCHARGE_LINE, bubbleF() - 3.7),
                "readings.dischargeLine",
                "readings.liquidPressure");
    }

    @Test
    void aSuctionLineWarmerThanBothAirs() {
        Case it = Case.valve(10, 10, 0);
        refused(it.degF(Place.SUCTION_LINE, 85 + 3.7), "readings.suctionLine", "readings.returnDryBulb");
        assertThat(it.degF(Place.SUCTION_LINE, 85 + 3.5).judged()).isNotInstanceOf(Judgement.Decided.class);
        // with one of the airs unread the other may be the warmer one
        assertThat(it.degF(Place.SUCTION_LINE, 85 + 3.7)
                        .without(Place.OUTDOOR_AIR)
                        .judged())
                .isNotNull();
    }

    @Test
    void aTargetBeyondWhatTheCondenserCanDo() {
        double most = bubbleF() - 85;
        refused(target(most + 3.7), "system.targetSubcooling", "readings.liquidPressure", "readings.outdoorAir");
        assertThat(target(most + 3.5).judged()).isNotNull();
        refused(
                Case.orifice(10, 10, 0)
                        .target(Optional.of(TemperatureDifference.ofFahrenheitDegrees(76 - dewF() + 3.7))),
                "system.targetSuperheat",
                "readings.suctionPressure",
                "readings.returnDryBulb");
    }

    private static Case target(double fahrenheitDegrees) {
        return Case.valve(10, 10, 0).target(Optional.of(TemperatureDifference.ofFahrenheitDegrees(fahrenheitDegrees)));
    }

    @Test
    void aSuctionLineColderThanItsDewPoint() {
        refused(Case.valve(-3.7, 10, 0), "readings.suctionLine", "readings.suctionPressure");
        assertThat(Case.valve(-3.5, 10, 0).judged()).isInstanceOf(Judgement.Undecided.class);
        refused(Case.valve(10, -30, 0), "readings.liquidLine", "readings.liquidPressure");
    }

    /** Expanded uncertainty of the thermometer 0.6 K; 0.1 K for the curve and, with a blend, its glide come on top. */
    @Test
    void liquidWarmerThanItsBubblePointIsRefusedAndAMixtureAtThePortIsLow() {
        SaturationCurve r32 = SaturationCurves.solving(Catalogue.standard().find("R-32"));
        assertThat(withSubcooling(r32, 0)).isEqualTo(ChargeLevel.LOW);
        assertThat(withSubcooling(r32, -0.65)).isEqualTo(ChargeLevel.LOW);
        for (double subcooling : new double[] {-0.75, -1.84}) {
            assertThatThrownBy(() -> withSubcooling(r32, subcooling))
                    .isInstanceOfSatisfying(
                            ImplausibleReadingException.class,
                            refusal -> assertThat(refusal.fields())
                                    .containsExactly("readings.liquidLine", "readings.liquidPressure"));
        }
        SaturationCurve r407c = SaturationCurves.solving(Catalogue.standard().find("R-407C"));
        double glide =
                r407c.glide(Pressure.ofPascals(r407c.bubblePressurePa(315))).kelvins();
        assertThat(withSubcooling(r407c, -glide)).isEqualTo(ChargeLevel.LOW);
        assertThatThrownBy(() -> withSubcooling(r407c, -glide - 0.75)).isInstanceOf(ImplausibleReadingException.class);
    }

    private static ChargeLevel withSubcooling(SaturationCurve curve, double kelvins) {
        Judgement judgement = ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve,
                        SystemReadings.builder()
                                .liquid(
                                        Reading.exact(Pressure.ofPascals(curve.bubblePressurePa(315))),
                                        Reading.of(Temperature.ofKelvins(315 - kelvins), 0.3, "clamp"))
                                .put(Place.RETURN_DRY_BULB, Reading.exact(Temperature.ofCelsius(25)))
                                .build(),
                        ChargeQuestion.of(
                                MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5))),
                        OperatingConditions.unknown()));
        return ((Judgement.Decided) judgement).level();
    }

    /** The margin counts from the coil, the plausibility of a gauge from the gauge. */
    @Test
    void aDropMovesTheMarginOnly() {
        Case it = Case.valve(10, 10, 0).put(Place.SUCTION_DROP, Reading.exact(PressureDifference.ofKilopascals(15)));
        double less = Case.valve(10, 10, 0)
                .judged()
                .evidence()
                .margins()
                .superheat()
                .orElseThrow()
                .value()
                .kelvins();
        assertThat(it.judged()
                        .evidence()
                        .margins()
                        .superheat()
                        .orElseThrow()
                        .value()
                        .kelvins())
                .isLessThan(less);
    }
}
