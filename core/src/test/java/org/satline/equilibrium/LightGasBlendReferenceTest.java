package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/** Blends of a gas above its critical temperature with a liquid that dissolves it: traced where the model has a bubble line. */
class LightGasBlendReferenceTest {
    private static FluidModel blend(String gas, double moleFraction, String liquid) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(Catalogue.standard().find(gas), moleFraction);
        fractions.put(Catalogue.standard().find(liquid), 1 - moleFraction);
        return FluidModel.of(Refrigerant.blend(gas + " in " + liquid, Composition.ofMoleFractions(fractions)));
    }

    @ParameterizedTest(name = "{0} {1} in {2} at {3} K")
    @CsvSource({
        // computed by an independent program with the same mixture model, printed to three digits
        "R-14, 0.03, R-123, 330, 2.15e6",
        "R-728, 0.0522, R-744, 223.1, 4.31e6",
    })
    void bubblePressureMeetsAnIndependentEngine(
            String gas, double share, String liquid, double temperature, double pressure) {
        FluidModel model = blend(gas, share, liquid);
        assertThat(model.bubbleAtTemperature(temperature).pressurePa()).isCloseTo(pressure, within(0.005e6));
        assertThat(model.bubbleTemperatureRange().low())
                .isLessThan(model.bubbleTemperatureRange().high());
        assertThat(model.lines().criticalPoint()).isPresent();
    }

    @ParameterizedTest(name = "{0} {1} in {2}")
    @CsvSource({
        "R-14, 0.05, R-22",
        "R-14, 0.3, R-23",
        "R-50, 0.1, R-290",
        "R-50, 0.05, R-32",
        "R-50, 0.3, R-170",
        "R-728, 0.02, R-744",
        "R-728, 0.02, R-600a",
        "R-14, 0.01, R-134a",
    })
    void linesRiseAndStatesBetweenThemAreAnswered(String gas, double share, String liquid) {
        FluidModel model = blend(gas, share, liquid);
        double low = model.minTemperatureK();
        double high = 0.95 * model.twoPhaseEnd().temperatureK();
        assertThat(high).isGreaterThan(low);
        double before = 0;
        for (int i = 0; i <= 10; i++) {
            double temperature = low + (high - low) * i / 10;
            double bubble = model.bubbleAtTemperature(temperature).pressurePa();
            double dew = model.dewAtTemperature(temperature).pressurePa();
            assertThat(dew).isLessThan(bubble).isGreaterThan(before);
            before = dew;
            double middle = Math.sqrt(dew * bubble);
            assertThat(model.states()
                            .atTemperatureAndPressure(temperature, middle)
                            .phases())
                    .isEqualTo(PhaseSplit.Phases.LIQUID_AND_VAPOUR);
        }
    }

    @Test
    void aPairWithoutParametersThatDoesNotMixIsRefusedByName() {
        assertThatThrownBy(() -> blend("R-717", 0.5, "R-134a"))
                .isInstanceOf(TwoLiquidsException.class)
                .hasMessageContaining("R-717")
                .hasMessageContaining("R-134a");
    }

    @Test
    void whereTheModelProvesASecondLiquidItSaysSo() {
        assertThatThrownBy(() -> blend("R-728", 0.5, "R-290"))
                .isInstanceOf(TwoLiquidsException.class)
                .hasMessageContaining("splits in two");
    }

    @ParameterizedTest(name = "{0} {1} in {2}")
    @CsvSource({
        // nitrogen with an alkane or a halocarbon, methane with sulfur dioxide, water with an alkane: no continuous
        // critical line (type III of van Konynenburg and Scott 1980; from memory)
        "R-728, 0.98, R-600",
        "R-728, 0.5, R-227ea",
        "R-728, 0.7, R-13I1",
        "R-50, 0.5, R-764",
        "R-718, 0.5, R-290",
        "R-718, 0.7, R-744",
        // critical point of two dense fluids at 1.2 GPa, far beyond what the equation of R-161 was fitted to
        "R-728, 0.352, R-161",
        "R-728, 0.5, R-161",
        // critical point of two dense fluids at 1.2 GPa, far beyond what the equation of R-161 was fitted to
        "R-728, 0.352, R-161",
        "R-728, 0.5, R-161",
    })
    void aBlendWithoutARisingBubbleLineIsRefusedWithItsSecondLiquid(String first, double share, String second) {
        assertThatThrownBy(() -> blend(first, share, second)).isInstanceOf(TwoLiquidsException.class);
    }

    @Test
    void whereThereIsOneLiquidNoneIsClaimed() {
        // nitrogen and carbon dioxide mix as liquids above the triple point of the latter (216.592 K)
        assertThatThrownBy(() -> blend("R-728", 0.7, "R-744")).isInstanceOf(ConvergenceException.class);
    }

    /** Methane is critical at 190.6 K, carbon dioxide begins at its triple point, 216.592 K: rich in methane there is no line between. */
    @Test
    void aBlendWhoseCriticalPointIsColderThanItsEquationsIsRefusedWithIt() {
        assertThatThrownBy(() -> blend("R-50", 0.9, "R-744"))
                .isInstanceOf(ConvergenceException.class)
                .hasMessageContaining("critical point")
                .hasMessageContaining("216.59 K");
    }
}
