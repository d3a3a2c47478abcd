package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.certificate.RoundTrips;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/** Blends found by drawing at random whose lines turn where those of usual blends do not. */
class AwkwardBlendTest {
    private static FluidModel blend(String shares) {
        String[] parts = shares.split(" ");
        double sum = 0;
        for (int i = 1; i < parts.length; i += 2) {
            sum += Double.parseDouble(parts[i]);
        }
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        for (int i = 0; i < parts.length; i += 2) {
            fractions.put(Catalogue.standard().find(parts[i]), Double.parseDouble(parts[i + 1]) / sum);
        }
        return FluidModel.of(Refrigerant.blend(shares, Composition.ofMoleFractions(fractions)));
    }

    @ParameterizedTest(name = "{0} at {1} K and {2} Pa")
    @CsvSource({
        // the range of states ends where the isotherm only touches the two-phase region
        "R-116 0.341081 R-113 0.444223 R-C318 0.094015 R-13 0.120681, 347.281466, 2.0321151e7",
        "R-1270 0.002741 R-113 0.643035 R-13 0.354225, 420, 3e6",
        // nitrogen raises the bubble pressure of the cold liquid
        "R-113 0.003906 R-124 0.588570 R-1270 0.244472 R-728 0.005401 R-22 0.157650, 330.5, 2764702.7",
        // beside the critical point
        "R-41 0.382840 R-142b 0.104537 R-21 0.311431 R-1123 0.005337 R-50 0.195856, 387.281285497, 1.1983240815e7",
        // an isobar below the whole bubble line, close to the critical pressure
        "R-123 0.095756 R-601a 0.271678 R-50 0.117036 R-21 0.228349 R-40 0.287181, 444.734113889, 7196136.355",
        // the enthalpy turns on the isotherm just below the bubble pressure
        "R-600 0.441077 R-32 0.202411 R-728 0.036895 R-170 0.293442 R-1234yf 0.026175, 252.769376338, 3042421.823",
        // on the isobar from the coldest temperature the vapour fraction rises before it falls
        "R-114 0.144361 R-744 0.372769 R-728 0.128577 R-227ea 0.354246 R-245ca 0.000048, 363.418795799, 8445602.167",
        // the vapour fraction has its least just there
        "R-744 0.347704 R-22 0.174370 R-1123 0.184973 R-12 0.292953, 351.337335498, 6224431.535",
    })
    void everyPairGivesTheStateBack(String shares, double temperature, double pressure) {
        FluidModel model = blend(shares);
        RoundTrips trips = new RoundTrips();
        trips.putBack(model, model.states().atTemperatureAndPressure(temperature, pressure), false);
        assertThat(trips.faults()).isEmpty();
        assertThat(trips.asked()).isGreaterThanOrEqualTo(9);
    }

    @Test
    void bubbleLinesRiseFromTheirLeastPressure() {
        FluidModel model = blend("R-113 0.003906 R-124 0.588570 R-1270 0.244472 R-728 0.005401 R-22 0.157650");
        Range range = model.bubbleTemperatureRange();
        double before = 0;
        for (int k = 0; k <= 20; k++) {
            double pressure = model.bubbleAtTemperature(range.low() + (range.high() - range.low()) * k / 20)
                    .pressurePa();
            assertThat(pressure).isGreaterThan(before);
            before = pressure;
        }
        assertThat(model.bubblePressureRange().low())
                .isCloseTo(model.bubbleAtTemperature(range.low()).pressurePa(), within(1.0));
    }

    @Test
    void aVapourFractionOnBothSidesOfItsLeastIsFoundTwice() {
        FluidModel model = blend("R-744 0.347704 R-22 0.174370 R-1123 0.184973 R-12 0.292953");
        List<PhaseSplit> found = model.states().allAtTemperatureAndVapourFraction(351.3373354975736, 0.8055);
        assertThat(found)
                .hasSize(2)
                .allSatisfy(s -> assertThat(s.vapourFraction()).isCloseTo(0.8055, within(1e-9)));
    }

    @Test
    void aBlendWhoseBubbleLineIsLostFarFromTheCriticalPointIsRefused() {
        // answered before as one phase with a speed of sound that is no number
        assertThatThrownBy(() -> blend("R-600 0.035097 R-728 0.309839 R-13I1 0.655065"))
                .isInstanceOfAny(ConvergenceException.class, TwoLiquidsException.class);
    }

    @Test
    void aVapourFractionColderThanTheEquationsIsRefusedWithTheFractionsThatAreNot() {
        FluidModel model = FluidModel.of(Catalogue.standard().find("R-403A"));
        double coldest = model.minTemperatureK();
        double pressure = Math.sqrt(model.dewAtTemperature(coldest).pressurePa()
                * model.bubbleAtTemperature(coldest).pressurePa());
        assertThatThrownBy(() -> model.states().atPressureAndVapourFraction(pressure, 1e-3))
                .isInstanceOfSatisfying(OutOfValidityException.class, e -> {
                    assertThat(e.what()).isEqualTo("vapour fraction");
                    assertThat(e.low()).isBetween(1e-3, 1.0);
                    assertThat(model.states()
                                    .atPressureAndVapourFraction(pressure, (1 + e.low()) / 2)
                                    .pressurePa())
                            .isCloseTo(pressure, within(1e-9 * pressure));
                });
    }

    /** Up to a millionth below the highest pressure of the two-phase region. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"R-407C", "R-472B", "R-470A", "R-410A", "R-448A"})
    void statesNearTheHighestPressureOfTheTwoPhaseRegionAreAnswered(String name) {
        FluidModel model = FluidModel.of(Catalogue.standard().find(name));
        BoundaryEnd highest = model.lines().highestPressure();
        RoundTrips trips = new RoundTrips();
        for (double below : new double[] {1e-6, 1e-5, 1e-4, 1e-3}) {
            for (double colder : new double[] {-0.02, -0.001, 0.01}) {
                trips.putBack(
                        model,
                        model.states()
                                .atTemperatureAndPressure(
                                        highest.temperatureK() * (1 + colder), highest.pressurePa() * (1 - below)),
                        false);
            }
        }
        assertThat(trips.faults()).isEmpty();
    }
}
