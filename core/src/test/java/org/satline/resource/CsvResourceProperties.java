package org.satline.resource;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

class CsvResourceProperties {
    @Property
    void anyQuotedTextComesBackAsItWas(@ForAll String text) {
        String readable = new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        String file = "a,b\n\"" + readable.replace("\"", "\"\"") + "\",end\n";
        CsvResource table = CsvResource.parse("t.csv", file.getBytes(StandardCharsets.UTF_8), "a", "b");
        assertThat(table.rows().get(0).cell("a")).isEqualTo(readable);
        assertThat(table.rows().get(0).text("b")).isEqualTo("end");
    }

    @Property
    void decimalNumbersAreTheNearestDoubles(
            @ForAll @BigRange(min = "-1e6", max = "1e6") @Scale(12) BigDecimal number, @ForAll boolean percent) {
        String file = "a\n" + number.toPlainString() + "\n";
        CsvResource.Row row = CsvResource.parse("t.csv", file.getBytes(StandardCharsets.UTF_8), "a")
                .rows()
                .get(0);
        // BigDecimal rounds the exact decimal value once
        double expected = percent ? number.movePointLeft(2).doubleValue() : number.doubleValue();
        assertThat(percent ? row.percent("a") : row.number("a")).isEqualTo(expected);
    }

    @Property
    void anyDoubleIsReadBack(@ForAll double number) {
        String file = "a\n" + number + "\n";
        assertThat(CsvResource.parse("t.csv", file.getBytes(StandardCharsets.UTF_8), "a")
                        .rows()
                        .get(0)
                        .number("a"))
                .isEqualTo(number);
    }

    @Property
    void anyBytesGiveATableOrAFormatErrorAndNothingElse(@ForAll byte[] bytes) {
        try {
            assertThat(CsvResource.parse("t.csv", bytes, "a").name()).isEqualTo("t.csv");
        } catch (ResourceFormatException e) {
            assertThat(e).hasMessageStartingWith("t.csv");
        }
    }
}
