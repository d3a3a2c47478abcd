package org.satline.wording;

import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;

/**
 * The language of the texts. Any tag is taken; what has no text in that language is said in English. Immutable, thread-safe.
 *
 * @param tag the language in two or three lower-case letters (ISO 639), such as {@code en}; the name of its folder of texts
 */
public record Language(String tag) {
    /** English, complete, to which every other language falls back. */
    public static final Language ENGLISH = new Language("en");
    /** Spanish, complete; no native speaker has reviewed the texts on safety. */
    public static final Language SPANISH = new Language("es");

    /** {@inheritDoc} */
    public Language {
        Parts.required("tag", tag);
        boolean letters = tag.length() == 2 || tag.length() == 3;
        for (int i = 0; i < tag.length(); i++) {
            letters &= tag.charAt(i) >= 'a' && tag.charAt(i) <= 'z';
        }
        if (!letters) {
            throw new IllegalArgumentException("language " + PlainText.quoted(tag)
                    + " is no tag of two or three lower-case letters; write it as in en");
        }
    }
}
