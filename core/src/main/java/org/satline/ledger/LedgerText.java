package org.satline.ledger;

import java.time.Instant;
import org.satline.quantity.PlainText;

/** What a text or time in the ledger may be: short, plain, and written to a file and read from it without any change. */
final class LedgerText {
    /** Longest text, in UTF-16 units as {@link String#length()} counts them. */
    static final int LONGEST = 200;

    /** The latest time; the years after it are written with more digits. */
    private static final Instant LAST = Instant.parse("9999-12-31T23:59:59.999999999Z");

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
        PlainText.require(text, LONGEST, what);
    }

    /** Refuses a time that no clock of the trade shows. */
    static void requireTime(Instant time) {
        if (!(time.compareTo(Instant.EPOCH) >= 0 && time.compareTo(LAST) <= 0)) {
            throw new IllegalArgumentException(
                    "time " + time + " is outside [" + Instant.EPOCH + ", " + LAST + "]; set the clock");
        }
    }
}
