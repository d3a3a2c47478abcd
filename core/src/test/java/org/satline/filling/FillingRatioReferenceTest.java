package org.satline.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.MissingEquationException;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * Every printed filling ratio of ADR 2025, 4.1.4.1, P200 table 2, against the smallest of the instruction's own formulas: 0.95 of the
 * liquid density at 50 degC, not liquid-full at 60 degC, settled pressure at 65 degC within the test pressure.
 */
@Tag("reference")
class FillingRatioReferenceTest {
    private static final FillAssessor ASSESSOR = FillAssessor.standard();
    private static final FillingRatioTable TABLE = FillingRatioTable.standard();
    private static final List<String> FORMULAS =
            List.of("liquid-95-50C", "not-liquid-full-60C", "settled-pressure-65C");

    private static final String ABOVE = "printed above the formula: ";
    private static final String BELOW = "printed below the formula, on the safe side: ";

    /** Rows beyond half a printed digit: printed less computed, kg/L, and what is known of the reason; open where none was found. */
    private static final Map<String, Difference> LISTED = Map.ofEntries(
            listed(
                    "R-13 at 100 bar",
                    0.009,
                    ABOVE
                            + "supercritical density, steep in pressure: 1 % of the pressure moves it by about as much; open"),
            listed("R-13 at 250 bar", 0.005, ABOVE + "rounded up"),
            listed("R-14 at 300 bar", 0.006, ABOVE + "just over half a digit"),
            listed("R-21 at 10 bar", -0.010, BELOW + "open"),
            listed("R-32 at 48 bar", 0.007, ABOVE + "liquid-full at 60 degC governs; open"),
            listed("R-40 at 17 bar", -0.005, BELOW + "rounded down"),
            listed("R-114 at 10 bar", -0.005, BELOW + "rounded down"),
            listed("R-115 at 25 bar", -0.018, BELOW + "open"),
            listed(
                    "R-125 at 49 bar",
                    0.078,
                    ABOVE + "it is 0.95 rho(50 degC); liquid-full at 60 degC would ask for 0.87, the row of 35 bar"),
            listed("R-E170 at 18 bar", -0.007, BELOW + "rounded down"),
            listed("R-161 at 30 bar", -0.048, BELOW + "open"),
            listed("R-404A at 36 bar", 0.007, ABOVE + "liquid-full at 60 degC governs; open"),
            listed("R-500 at 22 bar", 0.018, ABOVE + "open"),
            listed("R-502 at 31 bar", -0.012, BELOW + "open"),
            listed("R-503 at 42 bar", -0.005, BELOW + "rounded down"),
            listed(
                    "R-503 at 100 bar",
                    0.012,
                    ABOVE
                            + "supercritical density, steep in pressure: 1 % of the pressure moves it by about as much; open"),
            listed("R-717 at 29 bar", 0.005, ABOVE + "rounded up"),
            listed("R-744 at 190 bar", 0.006, ABOVE + "just over half a digit"));

    private record Difference(double printedLessComputed, String reason) {}

    record Row(Refrigerant refrigerant, FillingRatioTable.Entry entry) {
        @Override
        public String toString() {
            return refrigerant.designation() + " at " + Math.round(entry.testPressureBar()) + " bar";
        }
    }

    private static Map.Entry<String, Difference> listed(String row, double difference, String reason) {
        return Map.entry(row, new Difference(difference, reason));
    }

    static Stream<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            TABLE.entriesOf(refrigerant.designation()).forEach(entry -> rows.add(new Row(refrigerant, entry)));
        }
        return rows.stream().filter(row -> hasEquation(row.refrigerant()));
    }

    private static boolean hasEquation(Refrigerant refrigerant) {
        try {
            Samples.curve(refrigerant.designation());
            return true;
        } catch (MissingEquationException e) {
            return false;
        }
    }

    private static FillAssessment assess(Row row) {
        // water capacity 999 kg, so that the volume is 1000 L and kilograms over 1000 are kg/L
        CylinderStamps stamps = Samples.european(row.entry().testPressureBar())
                .with(Stamp.WATER_CAPACITY, Mass.ofKilograms(999))
                .with(Stamp.TARE, Mass.ofKilograms(500));
        return ASSESSOR.assess(Samples.question(stamps, row.refrigerant().designation())
                .under(ASSESSOR.rules().jurisdiction("adr")));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theFormulasGiveThePrintedFigure(Row row) {
        FillAssessment assessment = assess(row);
        double computed = FORMULAS.stream()
                        .map(ASSESSOR.rules()::rule)
                        .mapToDouble(
                                rule -> Samples.kilograms(assessment.answers().outcomeOf(rule))
                                        .orElse(Double.POSITIVE_INFINITY))
                        .min()
                        .orElseThrow()
                / 1000;
        Difference listed = LISTED.get(row.toString());
        double difference = row.entry().ratio() - computed;
        if (listed == null) {
            assertThat(difference).isCloseTo(0, within(0.005)); // half of the last printed digit
        } else {
            // the listed difference has three decimals; a row that came within half a digit would no longer belong on
            // the list
            assertThat(difference).as(listed.reason()).isCloseTo(listed.printedLessComputed(), within(0.0008));
            assertThat(Math.abs(difference)).isGreaterThan(0.005);
        }
    }

    /** P200(5)(c): the printed test pressure of a low-pressure gas is at least p(65 degC) absolute less 1 bar. No row is short of it. */
    @ParameterizedTest
    @MethodSource("rows")
    void thePrintedTestPressureIsEnough(Row row) {
        RuleOutcome outcome = assess(row).answers().outcomeOf(ASSESSOR.rules().rule("test-pressure-65C"));
        if (outcome instanceof RuleOutcome.PressureTest test) {
            assertThat(test.passed()).isTrue();
        }
    }

    @Test
    void mostRowsOfTheTableAreLookedAt() {
        assertThat(rows()).hasSizeGreaterThan(50);
        assertThat(rows().map(Row::toString)).containsAll(LISTED.keySet());
    }
}
