package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.resource.CsvResource;

/** Check values printed with the equations, or in tables computed from them; sources and tolerances in check-values.csv. */
@Tag("reference")
class CheckValuesReferenceTest {
    private static final Map<String, FluidModel> MODELS = new ConcurrentHashMap<>();

    private static List<CsvResource.Row> rows() {
        return CsvResource.read(
                        CheckValuesReferenceTest.class,
                        "check-values.csv",
                        "refrigerant",
                        "point",
                        "temperature_K",
                        "density",
                        "pressure_Pa",
                        "quantity",
                        "printed",
                        "relative_tolerance",
                        "source")
                .rows();
    }

    static Stream<Arguments> checks() {
        return rows().stream()
                .map(row -> Arguments.of(
                        row.text("refrigerant") + " line " + row.line() + ": " + row.text("quantity"), row));
    }

    @Test
    void holdsAllValues() {
        assertThat(rows())
                .hasSize(60)
                .allSatisfy(row -> assertThat(row.text("source")).contains("from memory"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("checks")
    void printedValueRepeats(String name, CsvResource.Row row) {
        double printed = row.number("printed");
        assertThat(compute(row)).isCloseTo(printed, within(row.number("relative_tolerance") * printed));
    }

    private static FluidModel model(String designation) {
        return MODELS.computeIfAbsent(designation, CheckValuesReferenceTest::prepare);
    }

    private static FluidModel prepare(String designation) {
        FluidModel model = FluidModel.of(Catalogue.standard().find(designation));
        if (!designation.equals("R-718")) {
            return model;
        }
        return model.with(ReferenceState.ofSaturatedLiquid(
                Temperature.ofKelvins(273.16),
                SpecificEnthalpy.ofJoulesPerKilogram(0),
                SpecificEntropy.ofJoulesPerKilogramKelvin(0)));
    }

    private static double compute(CsvResource.Row row) {
        FluidModel model = model(row.text("refrigerant"));
        String quantity = row.text("quantity");
        if (row.text("point").equals("boiling")) {
            return model.bubbleAtPressure(row.number("pressure_Pa")).temperatureK();
        }
        double temperature = row.number("temperature_K");
        if (row.text("point").equals("one phase")) {
            PhaseSplit split = model.splitAtDensity(temperature, row.number("density"));
            FluidState state = split.liquid().or(split::vapour).orElseThrow();
            return switch (quantity) {
                case "pressure" -> state.pressurePa();
                case "isochoric heat capacity" -> state.isochoricHeatCapacity();
                case "speed of sound" -> state.speedOfSound();
                case "entropy" -> state.specificEntropy();
                default -> throw row.fault("unknown quantity " + quantity);
            };
        }
        BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
        BoundaryPoint dew = model.dewAtTemperature(temperature);
        return switch (quantity) {
            case "pressure" -> bubble.pressurePa();
            case "liquid density" -> bubble.saturated().density();
            case "vapour density" -> dew.saturated().density();
            case "vapour enthalpy, IIR" -> dew.saturated().specificEnthalpy();
            case "vapour entropy, IIR" -> dew.saturated().specificEntropy();
            default -> throw row.fault("unknown quantity " + quantity);
        };
    }
}
