package org.satline.resource;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

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
    void anyBytesGiveATableOrAFormatErrorAndNothingElse(@ForAll byte[] bytes) {
        try {
            assertThat(CsvResource.parse("t.csv", bytes, "a").name()).isEqualTo("t.csv");
        } catch (ResourceFormatException e) {
            assertThat(e).hasMessageStartingWith("t.csv");
        }
    }
}
