package org.satline.quantity;

/**
 * Volume; never negative. Immutable, thread-safe. Held in cubic metres.
 */
public final class Volume extends Quantity<Volume> {
    /** Cubic inch, m3, exact but for rounding. */
    private static final double CUBIC_INCH_M3 = Factors.INCH_M * Factors.INCH_M * Factors.INCH_M;

    private static final Unit LITRE = Unit.ratio("L", 1, 1000, "litre", "litres", "liter", "liters", "dm3");
    private static final Unit CUBIC_METRE = Unit.of("m3", 1, "cubic metres", "cubic meters");
    private static final Unit CUBIC_FOOT = Unit.of("ft3", Factors.CUBIC_FOOT_M3, "cu ft", "cubic feet");
    private static final Unit CUBIC_INCH = Unit.of("in3", CUBIC_INCH_M3, "cu in", "cubic inches");
    private static final Unit MILLILITRE = Unit.ratio("mL", 1, 1e6, "cm3");
    private static final QuantityKind KIND = QuantityKind.of(
                    "volume", LITRE, CUBIC_METRE, CUBIC_FOOT, CUBIC_INCH, MILLILITRE)
            .from(0, "a volume is never negative; check the sign");

    private Volume(double si) {
        super(si);
    }

    private static Volume of(double value, Unit unit) {
        return new Volume(KIND.toSi(value, unit));
    }

    /**
     * Makes a volume from litres.
     *
     * @param litres value, L; finite, 0 or more
     * @return the volume
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Volume ofLitres(double litres) {
        return of(litres, LITRE);
    }

    /**
     * Makes a volume from cubic metres.
     *
     * @param cubicMetres value, m3; finite, 0 or more
     * @return the volume
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Volume ofCubicMetres(double cubicMetres) {
        return of(cubicMetres, CUBIC_METRE);
    }

    /**
     * Makes a volume from cubic feet.
     *
     * @param cubicFeet value, ft3; finite, 0 or more
     * @return the volume
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Volume ofCubicFeet(double cubicFeet) {
        return of(cubicFeet, CUBIC_FOOT);
    }

    /**
     * Makes a volume from cubic inches.
     *
     * @param cubicInches value, in3; finite, 0 or more
     * @return the volume
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Volume ofCubicInches(double cubicInches) {
        return of(cubicInches, CUBIC_INCH);
    }

    /**
     * Reads a volume such as {@code 12.3 L} or {@code 0.43 ft3}.
     *
     * @param text number and unit
     * @return the volume
     * @throws QuantityFormatException if the text is not a number with a unit of volume
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static Volume parse(String text) {
        return new Volume(KIND.parse(text));
    }

    /**
     * Value in litres.
     *
     * @return value, L
     */
    public double litres() {
        return LITRE.fromSi(si());
    }

    /**
     * Value in cubic metres.
     *
     * @return value, m3
     */
    public double cubicMetres() {
        return CUBIC_METRE.fromSi(si());
    }

    /**
     * Value in cubic feet.
     *
     * @return value, ft3
     */
    public double cubicFeet() {
        return CUBIC_FOOT.fromSi(si());
    }

    /**
     * Value in cubic inches.
     *
     * @return value, in3
     */
    public double cubicInches() {
        return CUBIC_INCH.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? LITRE : CUBIC_FOOT;
    }
}
