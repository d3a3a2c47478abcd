package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.refrigerant.Catalogue;

/** Properties that are derivatives, against differences of neighbouring states and against printed tables. */
class DerivedPropertiesTest {
    private static FluidModel model(String name) {
        return FluidModel.of(Catalogue.standard().find(name));
    }

    @ParameterizedTest(name = "{0} at {1} K and {2} Pa")
    @CsvSource({"R-134a, 300, 1e6", "R-134a, 350, 5e5", "R-410A, 280, 3e6", "R-744, 320, 9e6", "R-448A, 330, 4e5"})
    void compressibilityExpansivityAndThrottlingAreDerivatives(String name, double temperature, double pressure) {
        FluidModel model = model(name);
        FluidState state = model.stateAt(temperature, pressure);
        double dp = 1e-4 * pressure;
        double dt = 1e-4 * temperature;
        double compressibility =
                Math.log(model.stateAt(temperature, pressure + dp).density()
                                / model.stateAt(temperature, pressure - dp).density())
                        / (2 * dp);
        double expansivity = -Math.log(model.stateAt(temperature + dt, pressure).density()
                        / model.stateAt(temperature - dt, pressure).density())
                / (2 * dt);
        // central differences over 1e-4: error of the order 1e-8 times third derivatives, near the critical point some
        // hundred times that
        assertThat(state.isothermalCompressibility()).isCloseTo(compressibility, within(1e-5 * compressibility));
        assertThat(state.volumeExpansivity()).isCloseTo(expansivity, within(1e-5 * expansivity));
        double h = state.specificEnthalpy();
        double throttled = (model.states()
                                .atPressureAndEnthalpy(pressure + dp, h)
                                .temperatureK()
                        - model.states().atPressureAndEnthalpy(pressure - dp, h).temperatureK())
                / (2 * dp);
        assertThat(state.jouleThomsonCoefficient()).isCloseTo(throttled, within(1e-5 * Math.abs(throttled) + 1e-12));
        double s = state.specificEntropy();
        double isentropic = Math.log((pressure + dp) / (pressure - dp))
                / Math.log(model.states().atPressureAndEntropy(pressure + dp, s).density()
                        / model.states().atPressureAndEntropy(pressure - dp, s).density());
        assertThat(state.isentropicExponent()).isCloseTo(isentropic, within(1e-5 * isentropic));
    }

    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource({"R-134a, 273.15", "R-410A, 280", "R-407C, 300", "R-744, 290", "R-448A, 250"})
    void slopesOfTheLinesAreDerivatives(String name, double temperature) {
        FluidModel model = model(name);
        double d = 1e-3;
        double bubble = (model.bubbleAtTemperature(temperature + d).pressurePa()
                        - model.bubbleAtTemperature(temperature - d).pressurePa())
                / (2 * d);
        double dew = (model.dewAtTemperature(temperature + d).pressurePa()
                        - model.dewAtTemperature(temperature - d).pressurePa())
                / (2 * d);
        assertThat(model.lines().bubbleSlope(temperature)).isCloseTo(bubble, within(1e-7 * bubble));
        assertThat(model.lines().dewSlope(temperature)).isCloseTo(dew, within(1e-7 * dew));
    }

    @Test
    void latentHeatMeetsClausiusAndClapeyronAndThePrintedTable() {
        FluidModel model = model("R-134a");
        BoundaryPoint liquid = model.bubbleAtTemperature(273.15);
        BoundaryPoint vapour = model.dewAtTemperature(273.15);
        double latent = model.lines().latentHeat(liquid.pressurePa());
        double volumes =
                1 / vapour.saturated().density() - 1 / liquid.saturated().density();
        assertThat(273.15 * volumes * model.lines().dewSlope(273.15)).isCloseTo(latent, within(1e-8 * latent));
        // Cengel and Boles, table A-11: h_fg = 198.60 kJ/kg at 0 degC
        assertThat(latent / 1000).isCloseTo(198.60, within(0.05));
    }

    @Test
    void fugacitiesOfBothPhasesAgreeAndTendToThePressureInAThinGas() {
        FluidModel model = model("R-407C");
        PhaseSplit split = model.states().atTemperatureAndDensity(300, 200);
        Fugacities liquid = Fugacities.of(model, split.liquid().orElseThrow(), split.liquidMoleFractions());
        Fugacities vapour = Fugacities.of(model, split.vapour().orElseThrow(), split.vapourMoleFractions());
        FluidState thin = model.stateAt(300, 10);
        Fugacities ofThin = Fugacities.of(model, thin, model.equation().moleFractions());
        for (int i = 0; i < 3; i++) {
            double f = liquid.fugacitiesPa().get(i);
            assertThat(vapour.fugacitiesPa().get(i)).isCloseTo(f, within(2e-10 * f));
            // second virial coefficients are below 1e-3 m3/mol: B p / RT < 4e-6
            assertThat(ofThin.coefficients().get(i)).isCloseTo(1, within(4e-6));
        }
    }

    /** One unit in the last place of a cold liquid's density moves its computed pressure by more than the vapour pressure. */
    @ParameterizedTest
    @CsvSource({"R-290, 90", "R-134a, 175", "R-433A, 110", "R-718, 274"})
    void aColdSaturatedLiquidHasThePressureOfItsVapour(String name, double temperature) {
        BoundaryPoint bubble = model(name).bubbleAtTemperature(temperature);
        assertThat(bubble.saturated().pressurePa()).isEqualTo(bubble.pressurePa());
    }
}
