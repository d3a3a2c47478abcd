package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
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
        String[] parts = shares.split(" ", -1);
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

    /** Above the critical temperature, or pressure, of a blend not every fraction of vapour is reached; the least, or most, is named. */
    @ParameterizedTest(name = "{0} at {2}")
    @CsvSource({
        "R-14 0.17170676 R-23 0.44032909 R-600 0.38796415, T, 359.0253623, 0.3756",
        "R-14 0.73734582 R-1234yf 0.26265418, T, 283.3984404, 0.6292",
        "R-50 0.20111200 R-601 0.79888800, p, 6021968.43, 0.8709",
        "R-600a 0.89002142 R-728 0.10997858, p, 6013706, 0.9957",
    })
    void aVapourFractionThatIsNotReachedIsRefusedWithThoseThatAre(
            String shares, String fixed, double value, double fraction) {
        StateFinder states = blend(shares).states();
        DoubleFunction<List<PhaseSplit>> at = q -> fixed.equals("T")
                ? states.allAtTemperatureAndVapourFraction(value, q)
                : states.allAtPressureAndVapourFraction(value, q);
        assertThatThrownBy(() -> at.apply(fraction)).isInstanceOfSatisfying(OutOfValidityException.class, e -> {
            assertThat(e.what()).isEqualTo("vapour fraction");
            double limit = fraction < e.low() ? e.low() + 1e-4 : e.high() - 1e-4;
            assertThat(Math.abs(fraction - limit)).isGreaterThan(1e-3);
            assertThat(at.apply(limit)).isNotEmpty();
        });
    }

    /** Beside the critical point: the fraction asked for or none, never another one. */
    @Test
    void noOtherVapourFractionThanTheOneAskedForIsAnswered() {
        FluidModel model = blend(
                "R-744 0.37198945237857456 R-290 0.02638540621051363 R-114 0.3595765537677834 R-125 0.2420485876431284");
        try {
            assertThat(model.states().allAtTemperatureAndVapourFraction(374.9915387612448, 0.36165415059750183))
                    .allSatisfy(s -> assertThat(s.vapourFraction()).isCloseTo(0.36165415059750183, within(1e-8)));
        } catch (ConvergenceException besideTheCriticalPoint) {
            assertThat(besideTheCriticalPoint).hasMessageContaining("none found");
        }
    }

    /** Just above the highest pressure of the two-phase region, where the isotherm of the composition is nearly flat. */
    @Test
    void aDensityBesideTheCriticalPointOfTheCompositionIsFound() {
        FluidModel model = blend("R-600 0.27179033807773395 R-236fa 0.27518451604248817 R-141b 0.16953709214999294"
                + " R-161 0.23251909876009533 R-113 0.05096895496968962");
        PhaseSplit state = model.states()
                .atTemperatureAndPressure(model.lines().warmestPoint().temperatureK(), 4361271.6);
        assertThat(model.states()
                        .atTemperatureAndDensity(state.temperatureK(), state.density())
                        .pressurePa())
                .isCloseTo(4361271.6, within(4361271.6e-9));
    }

    @Test
    void anEnergyInAVolumeDenserThanTheEquationIsRefusedByItsDensity() {
        FluidModel model = blend("R-12 0.4685745 R-142b 0.1908893 R-13 0.3294729 R-161 0.0110633");
        assertThatThrownBy(() -> model.states().atEnergyAndVolume(57_828.8, 1.9677e-4))
                .isInstanceOfSatisfying(
                        OutOfValidityException.class, e -> assertThat(e.what()).isEqualTo("density"));
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

    @ParameterizedTest(name = "{0}")
    @CsvSource({"R-407C", "R-472B", "R-470A"})
    void linesThatTouchTheTwoPhaseRegionInOnePointAreAnswered(String name) {
        FluidModel model = FluidModel.of(Catalogue.standard().find(name));
        BoundaryEnd warmest = model.lines().warmestPoint();
        BoundaryEnd highest = model.lines().highestPressure();
        RoundTrips trips = new RoundTrips();
        for (double off : new double[] {-0.05, 0.05}) {
            PhaseSplit onIsotherm =
                    model.states().atTemperatureAndPressure(warmest.temperatureK(), warmest.pressurePa() * (1 + off));
            PhaseSplit onIsobar =
                    model.states().atTemperatureAndPressure(highest.temperatureK() * (1 + off), highest.pressurePa());
            trips.putBack(model, onIsotherm, false);
            trips.putBack(model, onIsobar, false);
        }
        assertThat(trips.faults()).isEmpty();
    }
}
