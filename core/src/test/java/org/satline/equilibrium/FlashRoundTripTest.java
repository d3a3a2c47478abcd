package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.satline.certificate.RoundTrips;
import org.satline.equation.EquationLibrary;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Every pair of quantities gives its state back, all refrigerants, none refused; {@link RoundTrips} says how well. */
class FlashRoundTripTest {
    private static List<FluidModel> models = List.of();

    @BeforeAll
    static void prepare() {
        models = Catalogue.standard().all().parallelStream()
                .filter(Refrigerant::hasComposition)
                .filter(r -> r.composition().components().stream()
                        .allMatch(c -> EquationLibrary.standard()
                                .hasEquation(c.substance().designation())))
                .map(FluidModel::of)
                .toList();
    }

    /** Asks of each model, several at a time: models are thread-safe. */
    private static RoundTrips ofEach(BiConsumer<RoundTrips, FluidModel> asked) {
        return models.parallelStream()
                .map(model -> {
                    RoundTrips trips = new RoundTrips();
                    asked.accept(trips, model);
                    return trips;
                })
                .reduce(new RoundTrips(), (a, b) -> new RoundTrips().and(a).and(b));
    }

    @Test
    void everyPairGivesItsStateBack() {
        RoundTrips trips = ofEach((its, model) -> {
            Random random = new Random(model.refrigerant().designation().hashCode());
            for (int i = 0; i < 2; i++) {
                its.onePhase(model, random, i == 0);
                its.twoPhases(model, random);
            }
        });
        assertThat(trips.asked()).isGreaterThan(14_000);
        assertThat(trips.faults()).isEmpty();
    }

    @Test
    void superheatedVapourBetweenTheDewAndTheBubblePressureOfTheColdestTemperatureIsAnswered() {
        RoundTrips trips = ofEach((its, model) -> {
            if (!model.refrigerant().isBlend()) {
                return;
            }
            double low = model.dewPressureRange().low();
            double high = model.bubblePressureRange().low();
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                double pressure = low * Math.pow(high / low, share);
                its.putBack(model, model.states().atTemperatureAndPressure(model.maxTemperatureK(), pressure), false);
            }
        });
        assertThat(trips.asked()).isGreaterThan(3_000);
        assertThat(trips.faults()).isEmpty();
    }

    /** Throttling and ideal compression at the highest pressure of the equation: no state beyond it is visited on the way. */
    @Test
    void statesAtTheHighestPressureAreAnswered() {
        RoundTrips trips = ofEach((its, model) -> {
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
                its.putBack(model, state, false);
            }
        });
        assertThat(trips.faults()).isEmpty();
    }
}
