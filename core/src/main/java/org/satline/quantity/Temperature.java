package org.satline.quantity;

import java.util.List;
import java.util.Objects;

/**
 * Thermodynamic temperature {@code T}, held in kelvins, above 0 K. Immutable, thread-safe. A point on a scale: two of them have a
 * {@link TemperatureDifference} and no sum. Celsius and Fahrenheit round trips may lose the last digit.
 */
public final class Temperature extends Quantity<Temperature> {
    /** 0 degC in kelvins, exact by definition (SI Brochure, 9th ed.). The only place where 273.15 is written. */
    private static final double CELSIUS_ZERO_K = 273.15;
    /** Reading of a Fahrenheit thermometer at 0 degC. */
    private static final double FREEZING_FAHRENHEIT = 32;

    private static final Unit KELVIN = Unit.of("K", 1, "kelvin", "kelvins");
    private static final Unit CELSIUS = new Unit(
            "degC",
            0,
            1,
            1,
            CELSIUS_ZERO_K,
            List.of("C", "\u00B0C", "\u00B0 C", "deg C", "\u2103", "celsius", "degrees celsius"));
    private static final Unit FAHRENHEIT = new Unit(
            "degF",
            FREEZING_FAHRENHEIT,
            5,
            Factors.FAHRENHEIT_DEGREES_PER_FIVE_KELVINS,
            CELSIUS_ZERO_K,
            List.of("F", "\u00B0F", "\u00B0 F", "deg F", "\u2109", "fahrenheit", "degrees fahrenheit"));
    private static final QuantityKind KIND = QuantityKind.of("temperature", CELSIUS, KELVIN, FAHRENHEIT)
            .above(0, "this is absolute zero or below; check the number, its sign and its unit")
            .inHundredths();

    private Temperature(double kelvins) {
        super(kelvins);
    }

    private static Temperature of(double value, Unit unit) {
        return new Temperature(KIND.toSi(value, unit));
    }

    /**
     * Makes a temperature from kelvins.
     *
     * @param kelvins T, K; finite, above 0
     * @return the temperature
     * @throws IllegalArgumentException if not finite or not above 0 K
     */
    public static Temperature ofKelvins(double kelvins) {
        return of(kelvins, KELVIN);
    }

    /**
     * Makes a temperature from degrees Celsius.
     *
     * @param celsius t, degC; finite, above -273.15
     * @return the temperature
     * @throws IllegalArgumentException if not finite or not above absolute zero
     */
    public static Temperature ofCelsius(double celsius) {
        return of(celsius, CELSIUS);
    }

    /**
     * Makes a temperature from degrees Fahrenheit.
     *
     * @param fahrenheit t, degF; finite, above -459.67
     * @return the temperature
     * @throws IllegalArgumentException if not finite or not above absolute zero
     */
    public static Temperature ofFahrenheit(double fahrenheit) {
        return of(fahrenheit, FAHRENHEIT);
    }

    /**
     * Reads a temperature such as {@code 130 degF}, {@code 54.4 degC} or {@code 327.6 K}.
     *
     * @param text number and unit
     * @return the temperature
     * @throws QuantityFormatException if the text is not a number with a unit of temperature
     * @throws IllegalArgumentException if the value is not above absolute zero
     */
    public static Temperature parse(String text) {
        return new Temperature(KIND.parse(text));
    }

    /**
     * Value in kelvins.
     *
     * @return T, K; above 0
     */
    public double kelvins() {
        return si();
    }

    /**
     * Value in degrees Celsius.
     *
     * @return t, degC
     */
    public double celsius() {
        return CELSIUS.fromSi(si());
    }

    /**
     * Value in degrees Fahrenheit.
     *
     * @return t, degF
     */
    public double fahrenheit() {
        return FAHRENHEIT.fromSi(si());
    }

    /**
     * This temperature, raised by a difference.
     *
     * @param difference what to add
     * @return the sum
     * @throws IllegalArgumentException if the result is not above 0 K
     */
    public Temperature plus(TemperatureDifference difference) {
        Objects.requireNonNull(difference, "difference");
        return ofKelvins(si() + difference.kelvins());
    }

    /**
     * This temperature, lowered by a difference.
     *
     * @param difference what to take away
     * @return the result
     * @throws IllegalArgumentException if the result is not above 0 K
     */
    public Temperature minus(TemperatureDifference difference) {
        Objects.requireNonNull(difference, "difference");
        return ofKelvins(si() - difference.kelvins());
    }

    /**
     * How far this temperature lies above another.
     *
     * @param other the temperature to subtract
     * @return the difference; negative if this one is the lower
     */
    public TemperatureDifference minus(Temperature other) {
        Objects.requireNonNull(other, "other");
        return TemperatureDifference.ofKelvins(si() - other.si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? CELSIUS : FAHRENHEIT;
    }
}
