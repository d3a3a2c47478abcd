package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CompositionTest {
    private static final Refrigerant R32 = Catalogue.standard().find("R-32");
    private static final Refrigerant R125 = Catalogue.standard().find("R-125");

    private static Map<Refrigerant, Double> pair(double first, double second) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(R32, first);
        fractions.put(R125, second);
        return fractions;
    }

    @Test
    void sumThatMissesOneIsRefusedWithAllFractions() {
        assertThatThrownBy(() -> Composition.ofMassFractions(pair(0.51, 0.51)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("mass fractions sum to 1.02, expected 1 within 1.0E-6: [R-32: 0.51, R-125: 0.51];"
                        + " give them as fractions of the whole blend");
        assertThatThrownBy(() -> Composition.ofMoleFractions(pair(0.4, 0.5)))
                .hasMessageContaining("mole fractions sum");
    }

    @Test
    void sumWithinOneMillionthIsBroughtToOne() {
        Composition composition = Composition.ofMassFractions(pair(0.5, 0.5000009));
        assertThat(composition.components().stream()
                        .mapToDouble(Composition.Component::massFraction)
                        .sum())
                .isCloseTo(1, within(1e-15)); // a few units in the last place
    }

    @Test
    void printedFractionsStayAsPrinted() {
        // 18.5/69.5/12.0 % of R-425A (ANSI/ASHRAE 34): the three doubles do not add up to 1 in the last place
        assertThat(Catalogue.standard().find("R-425A").composition().components().stream()
                        .map(Composition.Component::massFraction))
                .containsExactly(0.185, 0.695, 0.12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY, 1.1, -0.0})
    void fractionOutsideZeroToOneIsRefused(double fraction) {
        assertThatThrownBy(() -> Composition.ofMassFractions(pair(fraction, 1 - fraction)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is outside [1.0E-7, 1]");
        assertThatThrownBy(() -> new Composition.Component(R32, fraction, 0.5)).hasMessageContaining("outside (0, 1]");
        assertThatThrownBy(() -> new Composition.Component(R32, 0.5, fraction)).hasMessageContaining("outside (0, 1]");
    }

    @Test
    void fewerThanTheLeastFractionIsRefused() {
        double least = Composition.LEAST;
        assertThat(Composition.ofMassFractions(pair(least, 1 - least)).components())
                .first()
                .extracting(Composition.Component::massFraction)
                .isEqualTo(least);
        for (double less : new double[] {Math.nextDown(least), 1e-300, Double.MIN_VALUE}) {
            assertThatThrownBy(() -> Composition.ofMassFractions(pair(less, 1 - less)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> Composition.ofMoleFractions(pair(less, 1 - less)))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void blendAsComponentIsRefused() {
        Refrigerant blend = Catalogue.standard().find("R-410A");
        assertThatThrownBy(() -> Composition.ofMassFractions(Map.of(blend, 1.0)))
                .hasMessageContainingAll("R-410A", "is itself a blend");
    }

    @Test
    void oneToTwentyComponentsAreAllowed() {
        Map<Refrigerant, Double> many = new LinkedHashMap<>();
        Catalogue.standard().substances().stream().limit(21).forEach(s -> many.put(s, 1.0 / 21));
        assertThatThrownBy(() -> Composition.ofMassFractions(many)).hasMessageContaining("21 components");
        assertThatThrownBy(() -> Composition.ofMassFractions(Map.of())).hasMessageContaining("[1, 20]");
        many.remove(R32);
        many.replaceAll((s, f) -> 1.0 / 20);
        assertThat(Composition.ofMassFractions(many).components()).hasSize(20);
    }

    @Test
    void moleFractionsOfAWorkedExample() {
        // 50/50 % by mass of R-32 (52.02 g/mol) and R-125 (120.02 g/mol): 0.6976 mol R-32 in a mol; arithmetic with
        // molar masses of
        // ASHRAE Handbook Fundamentals 2021 ch. 29 Table 5, which are rounded to 0.01 g/mol: hence 1e-4
        Composition composition = Catalogue.standard().find("R-410A").composition();
        double expected = (0.5 / 52.02) / (0.5 / 52.02 + 0.5 / 120.02);
        assertThat(composition.components().get(0).moleFraction()).isCloseTo(expected, within(1e-4));
    }

    @Test
    void printsPerCentByMass() {
        assertThat(Catalogue.standard().find("R-454B").composition())
                .hasToString("R-32/R-1234yf (68.9/31.1 % by mass)");
        assertThat(Composition.ofMassFractions(pair(1.0 / 3, 2.0 / 3)))
                .hasToString("R-32/R-125 (33.3333/66.6667 % by mass)");
        assertThat(R32.composition()).hasToString("R-32 (100 % by mass)");
    }

    @Test
    void userBlendHasAnUnknownGroupAndComputedPotentials() {
        Refrigerant own = Refrigerant.blend(" shop mix ", Composition.ofMassFractions(pair(0.5, 0.5)));
        assertThat(own.designation()).isEqualTo("shop mix");
        assertThat(own.safetyGroup()).isEmpty();
        assertThat(own.gwp(GlobalWarmingPotential.Report.AR4))
                .hasValueSatisfying(gwp -> assertThat(gwp.basis()).contains("computed"));
        assertThat(own).isEqualTo(Refrigerant.blend("shop mix", Composition.ofMassFractions(pair(0.5, 0.5))));
        assertThat(own).isNotEqualTo(Refrigerant.blend("shop mix", Composition.ofMassFractions(pair(0.6, 0.4))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "a\nb", "R-410A", "r410a", "propane"})
    void userBlendNeedsAnHonestName(String name) {
        Composition composition = Composition.ofMassFractions(pair(0.5, 0.5));
        assertThatThrownBy(() -> Refrigerant.blend(name, composition))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("name of the blend");
    }
}
