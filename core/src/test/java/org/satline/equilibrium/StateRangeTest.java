package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equation.EquationLibrary;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** States beyond the pressure limit of an equation and solid states are refused, whichever pair asks for them. */
class StateRangeTest {
    private static FluidModel model(String name) {
        return FluidModel.of(Catalogue.standard().find(name));
    }

    @ParameterizedTest(name = "{0} at {1} K and {2} kg/m3")
    @CsvSource({
        // the equations of R-134a and R-32 hold to 70 MPa, that of R-161 to 5 MPa (validity stated with each equation)
        "R-134a, 180, 2400, 70e6",
        "R-32, 300, 1500, 70e6",
        "R-161, 300, 800, 5.01e6",
        "R-410A, 300, 1800, 60e6",
    })
    void aPressureBeyondTheEquationIsRefusedWhereDensityLeadsToIt(
            String name, double temperature, double density, double limit) {
        assertThatThrownBy(() -> model(name).states().atTemperatureAndDensity(temperature, density))
                .isInstanceOfSatisfying(OutOfValidityException.class, e -> {
                    assertThat(e.what()).isEqualTo("pressure");
                    assertThat(e.value()).isGreaterThan(limit);
                    // its saturation line itself ends a little above the stated limit
                    assertThat(e.high()).isCloseTo(limit, within(0.03 * limit));
                });
    }

    @Test
    void liquidUpToTheLimitIsAnswered() {
        FluidModel model = model("R-134a");
        double density = model.states().atTemperatureAndPressure(300, 69e6).density();
        assertThat(model.states().atTemperatureAndDensity(300, density).pressurePa())
                .isCloseTo(69e6, within(69e6 * 1e-9));
    }

    /**
     * Melting pressures in MPa of the release on ice, its verification table; of R-744 the triple point, where the line begins. From
     * memory.
     */
    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource({
        // IAPWS R14-08(2011), table of check values
        "R-718, 320, 1356.76, 0.005",
        "R-718, 550, 6308.71, 0.005",
        // Span and Wagner 1996, table 34 begins at the triple point
        "R-744, 216.592, 0.51795, 1e-9",
        // Span et al. 2000: triple point
        "R-728, 63.151, 0.012523, 1e-9",
    })
    void meltingLinesMeetPublishedPoints(String name, double temperature, double megapascals, double tolerance) {
        double pressure = MeltingLine.of(model(name).equation())
                .orElseThrow()
                .pressure(temperature)
                .orElseThrow();
        assertThat(pressure).isCloseTo(1e6 * megapascals, within(1e6 * tolerance));
    }

    /**
     * Clapeyron: dp/dT = heat of fusion / (T volume of fusion) at the triple point. Heats (J/mol) of handbooks and volumes (cm3/mol) of the
     * densities of solid and liquid, from memory and good to some 5 % each; a wrong coefficient shows.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"R-50, 930, 2.65", "R-728, 720, 2.6", "R-744, 8850, 8.3"})
    void meltingLinesBeginWithTheSlopeOfHeatAndVolumeOfFusion(String name, double heat, double volume) {
        FluidModel model = model(name);
        double coldest = model.minTemperatureK();
        double slope = (model.lines().meltingPressurePa(coldest + 0.1).orElseThrow()
                        - model.lines().meltingPressurePa(coldest).orElseThrow())
                / 0.1;
        double expected = heat / (coldest * volume * 1e-6);
        assertThat(slope / expected).isCloseTo(1, within(0.1));
    }

    /** Where two pieces of a melting line meet, at a triple point of two solids, they agree within the digits of its printed pressure. */
    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource({"R-1150, 110.369, 1e-3", "R-718, 273.31, 1e-3", "R-718, 355, 1e-3"})
    void piecesOfAMeltingLineMeet(String name, double temperature, double tolerance) {
        FluidModel model = model(name);
        double below = model.lines().meltingPressurePa(temperature - 1e-6).orElseThrow();
        double above = model.lines().meltingPressurePa(temperature).orElseThrow();
        assertThat(below / above).isCloseTo(1, within(tolerance));
    }

