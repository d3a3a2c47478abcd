package org.satline.quantity;

import java.util.Objects;

/**
 * Difference of two temperatures, such as superheat, subcooling or glide; signed. Immutable, thread-safe. Held in kelvins; 5 K are
 * 5 Celsius degrees and 9 Fahrenheit degrees, with no zero point in between.
 */
public final class TemperatureDifference extends Quantity<TemperatureDifference> {
    private static final Unit KELVIN = Unit.of("K", 1, "kelvin", "kelvins", "C", "degC", "\u00B0C", "deg C", "\u2103");
    private static final Unit FAHRENHEIT_DEGREE =
            Unit.ratio("degF", 5, Factors.FAHRENHEIT_DEGREES_PER_FIVE_KELVINS, "F", "\u00B0F", "deg F", "\u2109");
    private static final QuantityKind KIND =
            QuantityKind.of("temperature difference", KELVIN, FAHRENHEIT_DEGREE).inHundredths();

    /** No difference. */
    public static final TemperatureDifference ZERO = new TemperatureDifference(0);

    private TemperatureDifference(double si) {
        super(si);
    }

    private static TemperatureDifference of(double value, Unit unit) {
        return new TemperatureDifference(KIND.toSi(value, unit));
    }

    /**
     * Makes a temperature difference from kelvins.
     *
     * @param kelvins value, K; finite
     * @return the temperature difference
     * @throws IllegalArgumentException if not finite
     */
    public static TemperatureDifference ofKelvins(double kelvins) {
        return of(kelvins, KELVIN);
    }

    /**
     * Makes a temperature difference from Fahrenheit degrees.
     *
     * @param fahrenheitDegrees value, degF; finite
     * @return the temperature difference
     * @throws IllegalArgumentException if not finite
     */
    public static TemperatureDifference ofFahrenheitDegrees(double fahrenheitDegrees) {
        return of(fahrenheitDegrees, FAHRENHEIT_DEGREE);
    }

    /**
     * Reads a temperature difference such as {@code 10 K}, {@code 18 degF} or {@code 5 degC}, which is 5 K.
     *
     * @param text number and unit
     * @return the temperature difference
     * @throws QuantityFormatException if the text is not a number with a unit of temperature difference
     * @throws IllegalArgumentException if the value is not finite
     */
    public static TemperatureDifference parse(String text) {
        return new TemperatureDifference(KIND.parse(text));
    }

    /**
     * Value in kelvins.
     *
     * @return value, K
     */
    public double kelvins() {
        return KELVIN.fromSi(si());
    }

    /**
     * Value in Fahrenheit degrees.
     *
     * @return value, degF
     */
    public double fahrenheitDegrees() {
        return FAHRENHEIT_DEGREE.fromSi(si());
    }

    /**
     * Sum of this difference and another.
     *
     * @param other what to add
     * @return the sum
     * @throws IllegalArgumentException if the sum overflows
     */
    public TemperatureDifference plus(TemperatureDifference other) {
        Objects.requireNonNull(other, "other");
        return ofKelvins(si() + other.si());
    }

    /**
     * This difference less another.
     *
     * @param other what to take away
     * @return the result
     * @throws IllegalArgumentException if the result overflows
     */
    public TemperatureDifference minus(TemperatureDifference other) {
        Objects.requireNonNull(other, "other");
        return ofKelvins(si() - other.si());
    }

    /**
     * The same difference with the other sign.
     *
     * @return the negated difference
     */
    public TemperatureDifference negated() {
        return ofKelvins(-si());
    }

    /**
     * The size of this difference.
     *
     * @return the difference without its sign
     */
    public TemperatureDifference abs() {
        return ofKelvins(Math.abs(si()));
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KELVIN : FAHRENHEIT_DEGREE;
    }
}
