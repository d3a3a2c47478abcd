package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * Lines begin where the liquid would split in two. The check is made by brute force: all compositions of a binary blend, all densities of a
 * liquid.
 */
class LiquidSplitTest {
    private static FluidModel model(String name) {
        return FluidModel.of(Catalogue.standard().find(name));
    }

    /** Least tangent-plane distance over RT of any liquid composition farther than 0.1 from the feed. */
    private static double leastDistance(FluidModel model, double temperature) {
        BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
        MixtureEquation mixture = model.equation().mixture();
        double[] z = model.equation().moleFractions();
        double density = bubble.saturated().molarDensity();
        double[] feed = logFugacities(mixture, temperature, z, density);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k < 400; k++) {
            double[] w = {k / 400.0, 1 - k / 400.0};
            if (Math.abs(w[0] - z[0]) > 0.1) {
                double trial = liquidDensity(model, w, temperature, bubble.pressurePa());
                double[] f = logFugacities(mixture, temperature, w, trial);
                least = Math.min(least, w[0] * (f[0] - feed[0]) + w[1] * (f[1] - feed[1]));
            }
        }
        return least;
    }

    private static double[] logFugacities(MixtureEquation mixture, double temperature, double[] x, double density) {
        PartialDensityDerivatives out = new PartialDensityDerivatives(2);
        mixture.evaluate(temperature, new double[] {x[0] * density, x[1] * density}, out);
        return new double[] {Math.log(x[0] * density) + out.first(0), Math.log(x[1] * density) + out.first(1)};
    }

    /** From high density down to the first one whose pressure is not above the wanted one, then halved. */
    private static double liquidDensity(FluidModel model, double[] x, double temperature, double pressure) {
        MixtureEquation mixture = model.equation().mixture();
        PartialDensityDerivatives out = new PartialDensityDerivatives(2);
        double high = 4 * mixture.at(x).reducingDensity();
        double low = high;
        while (pressureAt(mixture, out, x, low, temperature) > pressure) {
            high = low;
            low *= 0.99;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (pressureAt(mixture, out, x, middle, temperature) > pressure) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static double pressureAt(
            MixtureEquation mixture, PartialDensityDerivatives out, double[] x, double density, double temperature) {
        mixture.evaluate(temperature, new double[] {x[0] * density, x[1] * density}, out);
        return density * mixture.gasConstant() * temperature * out.z();
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-430A", "R-431A", "R-500", "R-503", "R-504", "R-509A"})
    void aSecondLiquidIsJustPossibleWhereTheLineBeginsAndNotFartherOn(String name) {
        FluidModel model = model(name);
        double begin = model.bubbleTemperatureRange().low();
        assertThat(model.liquidSplitTemperatureK()).isPresent();
        // found within 0.01 K; the distance changes by less than 1e-2 per kelvin, and the grid is 0.0025 coarse
        assertThat(leastDistance(model, begin)).isCloseTo(0, within(2e-4));
        assertThat(leastDistance(model, begin + 5)).isGreaterThan(2e-4);
    }

    @Test
    void aColderStateIsRefusedByName() {
        FluidModel model = model("R-509A");
        double begin = model.liquidSplitTemperatureK().orElseThrow();
        assertThat(begin).isBetween(190.0, 200.0);
        assertThatThrownBy(() -> model.bubbleAtTemperature(begin - 1))
                .isInstanceOf(OutOfValidityException.class)
                .hasMessageContaining("R-509A")
                .hasMessageContaining("split in two");
        assertThatThrownBy(() -> model.stateAt(begin - 1, 1e6)).hasMessageContaining("split in two");
        assertThatThrownBy(() -> model.states().atTemperatureAndDensity(begin - 1, 500))
                .isInstanceOf(OutOfValidityException.class);
        assertThatThrownBy(
                        () -> model.bubbleAtPressure(model.bubblePressureRange().low() * 0.9))
                .hasMessageContaining("split in two");
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-134a", "R-410A", "R-407C", "R-404A", "R-448A", "R-454B", "R-507A", "R-513A"})
    void commonRefrigerantsBeginWhereTheirEquationsBegin(String name) {
        assertThat(model(name).liquidSplitTemperatureK()).isEqualTo(OptionalDouble.empty());
    }

    @Test
    void substancesThatDoNotMixAreRefused() {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(Catalogue.standard().find("R-134a"), 0.5);
        fractions.put(Catalogue.standard().find("R-718"), 0.5);
        Refrigerant wet = Refrigerant.blend("wet gas", Composition.ofMoleFractions(fractions));
        assertThatThrownBy(() -> FluidModel.of(wet)).isInstanceOf(TwoLiquidsException.class);
    }
}