    /**
     * Liquid on the low side, solid on the other side of the line; figures of the equations of the melting lines, from
     * memory.
     */
    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource({"R-744, 220, 16.0e6, 17.5e6", "R-718, 280, 710e6, 715e6", "R-290, 90, 48e6, 51e6"})
    void solidStatesAreRefused(String name, double temperature, double liquid, double solid) {
        FluidModel model = model(name);
        assertThat(model.stateAt(temperature, liquid).density()).isPositive();
        assertThatThrownBy(() -> model.stateAt(temperature, solid))
                .isInstanceOfSatisfying(
                        SolidStateException.class,
                        e -> assertThat(e.meltingPressurePa()).isBetween(liquid, solid));
    }

    @Test
    void aSolidStateIsRefusedByDensityAndEnthalpyToo() {
        FluidModel model = model("R-744");
        PhaseSplit liquid = model.states().atTemperatureAndPressure(220, 16.0e6);
        assertThatThrownBy(() -> model.states().atTemperatureAndDensity(220, liquid.density() * 1.01))
                .isInstanceOf(SolidStateException.class);
        double colder = liquid.specificEnthalpy() - 4000;
        assertThatThrownBy(() -> model.states().atPressureAndEnthalpy(16.0e6, colder))
                .isInstanceOf(SolidStateException.class);
    }

    /** What is refused lies outside the range that the refusal names, and a pair from within it is answered. */
    @ParameterizedTest(name = "{0}: {1} J/kg, {2} J/(kg K)")
    @CsvSource({
        "R-134a, 9e5, 1500",
        "R-134a, -9e5, 1500",
        "R-134a, 4e5, -5000",
        "R-134a, 4e5, 90000",
        "R-11, 208835.8, 51.17",
        "R-407C, 1e5, 1750",
        "R-744, 2e6, 2200",
        "R-718, 5e6, 4000",
    })
    void anEnthalpyAndEntropyBeyondTheEquationAreRefusedWithARangeThatHolds(
            String name, double enthalpy, double entropy) {
        FluidModel model = model(name);
        assertThatThrownBy(() -> model.states().atEnthalpyAndEntropy(enthalpy, entropy))
                .isInstanceOfSatisfying(OutOfValidityException.class, e -> {
                    assertThat(e.low()).isFinite().isLessThan(e.high());
                    assertThat(e.high()).isFinite();
                    assertThat(e.value() < e.low() || e.value() > e.high()).isTrue();
                    if (e.what().equals("specific enthalpy")) {
                        double inside = (e.low() + e.high()) / 2;
                        assertThat(model.states()
                                        .atEnthalpyAndEntropy(inside, entropy)
                                        .specificEntropy())
                                .isCloseTo(entropy, within(1e-6));
                    }
                });
    }

    @Test
    void whatIsNotCheckedForSolidsIsSaid() {
        List<String> checked = new ArrayList<>();
        for (Refrigerant substance : Catalogue.standard().substances()) {
            if (EquationLibrary.standard().hasEquation(substance.designation())) {
                FluidModel model = FluidModel.of(substance);
                // no line was read in its paper: each citation says so
                model.lines().meltingLineSource().ifPresent(source -> {
                    assertThat(source).contains("from memory");
                    checked.add(substance.designation());
                });
                double coldest = model.minTemperatureK();
                assertThat(model.lines().meltingPressurePa(coldest).isPresent())
                        .isEqualTo(model.lines().meltingLineSource().isPresent());
                assertThatThrownBy(() -> model.stateAt(coldest - 0.01, 1e6))
                        .as(substance.designation())
                        .isInstanceOf(OutOfValidityException.class);
            }
        }
        assertThat(checked)
                .containsExactlyInAnyOrder(
                        "R-50", "R-170", "R-290", "R-1150", "R-600", "R-600a", "R-718", "R-728", "R-744");
        assertThat(model("R-410A").lines().meltingLineSource()).isEmpty();
    }

    @Test
    void noSubstanceIsAnsweredBelowItsTriplePoint() {
        // triple points as stored with each equation
        for (Refrigerant substance : Catalogue.standard().substances()) {
            if (EquationLibrary.standard().hasEquation(substance.designation())) {
                double triple = EquationLibrary.standard()
                        .pure(substance.designation())
                        .constants()
                        .tripleTemperature();
                assertThat(FluidModel.of(substance).minTemperatureK()).isGreaterThanOrEqualTo(triple);
            }
        }
    }
}
