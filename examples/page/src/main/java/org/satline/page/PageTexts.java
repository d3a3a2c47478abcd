package org.satline.page;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.satline.quantity.UnitSystem;
import org.satline.resource.TextResource;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** The words of the page itself, beside those of the library, in one language. Immutable. */
final class PageTexts {
    private static final String BETWEEN = " | ";

    private final Wording wording;
    private final Map<String, String> texts = new HashMap<>();

    /**
     * Reads the words.
     *
     * @param tag language, {@code en} or {@code es}
     * @param si whether SI units stand first
     */
    PageTexts(String tag, boolean si) {
        wording = Wording.of(new Language(tag), si ? UnitSystem.SI : UnitSystem.US);
        TextResource.find(PageTexts.class, tag + ".properties")
                .orElseThrow(() -> new IllegalArgumentException("the page has no words in " + tag))
                .entries()
                .forEach(entry -> texts.put(entry.key(), entry.text()));
    }

    /** The words of the library. */
    Wording wording() {
        return wording;
    }

    /** A text of the page. */
    String of(String key) {
        String found = texts.get(key);
        if (found == null) {
            throw new IllegalArgumentException("the page has no text " + key);
        }
        return found;
    }

    /** The last part of the key of a constant. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What is asked under a path, without the reason. */
    String question(String path) {
        String text = of("ask." + path.replace("[0]", ""));
        int at = text.indexOf(BETWEEN);
        return at < 0 ? text : text.substring(0, at);
    }

    /** Why it is asked, or where it is read. */
    String reason(String path) {
        String text = of("ask." + path.replace("[0]", ""));
        int at = text.indexOf(BETWEEN);
        return at < 0 ? "" : text.substring(at + BETWEEN.length());
    }
}
