package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;

/** Against the superheat charging table printed in air-conditioner installation manuals (whole degrees Fahrenheit). */
@Tag("reference")
class TargetSuperheatReferenceTest {
    private static ChargeTarget target(double wetBulbF, double dryBulbF) {
        return TargetSuperheatChart.target(
                Reading.exact(Temperature.ofFahrenheit(wetBulbF)), Reading.exact(Temperature.ofFahrenheit(dryBulbF)));
    }

    private static double fahrenheitDegrees(ChargeTarget target) {
        assertThat(target).isInstanceOf(ChargeTarget.Found.class);
        return ((ChargeTarget.Found) target).value().fahrenheitDegrees();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "printed-superheat-cells.csv", numLinesToSkip = 2)
    void everyPrintedCellIsRepeated(double wetBulb, double dryBulb, String printed) {
        ChargeTarget target = target(wetBulb, dryBulb);
        if (printed.equals("-")) {
            assertThat(target).isInstanceOf(ChargeTarget.Missing.class);
        } else {
            // a chart is no formula: on a printed cell only the rounding of the unit conversion is allowed
            assertThat(fahrenheitDegrees(target)).isCloseTo(Double.parseDouble(printed), within(1e-9));
        }
    }

    /** Worked by hand from the neighbouring printed cells: linear in both directions. */
    @ParameterizedTest
    @CsvSource({
        "51, 55, 10.5", // (9 + 12) / 2
        "54, 57.5, 13", // (14 + 12) / 2
        "55, 57.5, 14.5", // (14 + 12 + 17 + 15) / 4
        "58, 67.5, 14.5", // (16 + 13) / 2
    })
    void betweenCellsItIsLinear(double wetBulb, double dryBulb, double byHand) {
        assertThat(fahrenheitDegrees(target(wetBulb, dryBulb))).isCloseTo(byHand, within(1e-9));
    }

    @Test
    void nothingIsGivenAcrossADash() {
        // row 54 prints 7 at 70 degF and a dash at 75 degF
        assertThat(fahrenheitDegrees(target(54, 70))).isCloseTo(7, within(1e-9));
        assertThat(target(54, 71)).isInstanceOf(ChargeTarget.Missing.class);
        // between row 52 (dash at 70) and row 54 (7 at 70)
        assertThat(target(53, 70)).isInstanceOf(ChargeTarget.Missing.class);
    }

    @Test
    void nothingIsGivenOutside() {
        assertThat(target(49, 60)).isInstanceOf(ChargeTarget.Missing.class);
        assertThat(target(60, 54)).isInstanceOf(ChargeTarget.Missing.class);
        assertThat(target(60, 116)).isInstanceOf(ChargeTarget.Missing.class);
    }
}
