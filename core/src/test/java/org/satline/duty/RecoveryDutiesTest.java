package org.satline.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.duty.EvacuationLevels.Level;
import org.satline.duty.LeakRate.Rule;
import org.satline.duty.LeakRate.Use;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurves;

/** Evacuation levels, leak rates and leak checks. */
class RecoveryDutiesTest {
    private static final EvacuationLevels LEVELS = EvacuationLevels.standard();
    private static final LocalDate OLD = LocalDate.of(1993, 11, 14);
    private static final LocalDate NEW = LocalDate.of(1993, 11, 15);

    /** 40 CFR 82.156, table 1; 1 inHg = 3.38639 kPa, 25 mm Hg = 3.33 kPa. The 102 mm Hg of vehicles from memory. */
    @ParameterizedTest
    @CsvSource({
        "VERY_HIGH_PRESSURE, 10, 101.3, 101.3",
        "HIGH_PRESSURE, 199, 101.3, 101.3",
        "HIGH_PRESSURE, 200, 87.8, 67.5",
        "MEDIUM_PRESSURE, 199, 87.8, 67.5",
        "MEDIUM_PRESSURE, 200, 87.8, 50.5",
        "LOW_PRESSURE, 10, 3.33, 3.33",
        "MOTOR_VEHICLE, 2, 13.6, 13.6",
    })
    void levelsAreThoseOfTheTable(ApplianceClass appliance, double pounds, String before, String since) {
        assertThat(kilopascals(appliance, pounds, OLD)).isCloseTo(Double.parseDouble(before), within(half(before)));
        assertThat(kilopascals(appliance, pounds, NEW)).isCloseTo(Double.parseDouble(since), within(half(since)));
    }

    /** Half of the last printed digit. */
    private static double half(String printed) {
        return new java.math.BigDecimal(printed).ulp().doubleValue() / 2;
    }

    private static double kilopascals(ApplianceClass appliance, double pounds, LocalDate made) {
        Level level = LEVELS.required(appliance, Mass.ofPounds(pounds), made);
        assertThat(level.steps()).hasSize(1);
        return ((Level.AbsolutePressure) level).highest().kilopascals();
    }

    @Test
    void aLevelIsMetFromBelow() {
        Level.AbsolutePressure level =
                (Level.AbsolutePressure) LEVELS.required(ApplianceClass.MEDIUM_PRESSURE, Mass.ofPounds(10), NEW);
        assertThat(level.isMetBy(Pressure.ofKilopascals(60))).isTrue();
        assertThat(level.isMetBy(Pressure.ofKilopascals(70))).isFalse();
    }

    /** 40 CFR 82.156(b): 80 % with older equipment or a dead compressor, 90 % with newer equipment and a running one. */
    @Test
    void smallAppliancesCountByShare() {
        assertThat(share(ApplianceClass.SMALL_COMPRESSOR_WORKS, NEW)).isEqualTo(90);
        assertThat(share(ApplianceClass.SMALL_COMPRESSOR_WORKS, OLD)).isEqualTo(80);
        assertThat(share(ApplianceClass.SMALL_COMPRESSOR_DEAD, NEW)).isEqualTo(80);
    }

    private static double share(ApplianceClass appliance, LocalDate made) {
        Level.ShareRecovered level = (Level.ShareRecovered) LEVELS.required(appliance, Mass.ofPounds(1), made);
        assertThat(level.alternative().kilopascals()).isCloseTo(87.8, within(0.05)); // 4 inHg vacuum, from memory
        return level.percentOfCharge();
    }

    /** Examples that stand in table 1 of 40 CFR 82.156 beside the classes; limits in psia from memory. */
    @ParameterizedTest
    @CsvSource({
        "R-123, LOW_PRESSURE",
        "R-134a, MEDIUM_PRESSURE",
        "R-22, HIGH_PRESSURE",
        "R-404A, HIGH_PRESSURE",
        "R-407C, HIGH_PRESSURE",
        "R-410A, HIGH_PRESSURE",
        "R-744, VERY_HIGH_PRESSURE",
        "R-23, VERY_HIGH_PRESSURE",
    })
    void pressureClasses(String designation, ApplianceClass expected) {
        assertThat(ApplianceClass.of(SaturationCurves.of(Catalogue.standard().find(designation))))
                .isEqualTo(expected);
    }

