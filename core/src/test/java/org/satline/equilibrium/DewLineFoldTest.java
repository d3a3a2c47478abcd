package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * Blends whose first drop of dew changes within a few kelvins from a liquid rich in the heavy component to one rich in the light one, so
 * that the dew line folds back. Above the fold thermodynamics asks for one dew pressure at each temperature, rising with it, not above the
 * bubble pressure.
 */
class DewLineFoldTest {
    static Stream<FluidModel> folding() {
        return Stream.of(
                blend(Map.of("R-32", 0.867, "R-600a", 0.133)),
                blend(Map.of("R-1150", 0.999, "R-245fa", 0.001)),
                blend(Map.of(
                        "R-1234yf",
                        0.0149,
                        "R-32",
                        0.5883,
                        "R-40",
                        0.0541,
                        "R-1150",
                        0.3252,
                        "R-236fa",
                        0.0001,
                        "R-601a",
                        0.0174)));
    }

    private static FluidModel blend(Map<String, Double> moleFractions) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        moleFractions.forEach(
                (name, fraction) -> fractions.put(Catalogue.standard().find(name), fraction));
        return FluidModel.of(Refrigerant.blend("folding", Composition.ofMoleFractions(fractions)));
    }

    @ParameterizedTest
    @MethodSource("folding")
    void isFollowedFromTheFoldToItsEnd(FluidModel model) {
        assertThat(model.twoPhaseEnd().kind()).isNotEqualTo(BoundaryEnd.Kind.LAST_POINT_FOUND);
        assertThat(model.minTemperatureK())
                .isLessThan(0.75 * model.twoPhaseEnd().temperatureK());
    }

    @ParameterizedTest
    @MethodSource("folding")
    void hasOneRisingPressure(FluidModel model) {
        double before = 0;
        double end = 0.98 * model.twoPhaseEnd().temperatureK();
        for (double temperature = model.minTemperatureK(); temperature < end; temperature += 0.5) {
            double pressure = model.dewAtTemperature(temperature).pressurePa();
            assertThat(pressure)
                    .as("dew pressure at %s K", temperature)
                    .isGreaterThan(before)
                    .isLessThan(model.bubbleAtTemperature(temperature).pressurePa());
            // ln f converged to 1e-10, ln p rises by 5 to 30 for each unit of ln T
            assertThat(model.dewAtPressure(pressure).temperatureK()).isCloseTo(temperature, within(1e-8));
            before = pressure;
        }
    }
}
