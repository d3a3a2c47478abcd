package org.satline.program.verdicts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.ChargeJudge;
import org.satline.program.verdicts.VerdictQuery.Cell;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/**
 * Hand-worked verdicts. Tolerances: California Energy Code, Reference Appendix RA3.2 (2008), installer: 5 degF of superheat, 3 degF of
 * subcooling. Decision: JCGM 106:2012 with risks of 5 %, so that a level needs the deviation 1.645 u away from the edge of the band.
 */
class BulkVerdictsTest {
    private static final Map<String, SaturationCurve> CURVES = new ConcurrentHashMap<>();
    private static final BulkVerdicts BULK = new BulkVerdicts(BulkVerdictsTest::curve, ChargeJudge.usual());

    private static SaturationCurve curve(String designation) {
        return CURVES.computeIfAbsent(
                designation, d -> SaturationCurves.solving(Catalogue.standard().find(d)));
    }

    /** R-410A at about 118 and 365 psig; line temperatures so far from saturation as the margins say, in degF. */
    private static VerdictQuery row(String metering, double superheatF, double subcoolingF, double uK) {
        return row(metering, superheatF, subcoolingF, uK, Optional.empty(), OptionalDouble.empty());
    }

    private static VerdictQuery row(
            String metering,
            double superheatF,
            double subcoolingF,
            double uK,
            Optional<Boolean> outdoorMinimumMet,
            OptionalDouble supplyF) {
        double suctionPa = 915_000;
        double liquidPa = 2_618_000;
        SaturationCurve curve = curve("R-410A");
        boolean orifice = metering.equals("fixed-orifice");
        VerdictQuery.Builder query = VerdictQuery.of("a", "R-410A", metering)
                .with(Cell.SUCTION_PRESSURE, suctionPa)
                .with(Cell.SUCTION_LINE, curve.dewTemperatureK(suctionPa) + superheatF / 1.8)
                .with(Cell.LIQUID_PRESSURE, liquidPa)
                .with(Cell.LIQUID_LINE, curve.bubbleTemperatureK(liquidPa) - subcoolingF / 1.8)
                .with(Cell.RETURN_WET_BULB, Temperature.ofFahrenheit(64).kelvins())
                .with(Cell.CONDENSER_AIR, Temperature.ofFahrenheit(85).kelvins())
                .with(Cell.PRESSURE_UNCERTAINTY, 0)
                .with(Cell.TEMPERATURE_UNCERTAINTY, uK)
                .with(Cell.RETURN_DRY_BULB, Temperature.ofFahrenheit(76).kelvins());
        if (!orifice) {
            query.with(Cell.TARGET_SUBCOOLING, 10 / 1.8);
        }
        supplyF.ifPresent(f ->
                query.with(Cell.SUPPLY_DRY_BULB, Temperature.ofFahrenheit(f).kelvins()));
        outdoorMinimumMet.ifPresent(query::outdoorMinimumMet);
        return query.build();
    }

    /** With u = 0.3 K = 0.54 degF the guard band is 0.89 degF: on target to 2.1 degF, low or high from 3.9 degF. */
    @ParameterizedTest
    @CsvSource({
        "10, 10, on-target",
        "10, 12, on-target",
        "10, 12.5, on-target",
        "10, 13.8, high",
        "10, 14, high",
        "10, 6, low",
        "10, 6.5, low",
        "10, 8, on-target",
        "35, 14.5, not-charge",
        "35, 2, low",
        "0.5, 14, undecided",
    })
    void subcoolingDecidesWithAValve(double superheatF, double subcoolingF, String level) {
        assertThat(BULK.answer(row("expansion-valve", superheatF, subcoolingF, 0.3))
                        .level())
                .isEqualTo(level);
    }

    /** Undecided 0.2 degF beyond the band, and so much better a thermometer; the share in the note is rounded down. */
    @Test
    void theInstrumentNamedDecidesWhenItIsUsed() {
        double uK = 0.7;
        VerdictAnswer now = BULK.answer(row("expansion-valve", 10, 13.2, uK));
        assertThat(now.level()).as(now.note()).isEqualTo("undecided");
        Matcher printed =
                Pattern.compile("at most ([0-9.]+) times today's error").matcher(now.note());
        assertThat(printed.find()).as(now.note()).isTrue();
        double share = Double.parseDouble(printed.group(1));
        assertThat(share).isLessThan(1);
        VerdictAnswer then = BULK.answer(row("expansion-valve", 10, 13.2, uK * share));
        assertThat(then.level()).as(then.note()).isEqualTo("high");
    }

