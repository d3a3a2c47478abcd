package org.satline.program.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EscapeTest {
    /** C0 and C1 controls: Unicode Standard, section 23.1. */
    @Test
    void eachControlCharacterBecomesASpace() {
        IntStream.concat(IntStream.range(0, 0x20), IntStream.rangeClosed(0x7F, 0x9F))
                .forEach(c -> assertThat(Escape.plain("a" + Character.toString(c) + "b"))
                        .as("U+%04X", c)
                        .isEqualTo("a b"));
    }

    /** Characters with the property Bidi_Control: Unicode Standard Annex 9, section 2. */
    @ParameterizedTest
    @ValueSource(
            ints = {0x061C, 0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069})
    void whatTurnsTextAroundIsLeftOut(int c) {
        assertThat(Escape.plain("a" + Character.toString(c) + "b")).isEqualTo("ab");
        assertThat(Escape.html("a" + Character.toString(c) + "b")).isEqualTo("ab");
        assertThat(Escape.markdown("a" + Character.toString(c) + "b")).isEqualTo("ab");
    }

    @Test
    void numbersAreNoFormulas() {
        for (String number : new String[] {"-2e3", "+1.5", "-.5", "12", "-0.25", "", "boathouse", "a=b"}) {
            assertThat(Escape.cell(number)).isEqualTo(number);
        }
        assertThat(Escape.cell("-2+3")).isEqualTo("'-2+3");
        assertThat(Escape.cell("-" + "1".repeat(100_000))).startsWith("'-1");
        assertThat(Escape.cell(" \r=1")).startsWith("'");
    }

    @Test
    void endsOfLinesBecomeOneSpace() {
        assertThat(Escape.plain("a\r\n\tb\u2028c\u2029d")).isEqualTo("a b c d");
    }

    @Test
    void whatNoDocumentMayHoldIsLeftOut() {
        assertThat(Escape.html("a\u202eb\u0000c\u2069d\ufffee\ud800f")).isEqualTo("ab cdef");
    }

    @Test
    void wordsOfAllCountriesStay() {
        String words = "L\u00e4mp\u00f6 \ud83d\udd27 \u5ba4\u5185\u6a5f \u05e2\u05d1\u05e8 25 \u00b0C  two spaces";
        assertThat(Escape.plain(words)).isSameAs(words);
        assertThat(Escape.html("L\u00e4mp\u00f6 \ud83d\udd27 5 < 6"))
                .isEqualTo("L\u00e4mp\u00f6 \ud83d\udd27 5 &lt; 6");
    }

    @Test
    void markupIsShownAndNotObeyed() {
        assertThat(Escape.html("<b a=\"x\">'&'</b>")).isEqualTo("&lt;b a=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/b&gt;");
        assertThat(Escape.markdown("T_dew(p_suction)")).isEqualTo("T_dew(p_suction)");
        assertThat(Escape.markdown("*a* _b_ [c](d) `e` <f>")).isEqualTo("\\*a\\* \\_b\\_ \\[c\\](d) \\`e\\` \\<f>");
        assertThat(Escape.markdownCell("a|b")).isEqualTo("a\\|b");
    }
}
