package org.satline.audit.cause;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in texts: seven significant digits, the same in every locale. */
final class Numbers {
    private static final MathContext SEVEN = new MathContext(7);
    private static final int PLAIN = 9;

    private Numbers() {}

    static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(SEVEN).stripTrailingZeros();
        return Math.abs(rounded.scale()) <= PLAIN ? rounded.toPlainString() : rounded.toString();
    }
}
