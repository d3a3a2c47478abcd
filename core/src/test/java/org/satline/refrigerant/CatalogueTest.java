package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equation.EquationLibrary;

class CatalogueTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();

    @Test
    void holdsAllSubstancesAndBlends() {
        assertThat(CATALOGUE.substances()).hasSize(75).noneMatch(Refrigerant::isBlend);
        assertThat(CATALOGUE.blends()).hasSize(150).allMatch(Refrigerant::isBlend);
        assertThat(CATALOGUE.all()).hasSize(225).doesNotHaveDuplicates();
    }

    @Test
    void everyThreadGetsTheSameEntry() {
        List<Refrigerant> found = IntStream.range(0, 64)
                .parallel()
                .mapToObj(i -> CATALOGUE.find(i % 2 == 0 ? "R-513A" : "r513a"))
                .toList();
        assertThat(found).allSatisfy(entry -> assertThat(entry).isSameAs(found.get(0)));
        assertThat(found.get(0).composition().components().get(0).substance()).isSameAs(CATALOGUE.find("R-1234yf"));
    }

    @Test
    void fiftyFourSubstancesAndOneHundredThirtyEightBlendsHaveEquations() {
        EquationLibrary library = EquationLibrary.standard();
        assertThat(CATALOGUE.substances())
                .filteredOn(s -> library.hasEquation(s.designation()))
                .hasSize(54);
        assertThat(CATALOGUE.blends())
                .filteredOn(Refrigerant::hasComposition)
                .filteredOn(blend -> blend.composition().components().stream()
                        .allMatch(c -> library.hasEquation(c.substance().designation())))
                .hasSize(138);
    }

    @Test
    void everyEntrySaysWhereItComesFrom() {
        assertThat(CATALOGUE.all()).allSatisfy(entry -> {
            assertThat(entry.source()).isNotBlank();
            assertThat(entry.name()).isNotBlank();
            assertThat(entry.dataVersion()).isEqualTo(CATALOGUE.dataVersion());
            assertThat(entry.gwp()).allSatisfy(gwp -> assertThat(gwp.basis()).isNotBlank());
        });
    }

    @Test
    void everyEntryIsFoundByItsOwnDesignationHoweverWritten() {
        for (Refrigerant entry : CATALOGUE.all()) {
            String bare = entry.designation().replace("-", "").replace("(", "").replace(")", "");
            assertThat(List.of(entry.designation(), bare, bare.substring(1)))
                    .allSatisfy(spelling -> assertThat(CATALOGUE.find(spelling)).isSameAs(entry));
        }
    }

    @Test
    void everySubstanceIsFoundByItsNames() {
        for (Refrigerant substance : CATALOGUE.substances()) {
            assertThat(CATALOGUE.find(substance.name())).isSameAs(substance);
            assertThat(substance.otherNames())
                    .allSatisfy(name -> assertThat(CATALOGUE.find(name)).isSameAs(substance));
        }
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(quoteCharacter = '`', textBlock = """
            R454B,      R-454B
            r-454b,     R-454B
            454b,       R-454B
            R 454 B,    R-454B
            R\u2011454B, R-454B
            R_454b,     R-454B
            HFC-134a,   R-134a
            HCFC22,     R-22
            HFO-1234yf, R-1234yf
            HC-290,     R-290
            CFC-12,     R-12
            HFO1234ze(E), R-1234ze(E)
            r1234zee,   R-1234ze(E)
            ammonia,    R-717
            Propane,    R-290
            ISOBUTANE,  R-600a
            CO2,        R-744
            carbon dioxide, R-744
            dimethyl ether, R-E170
            re170,      R-E170
            RC318,      R-C318
            air,        R-729
            `1,1,1,2-tetrafluoroethane`, R-134a
            """)
    void spellingHabitsDoNotMatter(String spelling, String designation) {
        assertThat(CATALOGUE.find(spelling).designation()).isEqualTo(designation);
    }

    @ParameterizedTest
    @CsvSource({
        "R1234ze, R-1234ze(E), R-1234ze(Z)",
        "R-1336mzz, R-1336mzz(E), R-1336mzz(Z)",
        "410, R-410A, R-410B",
        "R-513, R-513A, R-513B"
    })
    void nameOfSeveralIsRefusedWithAllOfThem(String name, String first, String second) {
        assertThatThrownBy(() -> CATALOGUE.find(name))
                .isInstanceOfSatisfying(
                        UnknownRefrigerantException.class,
                        e -> assertThat(e.suggestions()).containsExactly(first, second))
                .hasMessageContainingAll(name, first, second);
    }

    @ParameterizedTest
    @CsvSource({
        "R-454D, R-454B",
        "R-134, R-134a",
        "R-401a., R-401A",
        "R-1234fy, R-1234yf",
        "R-411O, R-411A",
        "proppane, R-290",
        "amonia, R-717",
        "R-1233zd, R-1233zd(E)"
    })
    void unknownNameOffersTheNearest(String name, String expected) {
        assertThatThrownBy(() -> CATALOGUE.find(name))
                .isInstanceOfSatisfying(
                        UnknownRefrigerantException.class,
                        e -> assertThat(e.suggestions()).contains(expected).hasSizeLessThanOrEqualTo(4));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"12,5", "13.4a", "R-32/R-125", "R-32+125", "R-4१0A", "-", "", " ", "R", "xyzzy", "R-22\u0000"})
    void doubtfulTextIsNeverTakenForADesignation(String text) {
        assertThatThrownBy(() -> CATALOGUE.find(text)).isInstanceOf(UnknownRefrigerantException.class);
    }

    /** Cyrillic letters that look like Latin ones, full-width and Arabic-Indic digits, combining marks, a bidirectional mark. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0418\u0437\u043Ebutane",
                "\u0420-22",
                "R-22\u0430",
                "R-\uFF12\uFF12",
                "R-\u0664\u0661\u0660A",
                "isob\u00FCtane",
                "propane\u0301",
                "\u202Epropane",
                "butane\uD835\uDC4E"
            })
    void lettersOfAnotherScriptAreRefusedNotLeftOut(String name) {
        assertThatThrownBy(() -> CATALOGUE.find(name))
                .isInstanceOfSatisfying(
                        UnknownRefrigerantException.class,
                        e -> assertThat(e.suggestions()).isEmpty());
    }

    /** Names of nobody: what is like no designation and no chemical name gets no advice at all. */
    @ParameterizedTest
    @ValueSource(strings = {"Frostolin", "Coldex 99", "Kaltex MX", "Arctic blue", "R-99999", "Polarin 12345", "qqqqqq"})
    void madeUpTradeNamesGetNoSuggestions(String name) {
        assertThatThrownBy(() -> CATALOGUE.find(name))
                .isInstanceOfSatisfying(
                        UnknownRefrigerantException.class,
                        e -> assertThat(e.suggestions()).isEmpty());
    }

    @Test
    void hugeTextIsRefusedQuicklyAndQuotedInPart() {
        assertThatThrownBy(() -> CATALOGUE.find("R-4".repeat(1_000_000)))
                .isInstanceOf(UnknownRefrigerantException.class)
                .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(200));
    }

    @Test
    void openBlendSaysThatItsProportionsMustBeStated() {
        Refrigerant open = CATALOGUE.find("R-400");
        assertThat(open.hasComposition()).isFalse();
        assertThat(open.gwp()).isEmpty();
        assertThatThrownBy(open::composition)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContainingAll("R-400", "R-12/R-114", "no fixed composition");
        assertThatThrownBy(open::molarMassKilogramsPerMole).hasMessageContaining("no fixed composition");
    }

    @Test
    void substanceConsistsOfItself() {
        Refrigerant substance = CATALOGUE.find("R-32");
        assertThat(substance.composition().components()).containsExactly(new Composition.Component(substance, 1, 1));
        assertThat(substance.composition().molarMassKilogramsPerMole())
                .isEqualTo(substance.molarMassKilogramsPerMole());
    }

    @Test
    void tolerancesStandBesideTheComponentsTheyBelongTo() {
        // ANSI/ASHRAE 34 as printed in ASHRAE Handbook Fundamentals 2021 ch. 29 Table 2: R-410A (+0.5,-1.5/+1.5,-0.5)
        assertThat(CATALOGUE.find("R-410A").published().tolerances())
                .containsExactly(new MassTolerance(0.015, 0.005), new MassTolerance(0.005, 0.015));
        assertThat(CATALOGUE.find("R-405A").note()).contains("sum of R-152a and R-142b");
        assertThat(CATALOGUE.blends())
                .filteredOn(blend -> !blend.published().tolerances().isEmpty())
                .hasSizeGreaterThan(100)
                .allSatisfy(blend -> assertThat(blend.published().tolerances())
                        .hasSameSizeAs(blend.composition().components()));
    }

    @Test
    void dewPointIsNotBelowBubblePoint() {
        assertThat(CATALOGUE.blends())
                .filteredOn(b -> b.published().dewPoint().isPresent())
                .hasSizeGreaterThan(100)
                .allSatisfy(b -> assertThat(b.published().dewPoint().get())
                        .isGreaterThanOrEqualTo(b.published().bubblePoint().orElseThrow()));
    }

    @Test
    void ozoneDepletionOfABlendIsTheMeanByMass() {
        double expected = 0.488 * 0.055 + 0.512 * 0.6; // R-502: R-22 and R-115, ODP of the Montreal Protocol
        assertThat(CATALOGUE.find("R-502").ozoneDepletionPotential().orElseThrow())
                .isCloseTo(expected, within(1e-12));
        assertThat(CATALOGUE.find("R-410A").ozoneDepletionPotential().orElseThrow())
                .isZero();
    }
}
