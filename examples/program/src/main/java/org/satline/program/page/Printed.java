package org.satline.program.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Prints bare figures, for other programs and into sheets and pictures, with a decimal point in every country. Quantities in two units are
 * printed by {@link org.satline.wording.NumberPrinter}.
 */
public final class Printed {
    private static final MathContext GIVEN_DIGITS = new MathContext(12);

    private Printed() {}

    /**
     * Prints figures into a sentence.
     *
     * @param format as of {@link String#format(String, Object...)}
     * @param values what goes in
     * @return the text
     */
    public static String figure(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /**
     * Prints a figure for other programs.
     *
     * @param value any finite number
     * @return 15 significant digits
     */
    public static String exact(double value) {
        return figure("%.15g", value);
    }

    /**
     * Prints a figure as it was given, without the digits that a sum in binary adds.
     *
     * @param value any finite number
     * @return at most 12 significant digits, no trailing zeros, no exponent
     */
    public static String given(double value) {
        return new BigDecimal(value).round(GIVEN_DIGITS).stripTrailingZeros().toPlainString();
    }

    /**
     * Prints a limit rounded down, so that the printed figure is never above the one computed.
     *
     * @param value any finite number
     * @param decimals digits behind the point
     * @return the figure
     */
    public static String down(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.FLOOR).toPlainString();
    }
}
