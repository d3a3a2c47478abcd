package org.satline.resource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The form is RFC 4180 with comment lines in front; everything else must be refused with file and line. */
class CsvResourceTest {
    private static CsvResource parse(String text) {
        return CsvResource.parse("stock.csv", text.getBytes(StandardCharsets.UTF_8), "name", "value");
    }

    private static CsvResource.Row row(String text) {
        return parse("name,value\n" + text).rows().get(0);
    }

    @Test
    void readsCommentsHeaderAndRowsInAnyColumnOrder() {
        CsvResource table = parse("# first\n# second, with comma\nvalue,name\n1.5,a\n-2e3,b\n");
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(0).text("name")).isEqualTo("a");
        assertThat(table.rows().get(1).number("value")).isEqualTo(-2000);
        assertThat(table.rows().get(1).line()).isEqualTo(5);
    }

    @Test
    void readsQuotedCellsOfRfc4180() {
        CsvResource table = parse("name,value\r\n\"a, \"\"b\"\"\nc\",1\r\nd,2");
        assertThat(table.rows().get(0).text("name")).isEqualTo("a, \"b\"\nc");
        assertThat(table.rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void hashAfterTheHeaderIsData() {
        assertThat(row("#1,2").text("name")).isEqualTo("#1");
    }

    @Test
    void perCentBecomesTheExactFraction() {
        assertThat(row("a,68.9").percent("value")).isEqualTo(0.689);
        assertThat(row("a,0").percent("value")).isZero();
        assertThatThrownBy(() -> row("a,1e2").percent("value")).hasMessageContaining("is not a number");
    }

    @Test
    void emptyCellIsNoNumber() {
        assertThat(row("a,").optionalNumber("value")).isEmpty();
        assertThatThrownBy(() -> row("a,").number("value")).hasMessage("stock.csv:2: value is empty; give a value");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "1d",
                "1f",
                "0x10",
                "0x1p3",
                "1e999",
                "--1",
                "1.2.3",
                "e5",
                ".",
                "+",
                "12 3",
                "١٢",
                "one"
            })
    void refusesWhatIsNoFiniteDecimalNumber(String cell) {
        assertThatThrownBy(() -> row("a," + cell).number("value"))
                .isInstanceOf(ResourceFormatException.class)
                .hasMessageStartingWith("stock.csv:2: value \"" + cell + "\" is not a number");
    }

    @Test
    void decimalCommaGetsItsOwnAdvice() {
        assertThatThrownBy(() -> row("a,\"1,0\"").number("value"))
                .hasMessage("stock.csv:2: value \"1,0\" is not a number; use a point as decimal mark");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            name,value~a,1,2        | stock.csv:2: has 3 cells, expected 2
            name,value~a            | stock.csv:2: has 1 cell, expected 2
            name,value~~a,1         | stock.csv:2: is an empty line
            name,value~a,1~         | nothing wrong
            name,value~a ,1         | stock.csv:2: blank around cell
            name,value~a,b\"c       | stock.csv:2: quote inside a cell
            name,value~\"a\"b,1     | stock.csv:2: text after a closing quote
            name,value~\"a~b,1      | stock.csv:2: quote is not closed
            name,price~a,1          | stock.csv:1: unknown column \"price\"
            name~a                  | stock.csv:1: column \"value\" is missing
            name,value,name~a,1,b   | stock.csv:1: column \"name\" stands twice
            # only~# comments       | has no header row
            Name,value~a,1          | stock.csv:1: unknown column \"Name\"
            """)
    void saysWhatIsWrongAndWhere(String text, String expected) {
        String content = text.strip().replace('~', '\n');
        if (expected.equals("nothing wrong")) {
            assertThat(parse(content).rows()).hasSize(1);
            return;
        }
        assertThatThrownBy(() -> parse(content))
                .isInstanceOf(ResourceFormatException.class)
                .hasMessageContaining(expected);
    }

    @Test
    void refusesByteOrderMarkLoneCarriageReturnAndOtherEncodings() {
        assertThatThrownBy(() -> parse("\uFEFFname,value\n")).hasMessageContaining("byte order mark");
        assertThatThrownBy(() -> parse("name,value\ra,1")).hasMessageContaining("carriage return alone");
        byte[] latin = "name,value\n°,1".getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> CsvResource.parse("stock.csv", latin, "name", "value"))
                .isInstanceOf(ResourceFormatException.class)
                .hasMessageContaining("is not UTF-8");
        assertThatThrownBy(() -> parse("")).hasMessageContaining("has no header row");
    }

    /** However long a cell, a row or a file is: refused by a look at its length. */
    @Test
    void workIsBounded() {
        assertRefused(() -> row("a," + "1".repeat(41)).number("value"), 2);
        assertRefused(() -> row("a," + "1".repeat(9999)).percent("value"), 2);
        assertRefused(() -> row("a," + "1".repeat(10_001)), 2);
        assertRefused(() -> row("a,\"" + "\"\"".repeat(10_001) + "\""), 2);
        assertRefused(() -> parse("name,value\n" + ",".repeat(300)), 2);
        assertRefused(() -> CsvResource.parse("stock.csv", new byte[16_000_001], "name", "value"), 0);
        assertThat(row("a," + "1".repeat(40)).number("value")).isEqualTo(1.1111111111111112E39);
    }

    private static void assertRefused(ThrowingCallable call, int line) {
        assertThatThrownBy(call)
                .isInstanceOfSatisfying(
                        ResourceFormatException.class, e -> assertThat(e.line()).isEqualTo(line));
    }

    @Test
    void columnsThatMayBeMissingAreEmpty() {
        byte[] file = "name\na\n".getBytes(StandardCharsets.UTF_8);
        CsvResource table = CsvResource.parse("stock.csv", file, new String[] {"name"}, new String[] {"value"});
        assertThat(table.rows().get(0).isEmpty("value")).isTrue();
        assertThatThrownBy(() -> table.rows().get(0).number("value")).isInstanceOf(ResourceFormatException.class);
        assertThatThrownBy(() -> table.rows().get(0).cell("price")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void missingFileIsNamed() {
        assertThatThrownBy(() -> CsvResource.read(CsvResourceTest.class, "absent.csv", "name"))
                .isInstanceOfSatisfying(ResourceFormatException.class, e -> {
                    assertThat(e.resource()).isEqualTo("absent.csv");
                    assertThat(e.line()).isZero();
                });
    }

    @Test
    void askingForAColumnThatWasNotDeclaredIsTheCallersMistake() {
        assertThatThrownBy(() -> row("a,1").cell("weight")).isInstanceOf(IllegalArgumentException.class);
    }
}
