package org.satline.program.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvRowsTest {
    private static final List<String> REQUIRED = List.of("id", "value");
    private static final List<String> OPTIONAL = List.of("remark");

    @TempDir
    Path folder;

    @Test
    void findsColumnsByNameInAnyOrder() throws IOException {
        List<CsvRow> rows = rows("value,remark,id\n1.5,\"a, b\",x\n\n-2e3,,y\n");
        assertThat(rows).extracting(row -> row.raw("id")).containsExactly("x", "y");
        assertThat(rows).extracting(row -> row.number("value").orElseThrow()).containsExactly(1.5, -2000.0);
        assertThat(rows.get(0).text("remark")).contains("a, b");
        assertThat(rows.get(1).text("remark")).isEmpty();
        assertThat(rows.get(1).line()).isEqualTo(4);
    }

    @Test
    void anOptionalColumnMayBeMissing() throws IOException {
        assertThat(rows("id,value\nx,1\n").get(0).text("remark")).isEmpty();
    }

    @Test
    void readsAFileWithByteOrderMarkAndWindowsLineEnds() throws IOException {
        List<CsvRow> rows = rows("\uFEFFid,value\r\nx,1\r\ny,2\r\n");
        assertThat(rows).extracting(row -> row.raw("id")).containsExactly("x", "y");
    }

    @Test
    void aRowOfAnotherLengthIsHandedOutWithItsFault() throws IOException {
        List<CsvRow> rows = rows("id,value\nx\ny,1,2\nz,3\n");
        assertThat(rows.get(0).fault()).contains("line 2 has 1 cell, the header has 2");
        assertThat(rows.get(1).fault()).contains("line 3 has 3 cells, the header has 2");
        assertThat(rows.get(2).fault()).isEmpty();
    }

    @Test
    void refusesUnknownMissingAndRepeatedColumns() {
        assertThatThrownBy(() -> rows("id,value,colour\n"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("in.csv:1: unknown column \"colour\"; allowed: [id, value, remark]");
        assertThatThrownBy(() -> rows("id;value\nx;1\n"))
                .hasMessageContaining("separated by semicolons; separate them by commas");
        assertThatThrownBy(() -> rows("id\n")).hasMessageContaining("column \"value\" is missing");
        assertThatThrownBy(() -> rows("id,id,value\n")).hasMessageContaining("column \"id\" stands there twice");
        assertThatThrownBy(() -> rows("")).hasMessageContaining("is empty");
    }

    @Test
    void refusesAnOpenQuoteAndNamesTheLine() {
        assertThatThrownBy(() -> rows("id,value\nx,1\ny,\"2\nz,3\n"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("in.csv:")
                .hasMessageContaining("broken CSV");
    }

    @Test
    void refusesTextThatIsNotUtf8() throws IOException {
        Path file = folder.resolve("in.csv");
        Files.write(file, "id,value\nx\u00e9,1\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> drained(file))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("in.csv");
    }

    @Test
    void refusesAMissingFileAndAFolder() {
        assertThatThrownBy(() -> CsvRows.of(folder.resolve("none.csv"), REQUIRED, OPTIONAL))
                .isInstanceOf(BadInputException.class)
                .hasMessageEndingWith("none.csv: cannot be read (no such file)");
        assertThatThrownBy(() -> CsvRows.of(folder, REQUIRED, OPTIONAL)).hasMessageContaining("is a folder");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-inf", "1e999", "0x10", "1f", "1d", "12 K", "1;5", "--1", "e5", "."})
    void aNumberIsAFiniteDecimalNumber(String text) throws IOException {
        CsvRow row = rows("id,value\nx," + text + "\n").get(0);
        assertThatThrownBy(() -> row.number("value"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("value \"" + text + "\" is not a finite decimal number");
    }

    @Test
    void cellsAndRowsHaveAnEnd() throws IOException {
        assertThat(rows("id,value\nx," + "1".repeat(10_000) + "\n")).hasSize(1);
        String open = "\"" + "a\n".repeat(60_000);
        for (String endless : List.of("x".repeat(10_001), ",".repeat(100_001), open, "\"\n\",".repeat(30_000))) {
            assertThatThrownBy(() -> rows("id,value\nx," + endless + "\n")).isInstanceOf(BadInputException.class);
            assertThatThrownBy(() -> rows(endless)).isInstanceOf(BadInputException.class);
        }
    }

    /** Half a second for 10 000 digits and weeks for 20 million took a pattern whose work grew with the square. */
    @Test
    void aLongNumberIsRefusedAtOnce() throws IOException {
        CsvRow row = rows("id,value\nx," + "1".repeat(9_999) + "y\n").get(0);
        assertTimeout(Duration.ofMillis(500), () -> {
            for (int i = 0; i < 100; i++) {
                assertThatThrownBy(() -> row.number("value")).isInstanceOf(IllegalArgumentException.class);
            }
        });
    }

    private List<CsvRow> rows(String content) throws IOException {
        Path file = folder.resolve("in.csv");
        Files.writeString(file, content);
        return drained(file);
    }

    private static List<CsvRow> drained(Path file) throws IOException {
        List<CsvRow> all = new ArrayList<>();
        try (CsvRows rows = CsvRows.of(file, REQUIRED, OPTIONAL)) {
            rows.forEachRemaining(all::add);
        }
        return all;
    }
}
