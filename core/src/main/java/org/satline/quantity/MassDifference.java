package org.satline.quantity;

import java.util.Objects;

/**
 * Signed mass, such as what a scale gained or lost; positive for a gain. Immutable, thread-safe. Held in kilograms.
 */
public final class MassDifference extends Quantity<MassDifference> {
    private static final Unit KILOGRAM = Mass.KILOGRAM;
    private static final Unit GRAM = Mass.GRAM;
    private static final Unit POUND = Mass.POUND;
    private static final Unit OUNCE = Mass.OUNCE;
    private static final QuantityKind KIND = QuantityKind.of("mass difference", KILOGRAM, GRAM, POUND, OUNCE);

    /** No difference. */
    public static final MassDifference ZERO = new MassDifference(0);

    private MassDifference(double si) {
        super(si);
    }

    private static MassDifference of(double value, Unit unit) {
        return new MassDifference(KIND.toSi(value, unit));
    }

    /**
     * Makes a mass difference from kilograms.
     *
     * @param kilograms value, kg; finite
     * @return the mass difference
     * @throws IllegalArgumentException if not finite
     */
    public static MassDifference ofKilograms(double kilograms) {
        return of(kilograms, KILOGRAM);
    }

    /**
     * Makes a mass difference from grams.
     *
     * @param grams value, g; finite
     * @return the mass difference
     * @throws IllegalArgumentException if not finite
     */
    public static MassDifference ofGrams(double grams) {
        return of(grams, GRAM);
    }

    /**
     * Makes a mass difference from pounds.
     *
     * @param pounds value, lb; finite
     * @return the mass difference
     * @throws IllegalArgumentException if not finite
     */
    public static MassDifference ofPounds(double pounds) {
        return of(pounds, POUND);
    }

    /**
     * Makes a mass difference from ounces.
     *
     * @param ounces value, oz; finite
     * @return the mass difference
     * @throws IllegalArgumentException if not finite
     */
    public static MassDifference ofOunces(double ounces) {
        return of(ounces, OUNCE);
    }

    /**
     * Reads a mass difference such as {@code -0.2 kg} or {@code 7 oz}.
     *
     * @param text number and unit
     * @return the mass difference
     * @throws QuantityFormatException if the text is not a number with a unit of mass difference
     * @throws IllegalArgumentException if the value is not finite
     */
    public static MassDifference parse(String text) {
        return new MassDifference(KIND.parse(text));
    }

    /**
     * Value in kilograms.
     *
     * @return value, kg
     */
    public double kilograms() {
        return KILOGRAM.fromSi(si());
    }

    /**
     * Value in grams.
     *
     * @return value, g
     */
    public double grams() {
        return GRAM.fromSi(si());
    }

    /**
     * Value in pounds.
     *
     * @return value, lb
     */
    public double pounds() {
        return POUND.fromSi(si());
    }

    /**
     * Value in ounces.
     *
     * @return value, oz
     */
    public double ounces() {
        return OUNCE.fromSi(si());
    }

    /**
     * Sum of this difference and another.
     *
     * @param other what to add
     * @return the sum
     * @throws IllegalArgumentException if the sum overflows
     */
    public MassDifference plus(MassDifference other) {
        Objects.requireNonNull(other, "other");
        return ofKilograms(si() + other.si());
    }

    /**
     * This difference less another.
     *
     * @param other what to take away
     * @return the result
     * @throws IllegalArgumentException if the result overflows
     */
    public MassDifference minus(MassDifference other) {
        Objects.requireNonNull(other, "other");
        return ofKilograms(si() - other.si());
    }

    /**
     * The same difference with the other sign.
     *
     * @return the negated difference
     */
    public MassDifference negated() {
        return ofKilograms(-si());
    }

    /**
     * The size of this difference.
     *
     * @return the difference without its sign
     */
    public MassDifference abs() {
        return ofKilograms(Math.abs(si()));
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOGRAM : POUND;
    }
}