    /** Chart: 64 degF wet bulb and 85 degF condenser air give 11 degF; the slopes of the chart there are 1.75 and -0.6. */
    @ParameterizedTest
    @CsvSource({
        "11, 11, on-target",
        "14, 11, on-target",
        "8, 11, on-target",
        "19, 3, low",
        "3, 16, high",
        "22, 25, not-charge",
        "15.9, 9, on-target",
        "16.1, 9, undecided",
        "4, 0.2, not-charge",
    })
    void superheatDecidesWithAnOrifice(double superheatF, double subcoolingF, String level) {
        VerdictAnswer answer = BULK.answer(row("fixed-orifice", superheatF, subcoolingF, 0.3));
        assertThat(answer.level()).as(answer.note()).isEqualTo(level);
        assertThat(answer.judgedBy()).isEqualTo("superheat");
        assertThat(answer.targetK().getAsDouble()).isCloseTo(11 / 1.8, within(1e-9));
        double u = 0.3 * Math.sqrt(1 + 1.75 * 1.75 + 0.6 * 0.6);
        assertThat(answer.standardUncertaintyK().getAsDouble()).isCloseTo(u, within(1e-6));
    }

    @Test
    void aClosedGateGivesNoChargeAdvice() {
        assertThat(BULK.answer(row("expansion-valve", 10, 2, 0.3, Optional.of(false), OptionalDouble.empty()))
                        .level())
                .isEqualTo("undecided");
        // target split at 76 degF dry bulb and 64 degF wet bulb: 18.5 degF; 20.2 in air of 85 degF outdoors; supply at
        // 52 degF gives 24, above 20.2 + 3
        VerdictAnswer lowAirflow =
                BULK.answer(row("expansion-valve", 10, 2, 0.3, Optional.empty(), OptionalDouble.of(52)));
        assertThat(lowAirflow.level()).isEqualTo("not-charge");
        assertThat(lowAirflow.note()).contains("the airflow is low");
        assertThat(BULK.answer(row("expansion-valve", 10, 2, 0.3, Optional.empty(), OptionalDouble.of(58)))
                        .level())
                .isEqualTo("low");
    }

    /** Subcooling alone never condemns another part: condensing temperature 9 K over ambient speaks against a fouled condenser. */
    @Test
    void aFaultWithoutAReadingOfItsOwnDoesNotReplaceTheCharge() {
        VerdictAnswer answer = BULK.answer(VerdictQuery.of("b", "R-407C", "expansion-valve")
                .with(Cell.SUCTION_PRESSURE, 550_000)
                .with(Cell.SUCTION_LINE, 287)
                .with(Cell.LIQUID_PRESSURE, 1_800_000)
                .with(Cell.LIQUID_LINE, 314)
                .with(Cell.RETURN_WET_BULB, 291)
                .with(Cell.CONDENSER_AIR, 305)
                .with(Cell.TARGET_SUBCOOLING, 5.6)
                .with(Cell.PRESSURE_UNCERTAINTY, 7000)
                .with(Cell.TEMPERATURE_UNCERTAINTY, 0.5)
                .with(Cell.RETURN_DRY_BULB, 298)
                .with(Cell.SUPPLY_DRY_BULB, 287)
                .build());
        assertThat(answer.level()).as(answer.note()).isEqualTo("low");
    }

    @Test
    void impossibleRowsAreRefusedWithANote() {
        assertThat(BULK.answer(row("expansion-valve", -30, 10, 0.3)).level()).isEqualTo("refused");
        assertThat(BULK.answer(row("capillary", 10, 10, 0.3)).note()).contains("capillary");
        assertThat(BULK.answer(row("expansion-valve", 10, 10, Double.NaN)).level())
                .isEqualTo("refused");
        VerdictAnswer cold = BULK.answer(row("expansion-valve", 10, 120, 0.3));
        assertThat(cold.level()).isIn("refused", "undecided", "not-charge", "high");
    }

    /**
     * Up to 27 degF in all: beyond some 28 degF the liquid line would be colder than the condenser air of these rows, and the row is
     * refused.
     */
    @Property(tries = 300)
    void probabilitiesAddUpAndFollowTheDeviation(
            @ForAll @DoubleRange(min = -1, max = 22) double subcoolingF,
            @ForAll @DoubleRange(min = 0, max = 5) double moreF,
            @ForAll @DoubleRange(min = 0, max = 2) double uK) {
        // liquid warmer than its bubble point by more than the expanded uncertainty is refused
        Assume.that(subcoolingF / 1.8 >= -2 * uK);
        VerdictAnswer less = BULK.answer(row("expansion-valve", 10, subcoolingF, uK));
        VerdictAnswer more = BULK.answer(row("expansion-valve", 10, subcoolingF + moreF, uK));
        assertThat(less.probabilityLow().getAsDouble()
                        + less.probabilityOnTarget().getAsDouble()
                        + less.probabilityHigh().getAsDouble())
                .isCloseTo(1, within(1e-12));
        assertThat(more.probabilityHigh().getAsDouble())
                .isGreaterThanOrEqualTo(less.probabilityHigh().getAsDouble() - 1e-12);
        assertThat(more.probabilityLow().getAsDouble())
                .isLessThanOrEqualTo(less.probabilityLow().getAsDouble() + 1e-12);
    }
}
