package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.EquationLibrary;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;

/** Each equation against figures from outside: boiling point and critical point. Sources and reasons in boiling-and-critical-points.csv. */
@Tag("reference")
class BoilingAndCriticalPointReferenceTest {

    private static List<CsvResource.Row> rows() {
        return CsvResource.read(
                        BoilingAndCriticalPointReferenceTest.class,
                        "boiling-and-critical-points.csv",
                        "refrigerant",
                        "boiling_degC",
                        "boiling_percent",
                        "boiling_reason",
                        "boiling_open",
                        "critical_source",
                        "critical_temperature",
                        "critical_kPa",
                        "critical_kelvin",
                        "critical_percent",
                        "critical_reason",
                        "critical_open",
                        "own_critical_K")
                .rows();
    }

    static Stream<Arguments> equations() {
        return rows().stream().map(row -> Arguments.of(row.text("refrigerant"), row));
    }

    private static FluidModel model(CsvResource.Row row) {
        return FluidModel.of(Catalogue.standard().find(row.text("refrigerant")));
    }

    private static double half(String printed) {
        return new BigDecimal(printed).ulp().doubleValue() / 2;
    }

    @Test
    void everyEquationHasItsRow() {
        List<String> withEquation = Catalogue.standard().substances().stream()
                .map(Refrigerant::designation)
                .filter(EquationLibrary.standard()::hasEquation)
                .toList();
        assertThat(withEquation).hasSize(54);
        assertThat(rows().stream().map(row -> row.text("refrigerant")))
                .containsExactlyInAnyOrderElementsOf(withEquation);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("equations")
    void boilsWhereTheHandbookSays(String name, CsvResource.Row row) {
        Assumptions.assumeFalse(row.isEmpty("boiling_degC"), "no boiling point on record");
        FluidModel model = model(row);
        BoundaryPoint point = model.bubbleAtPressure(ReferenceState.NORMAL_PRESSURE_PA);
        double ours = Temperature.ofKelvins(point.temperatureK()).celsius();
        double printed = row.number("boiling_degC");
        double relative = row.optionalNumber("boiling_percent").orElse(0) / 100;
        double wide = model.bubbleAtPressure(ReferenceState.NORMAL_PRESSURE_PA * (1 + relative))
                .temperatureK();
        double bound = half(row.text("boiling_degC")) + wide - point.temperatureK();
        if (row.isEmpty("boiling_open")) {
            assertThat(ours).isCloseTo(printed, within(bound));
        } else {
            assertThat(Math.abs(ours - printed))
                    .as("open, but agrees: take it off the list")
                    .isGreaterThan(bound);
            assertThat(ours).isCloseTo(row.number("boiling_open"), within(half(row.text("boiling_open"))));
        }
        assertThat(row.isEmpty("boiling_percent")).isEqualTo(row.isEmpty("boiling_reason"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("equations")
    void criticalPointOfTheEquationLiesWhereItWasPublished(String name, CsvResource.Row row) {
        BoundaryEnd end = model(row).twoPhaseEnd();
        assertThat(end.kind()).isEqualTo(BoundaryEnd.Kind.CRITICAL_POINT);
        String[] printed = row.text("critical_temperature").split(" ", 2);
        double temperature = Temperature.parse(row.text("critical_temperature")).kelvins();
        double kelvin = half(printed[0]) + row.optionalNumber("critical_kelvin").orElse(0);
        double kilopascal = half(row.text("critical_kPa"))
                + row.number("critical_kPa")
                        * row.optionalNumber("critical_percent").orElse(0)
                        / 100;
        if (row.isEmpty("critical_open")) {
            // 1e-9 K: the printed Celsius temperature is not exact in kelvins
            assertThat(end.temperatureK()).isCloseTo(temperature, within(kelvin + 1e-9));
            assertThat(end.pressurePa() / 1000).isCloseTo(row.number("critical_kPa"), within(kilopascal));
        } else {
            assertThat(Math.abs(end.temperatureK() - temperature))
                    .as("open, but agrees: take it off the list")
                    .isGreaterThan(kelvin);
            assertThat(end.temperatureK())
                    .isCloseTo(row.number("critical_open"), within(half(row.text("critical_open"))));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("equations")
    void searchFindsTheEquationsOwnCriticalTemperature(String name, CsvResource.Row row) {
        // given to 0.0001 K: half a digit there, and as much for the search itself
        assertThat(model(row).twoPhaseEnd().temperatureK()).isCloseTo(row.number("own_critical_K"), within(1e-4));
    }
}
