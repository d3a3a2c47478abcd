package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equation.InteractionModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

class CriticalLocusTest {
    private static Refrigerant r(String name) {
        return Catalogue.standard().find(name);
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({"R-32, R-125", "R-744, R-290", "R-32, R-134a", "R-170, R-290", "R-744, R-134a"})
    void leadsFromOneSubstanceToTheOtherThroughTheEndsOfTheirBlends(String first, String second) {
        CriticalLocus locus = CriticalLocus.of(r(first), r(second), InteractionModel.ADJUSTED_OVER_PUBLISHED, 0.05);
        assertThat(locus.closed()).isTrue();
        assertThat(locus.points()).hasSize(21);
        for (int k : new int[] {4, 10, 16}) {
            CriticalLocus.Point point = locus.points().get(k);
            Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
            fractions.put(r(first), point.moleFraction());
            fractions.put(r(second), 1 - point.moleFraction());
            // found there by following the phase boundary, here from composition to composition
            CriticalPoint followed = FluidModel.of(
                            Refrigerant.blend("of the locus", Composition.ofMoleFractions(fractions)))
                    .lines()
                    .criticalPoint()
                    .orElseThrow();
            assertThat(point.critical().temperatureK()).isCloseTo(followed.temperatureK(), within(1e-4));
            assertThat(point.critical().pressurePa()).isCloseTo(followed.pressurePa(), within(10.0));
        }
    }

    @Test
    void endsWhereSubstancesThatMixBadlyTurnAway() {
        CriticalLocus locus = CriticalLocus.of(r("R-50"), r("R-601"), InteractionModel.ADJUSTED_OVER_PUBLISHED, 0.05);
        assertThat(locus.points().get(0).critical().temperatureK()).isCloseTo(469.7, within(0.01));
        CriticalLocus water = CriticalLocus.of(r("R-290"), r("R-718"), InteractionModel.ADJUSTED_OVER_PUBLISHED, 0.05);
        assertThat(water.closed()).isFalse();
    }
}
