package org.satline.quantity;

/**
 * Length, height or altitude; signed, since a site can lie below sea level. Immutable, thread-safe. Held in metres.
 */
public final class Length extends Quantity<Length> {
    private static final Unit METRE = Unit.of("m", 1, "metre", "metres", "meter", "meters");
    private static final Unit MILLIMETRE = Unit.ratio("mm", 1, 1000);
    private static final Unit FOOT = Unit.of("ft", Factors.FOOT_M, "foot", "feet");
    private static final Unit INCH = Unit.of("in", Factors.INCH_M, "in.", "inch", "inches");
    private static final Unit CENTIMETRE = Unit.ratio("cm", 1, 100);
    private static final Unit KILOMETRE = Unit.of("km", 1000);
    private static final QuantityKind KIND =
            QuantityKind.of("length", METRE, MILLIMETRE, FOOT, INCH, CENTIMETRE, KILOMETRE);

    private Length(double si) {
        super(si);
    }

    private static Length of(double value, Unit unit) {
        return new Length(KIND.toSi(value, unit));
    }

    /**
     * Makes a length from metres.
     *
     * @param metres value, m; finite
     * @return the length
     * @throws IllegalArgumentException if not finite
     */
    public static Length ofMetres(double metres) {
        return of(metres, METRE);
    }

    /**
     * Makes a length from millimetres.
     *
     * @param millimetres value, mm; finite
     * @return the length
     * @throws IllegalArgumentException if not finite
     */
    public static Length ofMillimetres(double millimetres) {
        return of(millimetres, MILLIMETRE);
    }

    /**
     * Makes a length from feet.
     *
     * @param feet value, ft; finite
     * @return the length
     * @throws IllegalArgumentException if not finite
     */
    public static Length ofFeet(double feet) {
        return of(feet, FOOT);
    }

    /**
     * Makes a length from inches.
     *
     * @param inches value, in; finite
     * @return the length
     * @throws IllegalArgumentException if not finite
     */
    public static Length ofInches(double inches) {
        return of(inches, INCH);
    }

    /**
     * Reads a length such as {@code 1500 m}, {@code 4900 ft} or {@code 0.25 in}.
     *
     * @param text number and unit
     * @return the length
     * @throws QuantityFormatException if the text is not a number with a unit of length
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Length parse(String text) {
        return new Length(KIND.parse(text));
    }

    /**
     * Value in metres.
     *
     * @return value, m
     */
    public double metres() {
        return METRE.fromSi(si());
    }

    /**
     * Value in millimetres.
     *
     * @return value, mm
     */
    public double millimetres() {
        return MILLIMETRE.fromSi(si());
    }

    /**
     * Value in feet.
     *
     * @return value, ft
     */
    public double feet() {
        return FOOT.fromSi(si());
    }

    /**
     * Value in inches.
     *
     * @return value, in
     */
    public double inches() {
        return INCH.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        boolean small = si() != 0 && Math.abs(si()) < Factors.FOOT_M;
        if (system == UnitSystem.SI) {
            return small ? MILLIMETRE : METRE;
        }
        return small ? INCH : FOOT;
    }
}
