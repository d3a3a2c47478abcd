package org.satline.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;
import org.satline.SatlineException;

/** A value outside the range in which a source, an equation or a rule holds. The message names the range and what it belongs to. */
public final class OutOfValidityException extends IllegalArgumentException implements SatlineException {
    /** As many as tell one state from another; the accessors give all of them. */
    private static final int FEWEST_DIGITS = 7;

    private static final int MOST_DIGITS = 17;

    private static final long serialVersionUID = 1L;

    /** Name of the quantity. */
    private final String what;
    /** Refused value; may be NaN. */
    private final double value;
    /** Unit of value and limits; may be empty. */
    private final String unit;
    /** Lowest allowed value. */
    private final double low;
    /** Highest allowed value. */
    private final double high;
    /** What sets the limits. */
    private final String whose;
    /** What to do; may be empty. */
    private final String advice;

    private OutOfValidityException(
            String message,
            String what,
            double value,
            String unit,
            double low,
            double high,
            String whose,
            String advice) {
        super(message);
        this.what = what;
        this.value = value;
        this.unit = unit;
        this.low = low;
        this.high = high;
        this.whose = whose;
        this.advice = advice;
    }

    /**
     * Describes a value out of range, as in
     * {@code temperature 310.0 K is outside [216.592, 304.1282] K of the saturation line of R-744; ask for a single-phase state}.
     *
     * @param what name of the quantity
     * @param value the value; may be NaN
     * @param unit unit of the value and of the limits; empty for a bare number
     * @param low lowest allowed value
     * @param high highest allowed value
     * @param whose what sets the limits, such as {@code the saturation line of R-744}
     * @param advice what to do about it; may be empty
     * @return the exception, ready to be thrown
     */
    public static OutOfValidityException of(
            String what, double value, String unit, double low, double high, String whose, String advice) {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(whose, "whose");
        Objects.requireNonNull(advice, "advice");
        String spacedUnit = unit.isEmpty() ? "" : " " + unit;
        int digits = FEWEST_DIGITS;
        while (digits < MOST_DIGITS && !seenOutside(value, low, high, digits)) {
            digits++;
        }
        String message = what + " " + shown(value, digits) + spacedUnit + " is outside [" + shown(low, digits) + ", "
                + shown(high, digits) + "]" + spacedUnit + " of " + whose + (advice.isEmpty() ? "" : "; " + advice);
        return new OutOfValidityException(message, what, value, unit, low, high, whose, advice);
    }

    /** Whether the value still lies outside when all three are printed with so many digits. */
    private static boolean seenOutside(double value, double low, double high, int digits) {
        return !(rounded(value, digits) >= rounded(low, digits) && rounded(value, digits) <= rounded(high, digits));
    }

    private static double rounded(double value, int digits) {
        return Double.isFinite(value)
                ? new BigDecimal(value).round(new MathContext(digits)).doubleValue()
                : value;
    }

    private static String shown(double value, int digits) {
        double rounded = rounded(value, digits);
        boolean wholeAndLong = Math.abs(rounded) >= 1e7 && Math.abs(rounded) < 1e9;
        return wholeAndLong ? new BigDecimal(rounded).toPlainString() : Double.toString(rounded);
    }

    /**
     * Name of the quantity.
     *
     * @return such as {@code temperature}
     */
    public String what() {
        return what;
    }

    /**
     * The value that was refused.
     *
     * @return value, in {@link #unit()}; may be NaN
     */
    public double value() {
        return value;
    }

    /**
     * Unit of the value and the limits.
     *
     * @return its symbol; empty for a bare number
     */
    public String unit() {
        return unit;
    }

    /**
     * Lowest allowed value.
     *
     * @return limit, in {@link #unit()}
     */
    public double low() {
        return low;
    }

    /**
     * Highest allowed value.
     *
     * @return limit, in {@link #unit()}
     */
    public double high() {
        return high;
    }

    /**
     * What sets the limits.
     *
     * @return such as {@code the saturation line of R-744}
     */
    public String whose() {
        return whose;
    }

    /**
     * What to do about it.
     *
     * @return an advice; may be empty
     */
    public String advice() {
        return advice;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
