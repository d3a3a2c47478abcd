package org.satline.resource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of files of texts, as the class states it. */
class TextResourceTest {
    private static TextResource parsed(String text) {
        return TextResource.parse("words.properties", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void readsTextsInOrderAndPassesComments() {
        TextResource texts = parsed("# head\na.b = one = two\n\n# next\nc-1 = größer als {limit}\nlast = # no comment");
        assertThat(texts.entries())
                .containsExactly(
                        new TextResource.Entry("a.b", "one = two", 2),
                        new TextResource.Entry("c-1", "größer als {limit}", 5),
                        new TextResource.Entry("last", "# no comment", 6));
        assertThat(texts.fault(texts.entries().get(1), "is odd")).hasMessage("words.properties:5: c-1: is odd");
    }

    @Test
    void aFileWithoutTextsIsEmptyAndOneThatIsNotThereIsNone() {
        assertThat(parsed("").entries()).isEmpty();
        assertThat(TextResource.find(TextResourceTest.class, "nowhere.properties"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a = 1;a = 2        | 2",
                "a = 1;;b           | 3",
                "a=1                | 1",
                "a =                | 1",
                "# c;' a = 1'       | 2",
                "'a = 1 '           | 1",
                "'a =  1'           | 1",
                "'   '              | 1",
                "a b = 1            | 1",
                "ä = 1              | 1",
                "' = 1'             | 1",
                "a: 1               | 1",
                "a = 1~             | 1",
                "a = 1^             | 1"
            })
    void refusesEverythingElseWithFileAndLine(String written, int line) {
        String text = written.replace(';', '\n').replace('~', '\r').replace('^', '\t');
        assertThatThrownBy(() -> parsed(text)).isInstanceOfSatisfying(ResourceFormatException.class, e -> {
            assertThat(e.line()).isEqualTo(line);
            assertThat(e.resource()).isEqualTo("words.properties");
        });
    }

    @Test
    void refusesBytesThatAreNotUtf8AndAByteOrderMark() {
        assertThatThrownBy(() -> TextResource.parse("x", new byte[] {'a', ' ', '=', ' ', (byte) 0xE4}))
                .isInstanceOf(ResourceFormatException.class);
        assertThatThrownBy(() -> parsed("\uFEFFa = 1")).isInstanceOf(ResourceFormatException.class);
    }
}
