package org.teavm.classlib.java.util;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Stands in for {@link java.util.Formatter} in the page, since the one of the compiler's class library lacks {@code %e} and {@code %g}: conversions
 * {@code s d x f e g n %}, flags {@code - + 0}, width, precision, {@code Locale.ROOT} alone; anything else is refused. One use, one thread.
 */
public final class TFormatter {
    private static final BigDecimal PLAIN_FROM = new BigDecimal("0.0001");
    private static final String FLAGS = "-+0";

    private final StringBuilder out = new StringBuilder();
    private String pattern = "";
    private int at;

    /** Made by {@code String.format}. */
    public TFormatter() {}

    /**
     * Made by {@code String.format}.
     *
     * @param locale not looked at
     */
    public TFormatter(Locale locale) {}

    /**
     * Writes a pattern.
     *
     * @param locale not looked at
     * @param format the pattern
     * @param args what it asks for
     * @return this
     */
    public TFormatter format(Locale locale, String format, @Nullable Object... args) {
        return format(format, args);
    }

    /**
     * Writes a pattern.
     *
     * @param format the pattern
     * @param args what it asks for
     * @return this
     * @throws IllegalArgumentException if it has a conversion that is not known here
     */
    public TFormatter format(String format, @Nullable Object... args) {
        pattern = format;
        at = 0;
        int next = 0;
        while (at < pattern.length()) {
            char c = pattern.charAt(at++);
            if (c != '%') {
                out.append(c);
                continue;
            }
            String flags = taken(FLAGS);
            String width = taken("0123456789");
            String precision = "";
            if (pattern.charAt(at) == '.') {
                at++;
                precision = taken("0123456789");
            }
            char conversion = pattern.charAt(at++);
            if (conversion == '%' || conversion == 'n') {
                out.append(conversion == '%' ? '%' : '\n');
            } else {
                int places = precision.isEmpty() ? -1 : Integer.parseInt(precision);
                String text = text(conversion, places, args[next++]);
                boolean signed = flags.indexOf('+') >= 0 && conversion != 's' && !text.startsWith("-");
                pad(signed ? "+" + text : text, flags, width.isEmpty() ? 0 : Integer.parseInt(width));
            }
        }
        return this;
    }

    private String taken(String of) {
        int from = at;
        while (of.indexOf(pattern.charAt(at)) >= 0) {
            at++;
        }
        return pattern.substring(from, at);
    }

    private void pad(String text, String flags, int width) {
        int missing = Math.max(0, width - text.length());
        if (flags.indexOf('-') >= 0) {
            out.append(text).append(" ".repeat(missing));
        } else if (flags.indexOf('0') >= 0) {
            int sign = text.startsWith("-") || text.startsWith("+") ? 1 : 0;
            out.append(text, 0, sign).append("0".repeat(missing)).append(text, sign, text.length());
        } else {
            out.append(" ".repeat(missing)).append(text);
        }
    }

    private static String text(char conversion, int precision, @Nullable Object value) {
        return switch (conversion) {
            case 's', 'd' -> String.valueOf(value);
            case 'x' -> hexadecimal(value);
            case 'f', 'e', 'g' -> real(conversion, value, precision < 0 ? 6 : precision);
            default -> throw new IllegalArgumentException("conversion " + conversion + " is not known here");
        };
    }

    private static String hexadecimal(@Nullable Object value) {
        if (value instanceof Long whole) {
            return Long.toHexString(whole);
        } else if (value instanceof Integer whole) {
            return Integer.toHexString(whole);
        }
        throw new IllegalArgumentException("conversion x of something else than a whole number");
    }

    private static String real(char conversion, @Nullable Object value, int precision) {
        if (value instanceof BigDecimal exact) {
            return (exact.signum() < 0 ? "-" : "") + number(conversion, exact.abs(), precision);
        }
        if (!(value instanceof Double number)) {
            throw new IllegalArgumentException("conversion " + conversion + " of something else than a number");
        }
        if (Double.isNaN(number)) {
            return "NaN";
        }
        boolean negative = number < 0 || 1 / number < 0;
        String digits =
                number.isInfinite() ? "Infinity" : number(conversion, BigDecimal.valueOf(Math.abs(number)), precision);
        return negative ? "-" + digits : digits;
    }

    private static String number(char conversion, BigDecimal value, int precision) {
        if (conversion == 'f') {
            return value.setScale(precision, RoundingMode.HALF_UP).toPlainString();
        }
        return conversion == 'g' ? general(value, Math.max(1, precision)) : scientific(value, precision);
    }

    private static String general(BigDecimal value, int digits) {
        if (value.signum() == 0) {
            return number('f', value, digits - 1);
        }
        BigDecimal rounded = value.round(new MathContext(digits, RoundingMode.HALF_UP));
        boolean plain =
                rounded.compareTo(PLAIN_FROM) >= 0 && rounded.compareTo(BigDecimal.ONE.scaleByPowerOfTen(digits)) < 0;
        return plain ? number('f', value, digits - exponent(rounded) - 1) : scientific(value, digits - 1);
    }

    private static String scientific(BigDecimal value, int precision) {
        if (value.signum() == 0) {
            return number('f', value, precision) + "e+00";
        }
        BigDecimal rounded = value.round(new MathContext(precision + 1, RoundingMode.HALF_UP));
        int exponent = exponent(rounded);
        int size = Math.abs(exponent);
        return number('f', rounded.scaleByPowerOfTen(-exponent), precision)
                + (exponent < 0 ? "e-" : "e+")
                + (size < 10 ? "0" : "")
                + size;
    }

    private static int exponent(BigDecimal value) {
        return value.precision() - value.scale() - 1;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
