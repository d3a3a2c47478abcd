package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RefrigerantProperties {
    private static final Catalogue CATALOGUE = Catalogue.standard();

    /** Parts of up to 20 substances, over four decades, divided by their sum. */
    @Provide
    Arbitrary<Map<Refrigerant, Double>> fractions() {
        Arbitrary<List<Refrigerant>> substances = Arbitraries.of(CATALOGUE.substances())
                .list()
                .uniqueElements()
                .ofMinSize(1)
                .ofMaxSize(20);
        return Combinators.combine(substances, Arbitraries.longs()).as((list, seed) -> {
            Random random = new Random(seed);
            Map<Refrigerant, Double> parts = new LinkedHashMap<>();
            list.forEach(s -> parts.put(s, Math.pow(10, -4 * random.nextDouble())));
            double sum =
                    parts.values().stream().mapToDouble(Double::doubleValue).sum();
            parts.replaceAll((s, part) -> part / sum);
            return parts;
        });
    }

    @Property
    void massToMoleAndBackGivesTheSameFractions(@ForAll("fractions") Map<Refrigerant, Double> massFractions) {
        Composition byMass = Composition.ofMassFractions(massFractions);
        Map<Refrigerant, Double> moles = new LinkedHashMap<>();
        byMass.components().forEach(c -> moles.put(c.substance(), c.moleFraction()));
        Composition back = Composition.ofMoleFractions(moles);

        double sum = 0;
        for (int i = 0; i < back.components().size(); i++) {
            double mass = byMass.components().get(i).massFraction();
            // round-off of two sums over 20 components at most
            assertThat(back.components().get(i).massFraction()).isCloseTo(mass, within(1e-14 * mass));
            sum += back.components().get(i).massFraction();
        }
        assertThat(sum).isCloseTo(1, within(1e-14));
        assertThat(back.molarMassKilogramsPerMole())
                .isCloseTo(byMass.molarMassKilogramsPerMole(), within(1e-14 * byMass.molarMassKilogramsPerMole()));
    }

    @Property
    void molarMassLiesBetweenThoseOfTheComponents(@ForAll("fractions") Map<Refrigerant, Double> massFractions) {
        double molarMass = Composition.ofMassFractions(massFractions).molarMassKilogramsPerMole();
        double[] masses = massFractions.keySet().stream()
                .mapToDouble(Refrigerant::molarMassKilogramsPerMole)
                .sorted()
                .toArray();
        assertThat(molarMass).isBetween(masses[0] * (1 - 1e-14), masses[masses.length - 1] * (1 + 1e-14));
    }

    @Provide
    Arbitrary<Refrigerant> entries() {
        return Arbitraries.of(CATALOGUE.all());
    }

    @Property
    void lookUpIgnoresCaseBlanksHyphensAndBrackets(@ForAll("entries") Refrigerant entry, @ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder spelling = new StringBuilder();
        for (char c : entry.designation().toCharArray()) {
            if (Character.isLetterOrDigit(c)) {
                spelling.append(
                        String.valueOf(" -_()".charAt(random.nextInt(5))).repeat(random.nextInt(2)));
                spelling.append(random.nextBoolean() ? Character.toLowerCase(c) : Character.toUpperCase(c));
            }
        }
        assertThat(CATALOGUE.find(spelling.toString())).isSameAs(entry);
    }

    @Property
    void anyTextIsFoundOrRefusedWithSuggestionsOfTheCatalogue(@ForAll String text) {
        try {
            assertThat(CATALOGUE.all()).contains(CATALOGUE.find(text));
        } catch (UnknownRefrigerantException e) {
            assertThat(e.suggestions())
                    .allSatisfy(s -> assertThat(CATALOGUE.find(s).designation()).isEqualTo(s));
        }
    }
}
