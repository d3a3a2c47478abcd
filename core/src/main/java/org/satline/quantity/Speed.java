package org.satline.quantity;

/**
 * Speed, of sound or of air; never negative. Immutable, thread-safe. Held in m/s.
 */
public final class Speed extends Quantity<Speed> {
    private static final Unit METRE_PER_SECOND = Unit.of("m/s", 1);
    private static final Unit FOOT_PER_SECOND = Unit.of("ft/s", Factors.FOOT_M, "fps");
    private static final Unit FOOT_PER_MINUTE = Unit.ratio("ft/min", Factors.FOOT_M, 60, "fpm");
    private static final QuantityKind KIND = QuantityKind.of(
                    "speed", METRE_PER_SECOND, FOOT_PER_SECOND, FOOT_PER_MINUTE)
            .from(0, "a speed is never negative; check the sign");

    private Speed(double si) {
        super(si);
    }

    private static Speed of(double value, Unit unit) {
        return new Speed(KIND.toSi(value, unit));
    }

    /**
     * Makes a speed from metres per second.
     *
     * @param metresPerSecond value, m/s; finite, 0 or more
     * @return the speed
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return of(metresPerSecond, METRE_PER_SECOND);
    }

    /**
     * Makes a speed from feet per second.
     *
     * @param feetPerSecond value, ft/s; finite, 0 or more
     * @return the speed
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Speed ofFeetPerSecond(double feetPerSecond) {
        return of(feetPerSecond, FOOT_PER_SECOND);
    }

    /**
     * Makes a speed from feet per minute.
     *
     * @param feetPerMinute value, ft/min; finite, 0 or more
     * @return the speed
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Speed ofFeetPerMinute(double feetPerMinute) {
        return of(feetPerMinute, FOOT_PER_MINUTE);
    }

    /**
     * Reads a speed such as {@code 340 m/s} or {@code 700 ft/min}.
     *
     * @param text number and unit
     * @return the speed
     * @throws QuantityFormatException if the text is not a number with a unit of speed
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static Speed parse(String text) {
        return new Speed(KIND.parse(text));
    }

    /**
     * Value in metres per second.
     *
     * @return value, m/s
     */
    public double metresPerSecond() {
        return METRE_PER_SECOND.fromSi(si());
    }

    /**
     * Value in feet per second.
     *
     * @return value, ft/s
     */
    public double feetPerSecond() {
        return FOOT_PER_SECOND.fromSi(si());
    }

    /**
     * Value in feet per minute.
     *
     * @return value, ft/min
     */
    public double feetPerMinute() {
        return FOOT_PER_MINUTE.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? METRE_PER_SECOND : FOOT_PER_SECOND;
    }
}
