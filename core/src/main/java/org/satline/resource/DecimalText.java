package org.satline.resource;

/**
 * Reads decimal numbers. {@link Double#parseDouble} alone would also take {@code NaN}, {@code 1d}, {@code 0x1p3} and blanks, and costs much
 * more before it is compiled.
 */
final class DecimalText {
    /** Up to here a whole number, and below a power of ten, is exact in a double; their quotient is then rounded once only. */
    private static final int MOST_DIGITS = 15;

    /** No table prints a longer number; a bound keeps the work bounded whatever a cell holds. */
    static final int MOST_CHARACTERS = 40;

    private static final double[] POWERS_OF_TEN = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17
    };

    private DecimalText() {}

    /**
     * The double nearest to the number over 10^shift, where shift is 0, or 2 for per cent; NaN if the text is not a finite decimal number.
     */
    static double parse(String text, int shift) {
        long whole = 0;
        int digits = 0;
        int point = -1;
        int sign = !text.isEmpty() && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        for (int i = sign; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9' && digits < MOST_DIGITS) {
                whole = 10 * whole + (c - '0');
                digits++;
            } else if (c == '.' && point < 0) {
                point = i;
            } else {
                return parseLong(text, shift);
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        int decimals = (point < 0 ? 0 : text.length() - 1 - point) + shift;
        double value = whole / POWERS_OF_TEN[decimals];
        return text.charAt(0) == '-' ? -value : value;
    }

    /** For more digits and for numbers with an exponent. */
    private static double parseLong(String text, int shift) {
        boolean exponent = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean letter = c == 'e' || c == 'E';
            exponent |= letter;
            if (!(letter || (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+')) {
                return Double.NaN;
            }
        }
        if (exponent && shift != 0) {
            return Double.NaN; // no table prints per cent with an exponent
        }
        try {
            double value =
                    Double.parseDouble(shift == 0 ? text : text.concat("e-").concat(Integer.toString(shift)));
            return Math.abs(value) < Double.POSITIVE_INFINITY ? value : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
