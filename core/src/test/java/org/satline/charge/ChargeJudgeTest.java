package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Levels by the decision of the California Energy Code, Reference Appendix RA3.2 (2008, installer): superheat within 5 degF, subcooling within 3 degF of
 * the target. Saturation temperatures by the R-410A table of a split air conditioner's installation manual: 118.0 psig is 40 degF.
 */
class ChargeJudgeTest {
    private static final SaturationCurve R410A =
            SaturationCurves.solving(Catalogue.standard().find("R-410A"));

    private static Reading<Pressure> psig(double psig) {
        return Reading.of(Pressure.parse(psig + " psig", Atmosphere.standard()), 3000, "gauge");
    }

    private static Reading<Temperature> degF(double fahrenheit) {
        return Reading.of(Temperature.ofFahrenheit(fahrenheit), 0.5, "clamp at " + fahrenheit);
    }

    /** A line temperature so far from saturation at the pressure, so that the edge of the band can be met exactly. */
    private static SystemReadings valve(double superheatF, double subcoolingF) {
        Pressure suction = psig(118).value();
        Pressure liquid = psig(365).value();
        double dewF = R410A.dewTemperature(suction).fahrenheit();
        double bubbleF = R410A.bubbleTemperature(liquid).fahrenheit();
        return SystemReadings.builder()
                .suction(psig(118), degF(dewF + superheatF))
                .liquid(psig(365), degF(bubbleF - subcoolingF))
                .build();
    }

    private static Verdict withValve(double superheatF, double subcoolingF, double targetF) {
        return ChargeJudge.judge(
                R410A,
                valve(superheatF, subcoolingF),
                ChargeQuestion.of(
                        MeteringDevice.EXPANSION_VALVE,
                        Optional.of(TemperatureDifference.ofFahrenheitDegrees(targetF))));
    }

    private static Verdict withOrifice(double superheatF, double subcoolingF, double wetBulbF, double dryBulbF) {
        SystemReadings readings = valve(superheatF, subcoolingF).toBuilder()
                .put(Place.RETURN_WET_BULB, degF(wetBulbF))
                .put(Place.OUTDOOR_AIR, degF(dryBulbF))
                .build();
        return ChargeJudge.judge(R410A, readings, ChargeQuestion.of(MeteringDevice.FIXED_ORIFICE, Optional.empty()));
    }

    private static ChargeLevel level(Verdict verdict) {
        assertThat(verdict).isInstanceOf(Verdict.Judged.class);
        return ((Verdict.Judged) verdict).level();
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
        assertThat(level(withValve(superheat, subcooling, target))).isEqualTo(expected);
    }

    /** Chart: 60 degF wet bulb and 65 degF condenser air give 19 degF. */
    @ParameterizedTest
    @CsvSource({"19, 10, ON_TARGET", "24, 10, ON_TARGET", "14, 10, ON_TARGET", "24.1, 5, LOW", "13.9, 12, HIGH"})
    void superheatDecidesWithAnOrifice(double superheat, double subcooling, ChargeLevel expected) {
        assertThat(level(withOrifice(superheat, subcooling, 60, 65))).isEqualTo(expected);
    }

    @Test
    void contradictingReadingsGiveNoLevel() {
        assertThat(withValve(30, 14, 10)).isInstanceOf(Verdict.CannotTell.class);
        assertThat(withValve(2, 14, 10)).isInstanceOf(Verdict.CannotTell.class);
        assertThat(withOrifice(35, 20, 60, 65)).isInstanceOf(Verdict.CannotTell.class);
        assertThat(withOrifice(5, 0.5, 60, 65)).isInstanceOf(Verdict.CannotTell.class);
    }