    /** By hand: 12 lb into a charge of 100 lb after 180 days: 12 x 365 / 180 = 24.33 % a year. */
    @Test
    void leakRates() {
        LeakRate rate = LeakRate.annualised(Mass.ofPounds(12), Mass.ofPounds(100), 180);
        assertThat(rate.percentPerYear()).isCloseTo(24.33, within(0.005)); // half of the last digit
        assertThat(rate.against(Rule.OZONE_DEPLETING, Use.INDUSTRIAL_PROCESS)
                        .orElseThrow()
                        .exceeded())
                .isFalse();
        assertThat(rate.against(Rule.OZONE_DEPLETING, Use.COMMERCIAL_REFRIGERATION)
                        .orElseThrow()
                        .exceeded())
                .isTrue();
        assertThat(LeakRate.annualised(Mass.ofPounds(12), Mass.ofPounds(100), 800)
                        .percentPerYear())
                .isCloseTo(12, within(1e-9)); // a span above 365 days counts as 365
        LeakRate small = LeakRate.rollingAverage(Mass.ofPounds(4), Mass.ofPounds(20));
        assertThat(small.percentPerYear()).isCloseTo(20, within(1e-9)); // round-off
        assertThat(small.against(Rule.OZONE_DEPLETING, Use.COMFORT_COOLING_AND_OTHER))
                .isEmpty();
        assertThat(small.against(Rule.HFC_AND_SUBSTITUTES, Use.COMFORT_COOLING_AND_OTHER)
                        .orElseThrow()
                        .exceeded())
                .isTrue();
        assertThat(LeakRate.thresholdKeys())
                .doesNotHaveDuplicates()
                .hasSize(Rule.values().length * Use.values().length);
        assertThatThrownBy(() -> LeakRate.rollingAverage(Mass.ofPounds(4), Mass.ofPounds(0)))
                .hasMessageContaining("full charge");
        assertThatThrownBy(() -> LeakRate.annualised(Mass.ofPounds(4), Mass.ofPounds(9), 0))
                .hasMessageContaining("days");
    }

    /** Worked figures, GWP of the fourth assessment report: 2.4 kg R-410A 5.01 t, 10 kg R-134a 14.3 t, 7.4 kg R-32 4.995 t. */
    @ParameterizedTest
    @CsvSource({
        "2.4, 2088, 5.01, 12",
        "10, 1430, 14.3, 12",
        "7.4, 675, 4.995, 0",
        "400, 1430, 572, 3",
        "40, 1430, 57.2, 6"
    })
    void leakChecksByCarbonDioxideEquivalent(double kilograms, double gwp, double tonnes, int months) {
        LeakCheckInterval interval =
                LeakCheckInterval.byCarbonDioxideEquivalent(Mass.ofKilograms(kilograms), gwp, false);
        assertThat(interval.measure()).isCloseTo(tonnes, within(0.005)); // half of the last digit of 5.01
        assertThat(interval.months()).isEqualTo(months == 0 ? Optional.empty() : Optional.of(months));
        LeakCheckInterval watched = LeakCheckInterval.byCarbonDioxideEquivalent(Mass.ofKilograms(kilograms), gwp, true);
        assertThat(watched.months()).isEqualTo(months == 0 ? Optional.empty() : Optional.of(2 * months));
    }

    @Test
    void unsaturatedGasesCountByMass() {
        assertThat(LeakCheckInterval.byMass(Mass.ofKilograms(0.9), false).months())
                .isEmpty();
        assertThat(LeakCheckInterval.byMass(Mass.ofKilograms(1), false).months())
                .contains(12);
        assertThat(LeakCheckInterval.byMass(Mass.ofKilograms(100), true).months())
                .contains(6);
        assertThatThrownBy(() -> LeakCheckInterval.byCarbonDioxideEquivalent(Mass.ofKilograms(1), Double.NaN, false))
                .hasMessageContaining("[0, 50000]");
    }
}
