package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.certificate.OnePhaseGibbs;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * Between the end of the bubble line and the end of the dew line two phases are found where they are the stable state. Checked from outside
 * the solvers: equal fugacities, the balance of every component, and a Gibbs energy below that of the homogeneous state of the same
 * temperature and pressure.
 */
class RetrogradeRegionTest {
    private static FluidModel model(String name) {
        return FluidModel.of(Catalogue.standard().find(name));
    }

    @ParameterizedTest(name = "{0} at {1} K and {2} MPa")
    @CsvSource({
        "R-472B, 331.056, 7.1",
        "R-472B, 331.056, 7.25",
        "R-472B, 331.056, 7.4",
        "R-470A, 359.105, 5.131",
        "R-470A, 359.7, 5.35",
        "R-445A, 378.2, 4.45",
        "R-469A, , ",
        "R-470B, , ",
        "R-472A, , ",
    })
    void twoPhasesAreFoundBetweenTheEndsOfTheLines(String name, Double kelvins, Double megapascals) {
        FluidModel model = model(name);
        BoundaryEnd warmest = model.lines().warmestPoint();
        double bubbleEnd = model.bubbleEnd().temperatureK();
        double temperature = kelvins != null ? kelvins : bubbleEnd + 0.5 * (warmest.temperatureK() - bubbleEnd);
        assertThat(temperature).isBetween(bubbleEnd, warmest.temperatureK());
        // the dew line still answers there; the state lies a little above it
        double pressure = megapascals != null
                ? 1e6 * megapascals
                : model.dewAtTemperature(temperature).pressurePa() * 1.002;
        isTheStableSplit(model, temperature, pressure);
    }

    private static void isTheStableSplit(FluidModel model, double temperature, double pressure) {
        PhaseSplit split = model.states().atTemperatureAndPressure(temperature, pressure);
        assertThat(split.phases()).isEqualTo(PhaseSplit.Phases.LIQUID_AND_VAPOUR);
        assertThat(split.pressurePa()).isCloseTo(pressure, within(1e-10 * pressure));
        FluidState liquid = split.liquid().orElseThrow();
        FluidState vapour = split.vapour().orElseThrow();
        Fugacities ofLiquid = Fugacities.of(model, liquid, split.liquidMoleFractions());
        Fugacities ofVapour = Fugacities.of(model, vapour, split.vapourMoleFractions());
        double[] z = model.equation().moleFractions();
        double molesOfLiquid = (1 - split.vapourFraction()) / molarMass(liquid);
        double molesOfVapour = split.vapourFraction() / molarMass(vapour);
        for (int i = 0; i < z.length; i++) {
            // the stated criterion of convergence is 1e-10 in ln f
            assertThat(Math.log(ofLiquid.fugacitiesPa().get(i)
                            / ofVapour.fugacitiesPa().get(i)))
                    .isCloseTo(0, within(2e-10));
            double whole =
                    (molesOfLiquid * split.liquidMoleFractions()[i] + molesOfVapour * split.vapourMoleFractions()[i])
                            / (molesOfLiquid + molesOfVapour);
            assertThat(whole).isCloseTo(z[i], within(1e-10));
        }
        double two = (1 - split.vapourFraction()) * liquid.specificGibbsEnergy()
                + split.vapourFraction() * vapour.specificGibbsEnergy();
        assertThat(two).isLessThan(OnePhaseGibbs.least(model, temperature, pressure));
    }

    private static double molarMass(FluidState phase) {
        return phase.density() / phase.molarDensity();
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-472B", "R-470A", "R-445A", "R-469A", "R-470B", "R-472A", "R-407C"})
    void justOutsideTheWarmestPointOnePhaseIsAnswered(String name) {
        FluidModel model = model(name);
        BoundaryEnd warmest = model.lines().warmestPoint();
        for (double share = 0.8; share < 1.2; share += 0.05) {
            assertThat(model.states()
                            .atTemperatureAndPressure(warmest.temperatureK() + 0.01, share * warmest.pressurePa())
                            .phases())
                    .isEqualTo(PhaseSplit.Phases.SUPERCRITICAL);
        }
    }

    @Test
    void aWideWindowOfAUserBlendIsFilled() {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(Catalogue.standard().find("R-1150"), 0.36);
        fractions.put(Catalogue.standard().find("R-141b"), 0.64);
        FluidModel model = FluidModel.of(Refrigerant.blend("wide window", Composition.ofMoleFractions(fractions)));
        double from = Math.min(model.bubbleEnd().temperatureK(), model.dewEnd().temperatureK());
        double to = model.lines().warmestPoint().temperatureK();
        assertThat(to - from).isGreaterThan(10);
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            double temperature = from + share * (to - from);
            isTheStableSplit(
                    model,
                    temperature,
                    1.02 * model.dewAtTemperature(temperature).pressurePa());
        }
    }

    @Test
    void oneVapourFractionIsMetTwiceAboveTheCriticalTemperature() {
        FluidModel model = model("R-472B");
        double temperature = 331.6;
        assertThat(temperature)
                .isGreaterThan(model.lines().criticalPoint().orElseThrow().temperatureK());
        var both = model.states().allAtTemperatureAndVapourFraction(temperature, 0.97);
        assertThat(both).hasSize(2);
        assertThat(both.get(0).pressurePa()).isLessThan(both.get(1).pressurePa());
        both.forEach(s -> assertThat(s.vapourFraction()).isCloseTo(0.97, within(1e-10)));
    }
}
