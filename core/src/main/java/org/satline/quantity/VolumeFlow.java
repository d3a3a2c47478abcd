package org.satline.quantity;

/**
 * Volume flow, as of air over a coil; never negative. Immutable, thread-safe. Held in m3/s.
 */
public final class VolumeFlow extends Quantity<VolumeFlow> {
    private static final Unit CUBIC_METRE_PER_SECOND = Unit.of("m3/s", 1);
    private static final Unit CUBIC_METRE_PER_HOUR = Unit.ratio("m3/h", 1, 3600, "m3/hr");
    private static final Unit LITRE_PER_SECOND = Unit.ratio("L/s", 1, 1000);
    private static final Unit CUBIC_FOOT_PER_MINUTE = Unit.ratio("cfm", Factors.CUBIC_FOOT_M3, 60, "ft3/min");
    private static final QuantityKind KIND = QuantityKind.of(
                    "volume flow",
                    CUBIC_METRE_PER_SECOND,
                    CUBIC_METRE_PER_HOUR,
                    LITRE_PER_SECOND,
                    CUBIC_FOOT_PER_MINUTE)
            .from(0, "a volume flow is never negative; check the sign");

    private VolumeFlow(double si) {
        super(si);
    }

    private static VolumeFlow of(double value, Unit unit) {
        return new VolumeFlow(KIND.toSi(value, unit));
    }

    /**
     * Makes a volume flow from cubic metres per second.
     *
     * @param cubicMetresPerSecond value, m3/s; finite, 0 or more
     * @return the volume flow
     * @throws IllegalArgumentException if not finite or negative
     */
    public static VolumeFlow ofCubicMetresPerSecond(double cubicMetresPerSecond) {
        return of(cubicMetresPerSecond, CUBIC_METRE_PER_SECOND);
    }

    /**
     * Makes a volume flow from cubic metres per hour.
     *
     * @param cubicMetresPerHour value, m3/h; finite, 0 or more
     * @return the volume flow
     * @throws IllegalArgumentException if not finite or negative
     */
    public static VolumeFlow ofCubicMetresPerHour(double cubicMetresPerHour) {
        return of(cubicMetresPerHour, CUBIC_METRE_PER_HOUR);
    }

    /**
     * Makes a volume flow from litres per second.
     *
     * @param litresPerSecond value, L/s; finite, 0 or more
     * @return the volume flow
     * @throws IllegalArgumentException if not finite or negative
     */
    public static VolumeFlow ofLitresPerSecond(double litresPerSecond) {
        return of(litresPerSecond, LITRE_PER_SECOND);
    }

    /**
     * Makes a volume flow from cubic feet per minute.
     *
     * @param cubicFeetPerMinute value, cfm; finite, 0 or more
     * @return the volume flow
     * @throws IllegalArgumentException if not finite or negative
     */
    public static VolumeFlow ofCubicFeetPerMinute(double cubicFeetPerMinute) {
        return of(cubicFeetPerMinute, CUBIC_FOOT_PER_MINUTE);
    }

    /**
     * Reads a volume flow such as {@code 1200 cfm} or {@code 2000 m3/h}.
     *
     * @param text number and unit
     * @return the volume flow
     * @throws QuantityFormatException if the text is not a number with a unit of volume flow
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static VolumeFlow parse(String text) {
        return new VolumeFlow(KIND.parse(text));
    }

    /**
     * Value in cubic metres per second.
     *
     * @return value, m3/s
     */
    public double cubicMetresPerSecond() {
        return CUBIC_METRE_PER_SECOND.fromSi(si());
    }

    /**
     * Value in cubic metres per hour.
     *
     * @return value, m3/h
     */
    public double cubicMetresPerHour() {
        return CUBIC_METRE_PER_HOUR.fromSi(si());
    }

    /**
     * Value in litres per second.
     *
     * @return value, L/s
     */
    public double litresPerSecond() {
        return LITRE_PER_SECOND.fromSi(si());
    }

    /**
     * Value in cubic feet per minute.
     *
     * @return value, cfm
     */
    public double cubicFeetPerMinute() {
        return CUBIC_FOOT_PER_MINUTE.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? CUBIC_METRE_PER_HOUR : CUBIC_FOOT_PER_MINUTE;
    }
}
