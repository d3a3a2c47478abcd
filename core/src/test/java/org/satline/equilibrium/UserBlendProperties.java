package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.arbitraries.LongArbitrary;
import org.satline.equation.EquationLibrary;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * Blends of two to six halocarbons, hydrocarbons, dimethyl ether and R-744 at any composition down to 1e-4, states up to 0.9 of the located
 * end.
 *
 * <p>R-50 and R-14 are left out: at the lower limit of most partners' equations they are gases above their critical temperature, and the
 * bubble line of such a blend can end below that limit, so that there is no state to ask for.
 */
class UserBlendProperties {
    private static final Set<String> NOT_DRAWN = Set.of("R-50", "R-14", "R-717", "R-718", "R-728", "R-764");
    private static final List<Refrigerant> POOL = Catalogue.standard().substances().stream()
            .filter(r -> EquationLibrary.standard().hasEquation(r.designation()))
            .filter(r -> !NOT_DRAWN.contains(r.designation()))
            .toList();

    @Provide
    LongArbitrary seeds() {
        return Arbitraries.longs();
    }

    private static FluidModel blend(Random random) {
        List<Refrigerant> order = new java.util.ArrayList<>(POOL);
        Collections.shuffle(order, random);
        int size = 2 + random.nextInt(5);
        double[] x = new double[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            x[i] = random.nextInt(4) == 0 ? Math.pow(10, -4 * random.nextDouble()) : 1e-4 + random.nextDouble();
            sum += x[i];
        }
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        for (int i = 0; i < size; i++) {
            fractions.put(order.get(i), x[i] / sum);
        }
        return FluidModel.of(Refrigerant.blend("random blend", Composition.ofMoleFractions(fractions)));
    }

    private static double temperature(FluidModel model, Random random) {
        double low = model.minTemperatureK();
        double high = Math.max(low, 0.9 * model.twoPhaseEnd().temperatureK());
        return low + (high - low) * random.nextDouble();
    }

    @Property(tries = 150)
    void bubbleAndDewPointsAreFoundAndRoundTrip(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        FluidModel model = blend(random);
        for (int i = 0; i < 4; i++) {
            double temperature = temperature(model, random);
            BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
            BoundaryPoint dew = model.dewAtTemperature(temperature);
            // the criterion of convergence
            assertThat(Math.max(bubble.fugacityResidual(), dew.fugacityResidual()))
                    .isLessThan(1e-10);
            assertThat(Math.max(bubble.pressureResidual(), dew.pressureResidual()))
                    .isLessThan(1e-10);
            // no trivial solution: the phases differ in density
            assertThat(bubble.saturated().molarDensity()).isGreaterThan(bubble.incipientMolarDensity() * 1.01);
            assertThat(dew.saturated().molarDensity() * 1.01).isLessThan(dew.incipientMolarDensity());
            assertThat(dew.pressurePa()).isLessThanOrEqualTo(bubble.pressurePa() * (1 + 1e-10));
            // 1e-9 K is asked for below 0.95 of the end
            assertThat(model.bubbleAtPressure(bubble.pressurePa()).temperatureK())
                    .isCloseTo(temperature, within(1e-9));
            assertThat(model.dewAtPressure(dew.pressurePa()).temperatureK()).isCloseTo(temperature, within(1e-9));
        }
    }

    @Property(tries = 100)
    void singlePhasesAreStableAndSplitsBalance(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        FluidModel model = blend(random);
        double temperature = temperature(model, random);
        BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
        BoundaryPoint dew = model.dewAtTemperature(temperature);
        for (FluidState state : List.of(
                model.stateAt(temperature, bubble.pressurePa() * 1.001),
                model.stateAt(temperature, dew.pressurePa() * 0.7))) {
            assertThat(state.isobaricHeatCapacity()).isGreaterThan(state.isochoricHeatCapacity() * (1 - 1e-12));
            assertThat(state.speedOfSound()).isGreaterThan(0);
        }
        double liquid = bubble.saturated().density();
        double vapour = dew.saturated().density();
        PhaseSplit split = model.states()
                .atTemperatureAndDensity(
                        temperature, Math.exp(Math.log(vapour) + random.nextDouble() * Math.log(liquid / vapour)));
        double[] z = model.equation().moleFractions();
        double[] x = split.liquidMoleFractions();
        double[] y = split.vapourMoleFractions();
        double liquidMoles =
                (1 - split.vapourFraction()) / model.equation().mixture().at(x).molarMass();
        double vapourMoles =
                split.vapourFraction() / model.equation().mixture().at(y).molarMass();
        for (int i = 0; i < z.length; i++) {
            double whole = (liquidMoles * x[i] + vapourMoles * y[i]) / (liquidMoles + vapourMoles);
            assertThat(whole).isCloseTo(z[i], within(1e-10));
        }
    }

    @Property(tries = 60)
    void throttlingNeverLowersTheEntropy(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        FluidModel model = blend(random);
        BoundaryPoint before = model.bubbleAtTemperature(temperature(model, random));
        double low = Math.max(
                model.bubblePressureRange().low(), model.dewPressureRange().low());
        double pressure = Math.max(low, before.pressurePa() * 0.4);
        if (pressure < before.pressurePa()) {
            PhaseSplit after = model.states()
                    .atPressureAndEnthalpy(pressure, before.saturated().specificEnthalpy());
            // round-off of an entropy near 1 kJ/(kg K)
            assertThat(after.specificEntropy()).isGreaterThan(before.saturated().specificEntropy() - 1e-7);
        }
    }

    @Property(tries = 60)
    void aNearlyPureBlendTendsToItsSubstance(@ForAll("seeds") long seed) {
        Random random = new Random(seed);
        List<Refrigerant> order = new java.util.ArrayList<>(POOL);
        Collections.shuffle(order, random);
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(order.get(0), 1 - 1e-7);
        fractions.put(order.get(1), 1e-7);
        FluidModel pure = FluidModel.of(order.get(0));
        FluidModel nearly = FluidModel.of(Refrigerant.blend("nearly pure", Composition.ofMoleFractions(fractions)));
        double low = Math.max(pure.minTemperatureK(), nearly.minTemperatureK());
        double high = 0.9 * pure.twoPhaseEnd().temperatureK();
        if (high > low) {
            // from 0.8 of the way on the partner's vapour pressure is at most some thousand times the substance's: 1e-7
            // of it moves p below 1e-3;
            // the gas constants of a substance and of mixtures differ by up to 2e-5 besides
            double temperature = low + 0.8 * (high - low);
            double reference = pure.bubbleAtTemperature(temperature).pressurePa();
            assertThat(nearly.bubbleAtTemperature(temperature).pressurePa() / reference)
                    .isCloseTo(1, within(1e-3));
        }
    }
}
