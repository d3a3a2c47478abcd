package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.certificate.RoundTrips;
import org.satline.equation.EquationLibrary;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Every pair of quantities gives its state back, all refrigerants, none refused; {@link RoundTrips} says how well. */
class FlashRoundTripTest {
    private static Stream<FluidModel> models() {
        return Catalogue.standard().all().stream()
                .filter(Refrigerant::hasComposition)
                .filter(r -> r.composition().components().stream()
                        .allMatch(c -> EquationLibrary.standard()
                                .hasEquation(c.substance().designation())))
                .map(FluidModel::of);
    }

    @Test
    void everyPairGivesItsStateBack() {
        RoundTrips trips = new RoundTrips();
        models().forEach(model -> {
            Random random = new Random(model.refrigerant().designation().hashCode());
            for (int i = 0; i < 2; i++) {
                trips.onePhase(model, random, i == 0);
                trips.twoPhases(model, random);
            }
        });
        assertThat(trips.asked()).isGreaterThan(14_000);
        assertThat(trips.faults()).isEmpty();
    }

    @Test
    void superheatedVapourBetweenTheDewAndTheBubblePressureOfTheColdestTemperatureIsAnswered() {
        RoundTrips trips = new RoundTrips();
        models().filter(m -> m.refrigerant().isBlend()).forEach(model -> {
            double low = model.dewPressureRange().low();
            double high = model.bubblePressureRange().low();
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                double pressure = low * Math.pow(high / low, share);
                trips.putBack(model, model.states().atTemperatureAndPressure(model.maxTemperatureK(), pressure), false);
            }
        });
        assertThat(trips.asked()).isGreaterThan(3_000);
        assertThat(trips.faults()).isEmpty();
    }

    /** Throttling and ideal compression at the highest pressure of the equation: no state beyond it is visited on the way. */
    @Test
    void statesAtTheHighestPressureAreAnswered() {
        RoundTrips trips = new RoundTrips();
        models().forEach(model -> {
            double highest = model.equation().mixture().components().stream()
                    .mapToDouble(c -> c.constants().maxPressure())
                    .min()
                    .orElseThrow();
            double temperature = 0.9 * model.twoPhaseEnd().temperatureK();
            if (temperature > model.minTemperatureK()) {
                PhaseSplit state;
                try {
                    state = model.states().atTemperatureAndPressure(temperature, highest);
                } catch (SolidStateException frozenBelow) {
                    return;
                }
                trips.putBack(model, state, false);
            }
        });
        assertThat(trips.faults()).isEmpty();
    }
}
