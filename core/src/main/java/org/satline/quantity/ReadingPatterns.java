package org.satline.quantity;

import java.util.regex.Pattern;

/** Forms of a text with a number and a unit. A class of its own, so that they are compiled only where a text is read. */
final class ReadingPatterns {
    /** White space, with the no-break and thin spaces that typesetting puts between number and unit. */
    static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2009\\u202F]+");

    /** A decimal number and the rest; no hexadecimal, NaN, infinity or type suffix, which {@code parseDouble} would take. */
    static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*(.*)");

    static final Pattern NUMBER_WITH_COMMA = Pattern.compile("[+-]?[0-9.]*,.*");

    private ReadingPatterns() {}
}
