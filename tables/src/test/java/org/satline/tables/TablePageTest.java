package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TablePageTest {
    private static final TableCurve CURVE = Tables.of("R-134a");

    @Test
    void csvHasHeadNamesAndRows() {
        String csv = TablePage.of(CURVE, PageUnits.SI, -20, 30, 10).toCsv();
        assertThat(csv).startsWith("# R-134a, saturation, certified table");
        assertThat(csv).contains("# source: ", "# reference: IIR", "certificate of table ");
        // ASHRAE Handbook Fundamentals 2021 (SI), chapter 2, example 2: 132.73 kPa at -20 degC, 770.2 kPa at 30 degC
        assertThat(csv).contains("\n-20.00,132.7", "\n30.00,770.");
        assertThat(csv.lines().filter(line -> !line.startsWith("#"))).hasSize(7);
    }

    @Test
    void textIsAlignedInBothUnitSystems() {
        for (PageUnits units : PageUnits.values()) {
            String text = TablePage.of(CURVE, units, 0, 10, 5).toText();
            List<String> lines = text.lines().toList();
            int rows = lines.indexOf("") + 1;
            assertThat(lines.subList(rows, rows + 5).stream()
                            .mapToInt(String::length)
                            .distinct())
                    .hasSize(1);
            assertThat(rows).as("lines before the rows").isLessThan(8);
            assertThat(lines.subList(rows + 5, lines.size()))
                    .anyMatch(line -> line.startsWith("certificate of table "));
        }
    }

    @Test
    void stepsThatMakeNoTableAreRefused() {
        assertThatThrownBy(() -> TablePage.of(CURVE, PageUnits.SI, 0, 10, 0)).hasMessageContaining("step above 0");
        assertThatThrownBy(() -> TablePage.of(CURVE, PageUnits.SI, 10, 0, 1)).hasMessageContaining("first temperature");
        assertThatThrownBy(() -> TablePage.of(CURVE, PageUnits.SI, Double.NaN, 0, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