    @Test
    void outsideTheChartOrWithoutTargetThereIsNoLevel() {
        assertThat(withOrifice(10, 10, 50, 90)).isInstanceOf(Verdict.CannotTell.class);
        assertThat(withOrifice(10, 10, 80, 90)).isInstanceOf(Verdict.CannotTell.class);
        assertThat(ChargeJudge.judge(
                        R410A, valve(10, 10), ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.empty())))
                .isInstanceOf(Verdict.CannotTell.class);
        assertThat(ChargeJudge.judge(
                        R410A,
                        SystemReadings.builder().build(),
                        ChargeQuestion.of(
                                MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5)))))
                .isInstanceOf(Verdict.CannotTell.class);
    }

    /** Expanded uncertainty of the thermometer 0.6 K; 0.1 K for the curve and, with a blend, its glide come on top. */
    @Test
    void liquidWarmerThanItsBubblePointIsRefusedAndAMixtureAtThePortIsLow() {
        SaturationCurve r32 = SaturationCurves.solving(Catalogue.standard().find("R-32"));
        assertThat(level(withSubcooling(r32, 0))).isEqualTo(ChargeLevel.LOW);
        assertThat(level(withSubcooling(r32, -0.65))).isEqualTo(ChargeLevel.LOW);
        for (double subcooling : new double[] {-0.75, -1.84}) {
            assertThatThrownBy(() -> withSubcooling(r32, subcooling))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("warmer than the bubble point at its pressure")
                    .hasMessageContaining("more than [0.7] K of doubt allow")
                    .hasMessageContaining("hot gas reaches the liquid port");
        }
        SaturationCurve r407c = SaturationCurves.solving(Catalogue.standard().find("R-407C"));
        double glide =
                r407c.glide(Pressure.ofPascals(r407c.bubblePressurePa(315))).kelvins();
        assertThat(level(withSubcooling(r407c, -glide))).isEqualTo(ChargeLevel.LOW);
        assertThatThrownBy(() -> withSubcooling(r407c, -glide - 0.75))
                .hasMessageContaining("warmer than the bubble point");
    }

    private static Verdict withSubcooling(SaturationCurve curve, double kelvins) {
        return ChargeJudge.judge(
                curve,
                SystemReadings.builder()
                        .liquid(
                                Reading.of(Pressure.ofPascals(curve.bubblePressurePa(315)), 0, "gauge"),
                                Reading.of(Temperature.ofKelvins(315 - kelvins), 0.3, "clamp"))
                        .build(),
                ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.of(TemperatureDifference.ofKelvins(5))));
    }

    @Test
    void impossibleReadingsAreRefused() {
        assertThatThrownBy(() -> withValve(-30, 10, 10))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("suction line")
                .hasMessageContaining("colder than the dew point");
        assertThatThrownBy(() -> withValve(10, -30, 10)).hasMessageContaining("warmer than the bubble point");
        assertThatThrownBy(() -> ChargeJudge.judge(
                        R410A,
                        SystemReadings.builder()
                                .suction(psig(365), degF(130))
                                .liquid(psig(118), degF(30))
                                .build(),
                        ChargeQuestion.of(MeteringDevice.EXPANSION_VALVE, Optional.empty())))
                .hasMessageContaining("not below liquid pressure");
    }

    @Property(tries = 100)
    void probabilitiesAddUpAndFollowTheDeviation(
            @ForAll @DoubleRange(min = 4.1, max = 23) double superheat,
            @ForAll @DoubleRange(min = 0, max = 25) double subcooling,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        Deviation less = ((Verdict.Judged) withValve(superheat, subcooling, 10)).deviation();
        Deviation higher = ((Verdict.Judged) withValve(superheat, subcooling + more, 10)).deviation();
        double sum = 0;
        for (ChargeLevel each : ChargeLevel.values()) {
            sum += less.probability(each);
        }
        assertThat(sum).isBetween(1 - 1e-12, 1 + 1e-12);
        assertThat(higher.probability(ChargeLevel.HIGH)).isGreaterThanOrEqualTo(less.probability(ChargeLevel.HIGH));
        assertThat(higher.probability(ChargeLevel.LOW)).isLessThanOrEqualTo(less.probability(ChargeLevel.LOW));
    }

    @Property(tries = 100)
    void superheatFallsWhenSuctionPressureRises(
            @ForAll @DoubleRange(min = 60, max = 180) double low,
            @ForAll @DoubleRange(min = 0.5, max = 40) double rise) {
        double before = Margins.of(
                        R410A,
                        SystemReadings.builder().suction(psig(low), degF(75)).build())
                .superheat()
                .orElseThrow()
                .value()
                .kelvins();
        double after = Margins.of(
                        R410A,
                        SystemReadings.builder()
                                .suction(psig(low + rise), degF(75))
                                .build())
                .superheat()
                .orElseThrow()
                .value()
                .kelvins();
        assertThat(after).isLessThan(before);
    }
}
