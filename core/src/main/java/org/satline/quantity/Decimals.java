package org.satline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes numbers for people, the same in every locale. */
final class Decimals {
    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
    /** Digits after the point, or zeros before it, beyond which the exponent form reads better. */
    private static final int LONGEST_PLAIN = 9;

    private Decimals() {}

    /** Six significant digits, trailing zeros dropped. */
    static String significant(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(SIX_DIGITS).stripTrailingZeros();
        boolean plain = rounded.scale() <= LONGEST_PLAIN && rounded.scale() >= -LONGEST_PLAIN;
        return plain ? rounded.toPlainString() : rounded.toString();
    }

    /** Two digits after the point: what a good thermometer shows. */
    static String hundredths(double value) {
        return fixed(value, 2);
    }

    static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
