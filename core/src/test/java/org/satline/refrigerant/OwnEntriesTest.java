package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.EquationLibrary;
import org.satline.equation.MixtureEvidence;
import org.satline.explanation.Finding;
import org.satline.resource.ResourceFormatException;

/** Entries of a caller's own, and blends known by their composition. */
class OwnEntriesTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Refrigerant OWN = Refrigerant.substance("Field 7", "as on the cylinder", 0.1, "the cylinder");

    static Stream<Refrigerant> blends() {
        return CATALOGUE.blends().stream().filter(Refrigerant::hasComposition);
    }

    private static Refrigerant turnedRound(Refrigerant listed) {
        List<Composition.Component> parts = new ArrayList<>(listed.composition().components());
        Collections.reverse(parts);
        Map<Refrigerant, Double> byMole = new LinkedHashMap<>();
        parts.forEach(part -> byMole.put(part.substance(), part.moleFraction()));
        return Refrigerant.blend("shop " + listed.designation(), Composition.ofMoleFractions(byMole));
    }

    /** Another name, the components the other way round, and mole instead of mass fractions. */
    @ParameterizedTest
    @MethodSource("blends")
    void aBlendOfTheSameCompositionIsFoundAndWarnedOfAlike(Refrigerant listed) {
        Refrigerant own = turnedRound(listed);
        assertThat(own.asListed().composition())
                .satisfies(found ->
                        assertThat(found.isSameAs(listed.composition())).isTrue());
        assertThat(listed.asListed()).isSameAs(listed);
        assertThat(own).isNotEqualTo(listed);
        boolean computable = listed.composition().components().stream()
                .allMatch(part ->
                        EquationLibrary.standard().hasEquation(part.substance().designation()));
        if (computable) {
            List<Finding> warnings = MixtureEvidence.of(own.asListed()).warnings();
            // a pair is named in the order of the components
            assertThat(MixtureEvidence.of(own).warnings()).hasSameSizeAs(warnings);
            assertThat(MixtureEvidence.of(own).knownDifference())
                    .isEqualTo(MixtureEvidence.of(own.asListed()).knownDifference());
        }
    }

    @Test
    void theOrderOfTheComponentsDoesNotMatterToEquality() {
        Refrigerant r32 = CATALOGUE.find("R-32");
        Refrigerant r125 = CATALOGUE.find("R-125");
        Map<Refrigerant, Double> one = new LinkedHashMap<>();
        one.put(r32, 0.3);
        one.put(r125, 0.7);
        Map<Refrigerant, Double> other = new LinkedHashMap<>();
        other.put(r125, 0.7);
        other.put(r32, 0.3);
        assertThat(Composition.ofMassFractions(one))
                .isEqualTo(Composition.ofMassFractions(other))
                .hasSameHashCodeAs(Composition.ofMassFractions(other));
        assertThat(Composition.ofMassFractions(one)).isNotEqualTo(Composition.ofMoleFractions(one));
    }

    @Test
    void ownEntriesAreFoundInAnySpellingAndNoneReplacesOurs() {
        Catalogue grown = CATALOGUE.with(List.of(OWN));
        assertThat(grown.find("field7")).isSameAs(OWN);
        assertThat(grown.find("r410a")).isSameAs(CATALOGUE.find("R-410A"));
        assertThatThrownBy(() -> CATALOGUE.find("Field 7")).isInstanceOf(UnknownRefrigerantException.class);
        assertThatThrownBy(() -> grown.with(List.of(OWN))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Refrigerant.substance("R 410 A", "x", 0.1, "x"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aListOfBlendsIsRead() {
        Catalogue grown = CATALOGUE
                .with(List.of(OWN))
                .withBlends("own.csv", list("shop 1,R-32,60\nshop 1,R-125,40\nshop 2,Field 7,50\nshop 2,R-290,50\n"));
        assertThat(grown.find("Shop 1").composition().components()).hasSize(2);
        assertThat(grown.find("shop 2").composition().components().get(0).substance())
                .isSameAs(OWN);
        assertThat(grown.blends()).hasSize(CATALOGUE.blends().size() + 2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 | shop 1,R-32,60;shop 1,R-125,41",
                "3 | shop 1,R-32,60;shop 1,R-32,40",
                "3 | shop 1,R-32,60;shop 1,R-9999,40",
                "2 | R-410A,R-32,60;R-410A,R-125,40",
                "4 | shop 1,R-32,60;shop 2,R-32,100;shop 1,R-125,40",
                "3 | shop 1,R-32,60;shop 1,R-125,x"
            })
    void aListThatIsWrongIsRefusedWithItsLine(int line, String rows) {
        assertThatThrownBy(() -> CATALOGUE.withBlends("own.csv", list(rows.replace(';', '\n') + "\n")))
                .isInstanceOfSatisfying(
                        ResourceFormatException.class, e -> assertThat(e.line()).isEqualTo(line));
    }

    private static byte[] list(String rows) {
        return ("blend,component,mass_percent\n" + rows).getBytes(StandardCharsets.UTF_8);
    }
}
