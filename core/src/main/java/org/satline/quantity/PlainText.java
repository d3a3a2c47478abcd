package org.satline.quantity;

import java.util.Locale;

/** Text from outside: what may be kept of it, and how it is repeated in a message. Only functions, thread-safe. */
public final class PlainText {
    /** Longest part of a text that a message repeats. */
    private static final int LONGEST_QUOTE = 60;

    private static final int SHOWN = 40;

    private PlainText() {}

    /**
     * Tells whether a character is one that nobody sees but that a terminal, a page or a file obeys: a control character, half of a
     * surrogate pair, a separator of lines, what turns the direction of text (Unicode Standard Annex 9, section 2), a tag, or none at all.
     *
     * <p>By number and not by {@code Character.getType}, so that a file stays readable whatever Unicode version the Java at hand knows.
     *
     * @param character a code point
     * @return true if it is hidden
     */
    public static boolean isHidden(int character) {
        return character < 0x20
                || (character >= 0x7f && character <= 0x9f)
                || (character >= 0xd800 && character <= 0xdfff)
                || character == 0x061c
                || character == 0x200e
                || character == 0x200f
                || (character >= 0x2028 && character <= 0x202e)
                || (character >= 0x2066 && character <= 0x206f)
                || character == 0xfeff
                || (character >= 0xfff9 && character <= 0xfffb)
                || (character >= 0xe0000 && character <= 0xe007f)
                || (character & 0xfffe) == 0xfffe;
    }

    /**
     * Refuses a text that is too long or holds hidden characters; an empty one is fine.
     *
     * @param text the text
     * @param longest how many characters it may have, in UTF-16 units as {@link String#length()} counts them
     * @param what what it is, for the message
     * @throws IllegalArgumentException if it is refused; the message repeats no hidden character
     */
    public static void require(String text, int longest, String what) {
        if (text.length() > longest) {
            throw new IllegalArgumentException(what + " has " + text.length() + " characters, more than [0, " + longest
                    + "]; give a reference instead of the whole text");
        }
        int i = 0;
        while (i < text.length()) {
            int character = text.codePointAt(i);
            if (isHidden(character)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "%s has the character U+%04X after \"%s\", a control character or half of a pair; leave it out",
                        what,
                        character,
                        text.substring(Math.max(0, i - SHOWN), i)));
            }
            i += Character.charCount(character);
        }
    }

    /**
     * Repeats a text in a message.
     *
     * @param text any text
     * @return in double quotes, at most 60 characters of it, a question mark for each hidden one
     */
    public static String quoted(String text) {
        boolean cut = text.codePointCount(0, text.length()) > LONGEST_QUOTE;
        String kept = cut ? text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) : text;
        return '"' + shown(kept) + (cut ? "...\"" : "\"");
    }

    /**
     * Makes a message fit to be shown that may carry text from outside.
     *
     * @param text any text
     * @return the same with a question mark for each hidden character
     */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int c = text.codePointAt(i);
            shown.appendCodePoint(isHidden(c) ? '?' : c);
        }
        return shown.toString();
    }
}
