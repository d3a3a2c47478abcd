package org.satline.ledger;

import java.time.Instant;
import java.util.Locale;

/** What a text or time in the ledger may be: short, plain, and written to a file and read from it without any change. */
final class LedgerText {
    /** Longest text, in UTF-16 units as {@link String#length()} counts them. */
    static final int LONGEST = 200;

    /** The latest time; the years after it are written with more digits. */
    private static final Instant LAST = Instant.parse("9999-12-31T23:59:59.999999999Z");

    private static final int SHOWN = 40;

    private LedgerText() {}

    /** Refuses a text that is blank or not plain. */
    static void requireName(String text, String what) {
        requirePlain(text, what);
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is blank; every gram has a name and an owner");
        }
    }

    /** Refuses a text that is too long or that holds what no one can see or no file can keep; an empty one is fine. */
    static void requirePlain(String text, String what) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(what + " has " + text.length() + " characters, more than [0, " + LONGEST
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

    /** Refuses a time that no clock of the trade shows. */
    static void requireTime(Instant time) {
        if (!(time.compareTo(Instant.EPOCH) >= 0 && time.compareTo(LAST) <= 0)) {
            throw new IllegalArgumentException(
                    "time " + time + " is outside [" + Instant.EPOCH + ", " + LAST + "]; set the clock");
        }
    }

    /** By number and not by {@code Character.getType}, so that a file stays readable whatever Unicode version the Java at hand knows. */
    private static boolean isHidden(int character) {
        return character < 0x20
                || character >= 0x7f && character <= 0x9f
                || character >= 0xd800 && character <= 0xdfff // a surrogate that codePointAt found alone
                || character == 0x061c // from here on: they turn the direction of text (Unicode Standard Annex 9)
                || character == 0x200e
                || character == 0x200f
                || character >= 0x2028 && character <= 0x202e // with the line and the paragraph separator
                || character >= 0x2066 && character <= 0x2069
                || character == 0xfeff;
    }
}
