package org.satline.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.EquationLibrary;
import org.satline.resource.CsvResource;

/** Molar masses against the atomic weights, and those of the blends against the printed ones. */
@Tag("reference")
class MolarMassReferenceTest {
    /** IUPAC standard atomic weights, abridged values of 2021 (from memory), g/mol. */
    private static final Map<String, Double> ATOMIC_WEIGHTS = Map.ofEntries(
            Map.entry("H", 1.008),
            Map.entry("He", 4.0026),
            Map.entry("C", 12.011),
            Map.entry("N", 14.007),
            Map.entry("O", 15.999),
            Map.entry("F", 18.998),
            Map.entry("Ne", 20.180),
            Map.entry("S", 32.06),
            Map.entry("Cl", 35.45),
            Map.entry("Ar", 39.95),
            Map.entry("Br", 79.904),
            Map.entry("I", 126.90));

    /** Blends whose printed molar mass does not follow from the printed composition within half of its last digit. */
    private static final Map<String, String> OPEN = Map.of(
            "R-421A", "111.8 printed, 111.746 by the composition",
            "R-422C", "116.3 printed, 113.399 by the composition: too far off for anything but a misprint",
            "R-441A", "48.2 printed, 48.305 by the composition",
            "R-442A", "81.77 printed, 81.76496 by the composition",
            "R-444B", "72.78 printed, 72.760 by the composition",
            "R-447A", "63.04 printed, 63.0454 by the composition",
            "R-502", "112.0 printed, 111.628 by the composition",
            "R-503", "87.5 printed, 87.247 by the composition");

    static Stream<Refrigerant> substancesWithFormula() {
        return Catalogue.standard().substances().stream()
                .filter(substance -> substance.formula().isPresent());
    }

    @ParameterizedTest
    @MethodSource("substancesWithFormula")
    void substanceWeighsWhatItsAtomsWeigh(Refrigerant substance) {
        double atoms = new FormulaReader(substance.formula().orElseThrow()).weigh();
        // papers of the equations use the atomic weights of their years; the handbook prints 0.1 g/mol, some of them
        // cut or rounded up
        double tolerance = EquationLibrary.standard().hasEquation(substance.designation()) ? 0.02 : 0.06;
        assertThat(substance.molarMassKilogramsPerMole() * 1000).isCloseTo(atoms, within(tolerance));
    }

    @ParameterizedTest
    @MethodSource("substancesWithFormula")
    void substanceWeighsTheSameAsInItsEquation(Refrigerant substance) {
        EquationLibrary library = EquationLibrary.standard();
        if (library.hasEquation(substance.designation())) {
            assertThat(substance.molarMassKilogramsPerMole())
                    .isEqualTo(library.pure(substance.designation()).molarMass());
        }
    }

    /** The figures as printed, with their digits: ASHRAE Handbook Fundamentals 2021 ch. 29 Table 2 or as the entry says. */
    static Stream<Arguments> printedMolarMasses() {
        return CsvResource.read(
                        Catalogue.class,
                        "blends.csv",
                        "designation",
                        "safety_group",
                        "bubble_point_degC",
                        "dew_point_degC",
                        "azeotropic_from_degC",
                        "azeotropic_to_degC",
                        "molar_mass_g_per_mol",
                        "composition_confirmation",
                        "source",
                        "note")
                .rows()
                .stream()
                .filter(row -> !row.isEmpty("molar_mass_g_per_mol"))
                .map(row -> Arguments.of(row.text("designation"), row.text("molar_mass_g_per_mol")));
    }

    @ParameterizedTest(name = "{0}: {1} g/mol")
    @MethodSource("printedMolarMasses")
    void blendWeighsWhatIsPrinted(String designation, BigDecimal printed) {
        double computed = Catalogue.standard().find(designation).molarMassKilogramsPerMole() * 1000;
        double halfOfLastDigit = printed.ulp().doubleValue() / 2;
        assertThat(Math.abs(computed - printed.doubleValue()) > halfOfLastDigit)
                .as(
                        "%s: computed %s, printed %s, listed as open: %s",
                        designation, computed, printed, OPEN.get(designation))
                .isEqualTo(OPEN.containsKey(designation));
    }

    /** Adds up the atomic weights of a formula such as {@code CF3CH=CHF} or {@code -(CF2)4-}. */
    private static final class FormulaReader {
        private final String formula;
        private int at;

        FormulaReader(String formula) {
            this.formula = formula.replace("-", "").replace("=", "");
        }

        double weigh() {
            double sum = 0;
            while (at < formula.length() && formula.charAt(at) != ')') {
                double part;
                if (formula.charAt(at) == '(') {
                    at++;
                    part = weigh();
                    at++;
                } else {
                    int start = at++;
                    while (at < formula.length() && Character.isLowerCase(formula.charAt(at))) {
                        at++;
                    }
                    part = ATOMIC_WEIGHTS.getOrDefault(formula.substring(start, at), Double.NaN);
                }
                sum += part * count();
            }
            return sum;
        }

        private int count() {
            int start = at;
            while (at < formula.length() && Character.isDigit(formula.charAt(at))) {
                at++;
            }
            return start == at ? 1 : Integer.parseInt(formula.substring(start, at));
        }
    }
}
