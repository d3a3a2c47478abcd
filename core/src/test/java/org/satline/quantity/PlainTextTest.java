package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlainTextTest {
    /** Unicode Standard, section 23.1 (controls), 23.6 (surrogates), 23.7 (noncharacters), Annex 9, section 2 (Bidi_Control). */
    @Test
    void whatNobodySeesAndAMachineObeysIsHidden() {
        IntStream.rangeClosed(0, Character.MAX_CODE_POINT).forEach(c -> {
            boolean noncharacter = (c & 0xFFFE) == 0xFFFE;
            boolean turns = Character.getDirectionality(c) >= Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING
                    && Character.getDirectionality(c) <= Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE;
            if (Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE || noncharacter || turns) {
                assertThat(PlainText.isHidden(c)).as("U+%04X", c).isTrue();
            } else if (Character.isLetterOrDigit(c) || Character.getType(c) == Character.NON_SPACING_MARK) {
                assertThat(PlainText.isHidden(c)).as("U+%04X", c).isFalse();
            }
        });
        // joiners belong to the spelling of several scripts (Unicode Standard, section 23.2)
        assertThat(IntStream.of(0x200C, 0x200D)).noneMatch(PlainText::isHidden);
    }

    @Test
    void aQuoteIsShortAndShowsNothingHidden() {
        assertThat(PlainText.quoted("a\u202eb\u001b[2Kc")).isEqualTo("\"a?b?[2Kc\"");
        assertThat(PlainText.quoted("x".repeat(60))).isEqualTo("\"" + "x".repeat(60) + "\"");
        assertThat(PlainText.quoted("x".repeat(61))).isEqualTo("\"" + "x".repeat(60) + "...\"");
        assertThat(PlainText.quoted("\ud83d\udd27".repeat(61))).isEqualTo("\"" + "\ud83d\udd27".repeat(60) + "...\"");
    }

    @Test
    void whatIsKeptIsShortAndHidesNothing() {
        PlainText.require("", 0, "name");
        PlainText.require("ab\ud83d\udd27", 4, "name");
        assertThatThrownBy(() -> PlainText.require("abc", 2, "name"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0, 2]");
        assertThatThrownBy(() -> PlainText.require("ab\u0085", 9, "name"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("U+0085");
    }
}
