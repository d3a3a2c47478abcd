package org.satline.quantity;

import java.util.Objects;

/**
 * Mass, as a scale shows it; never negative. Immutable, thread-safe. Held in kilograms.
 */
public final class Mass extends Quantity<Mass> {
    static final Unit KILOGRAM = Unit.of("kg", 1, "kilogram", "kilograms");
    static final Unit GRAM = Unit.ratio("g", 1, 1000, "gram", "grams");
    static final Unit POUND = Unit.of("lb", Factors.POUND_KG, "lbs", "lbm", "pound", "pounds");
    static final Unit OUNCE = Unit.ratio("oz", Factors.POUND_KG, 16, "ounce", "ounces");
    private static final QuantityKind KIND = QuantityKind.of("mass", KILOGRAM, GRAM, POUND, OUNCE)
            .from(0, "a mass is never negative; use MassDifference for a signed one");

    /** Nothing. */
    public static final Mass ZERO = new Mass(0);

    private Mass(double si) {
        super(si);
    }

    private static Mass of(double value, Unit unit) {
        return new Mass(KIND.toSi(value, unit));
    }

    /**
     * Makes a mass from kilograms.
     *
     * @param kilograms value, kg; finite, 0 or more
     * @return the mass
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Mass ofKilograms(double kilograms) {
        return of(kilograms, KILOGRAM);
    }

    /**
     * Makes a mass from grams.
     *
     * @param grams value, g; finite, 0 or more
     * @return the mass
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Mass ofGrams(double grams) {
        return of(grams, GRAM);
    }

    /**
     * Makes a mass from pounds.
     *
     * @param pounds value, lb; finite, 0 or more
     * @return the mass
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Mass ofPounds(double pounds) {
        return of(pounds, POUND);
    }

    /**
     * Makes a mass from ounces.
     *
     * @param ounces value, oz; finite, 0 or more
     * @return the mass
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Mass ofOunces(double ounces) {
        return of(ounces, OUNCE);
    }

    /**
     * Reads a mass such as {@code 9.5 kg}, {@code 350 g}, {@code 21 lb} or {@code 12 oz}.
     *
     * @param text number and unit
     * @return the mass
     * @throws QuantityFormatException if the text is not a number with a unit of mass
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static Mass parse(String text) {
        return new Mass(KIND.parse(text));
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
     * Sum of this mass and another.
     *
     * @param other what to add
     * @return the sum
     * @throws IllegalArgumentException if the sum overflows
     */
    public Mass plus(Mass other) {
        Objects.requireNonNull(other, "other");
        return ofKilograms(si() + other.si());
    }

    /**
     * This mass with a signed difference added.
     *
     * @param difference what to add
     * @return the sum
     * @throws IllegalArgumentException if less than nothing would be left
     */
    public Mass plus(MassDifference difference) {
        Objects.requireNonNull(difference, "difference");
        return ofKilograms(si() + difference.kilograms());
    }

    /**
     * What is left when another mass is taken away; {@link #differenceFrom} gives the signed answer instead.
     *
     * @param other what to take away
     * @return the rest, 0 or more
     * @throws IllegalArgumentException if less than nothing would be left
     */
    public Mass minus(Mass other) {
        Objects.requireNonNull(other, "other");
        if (!(other.si() <= si())) {
            throw new IllegalArgumentException("mass " + other.si() + " kg cannot be taken from " + si() + " kg, [0.0, "
                    + si() + "] kg is there; check both weighings");
        }
        return ofKilograms(si() - other.si());
    }

    /**
     * How much more this mass is than another.
     *
     * @param other the mass to subtract
     * @return the difference; negative if this one is the lesser
     */
    public MassDifference differenceFrom(Mass other) {
        Objects.requireNonNull(other, "other");
        return MassDifference.ofKilograms(si() - other.si());
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
