package org.satline.quantity;

/**
 * Power, such as a cooling capacity; never negative. Immutable, thread-safe. Held in watts. The Btu is the International Table one; a ton
 * of refrigeration is 12 000 Btu/h.
 */
public final class Power extends Quantity<Power> {
    /** Btu per hour in a ton of refrigeration, by definition (NIST SP 811, appendix B). */
    private static final double TON_BTU_PER_HOUR = 12000;

    private static final Unit WATT = Unit.of("W", 1, "watt", "watts");
    private static final Unit KILOWATT = Unit.of("kW", 1000, "kilowatt", "kilowatts");
    private static final Unit BTU_PER_HOUR = Unit.ratio("Btu/h", Factors.BTU_J, 3600, "Btu/hr", "Btuh");
    private static final Unit TON_OF_REFRIGERATION =
            Unit.ratio("ton of refrigeration", Factors.BTU_J * TON_BTU_PER_HOUR, 3600, "tons of refrigeration", "TR");
    private static final QuantityKind KIND = QuantityKind.of(
                    "power", WATT, KILOWATT, BTU_PER_HOUR, TON_OF_REFRIGERATION)
            .from(0, "a power is never negative here; check the sign");

    private Power(double si) {
        super(si);
    }

    private static Power of(double value, Unit unit) {
        return new Power(KIND.toSi(value, unit));
    }

    /**
     * Makes a power from watts.
     *
     * @param watts value, W; finite, 0 or more
     * @return the power
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Power ofWatts(double watts) {
        return of(watts, WATT);
    }

    /**
     * Makes a power from kilowatts.
     *
     * @param kilowatts value, kW; finite, 0 or more
     * @return the power
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Power ofKilowatts(double kilowatts) {
        return of(kilowatts, KILOWATT);
    }

    /**
     * Makes a power from Btu per hour.
     *
     * @param btuPerHour value, Btu/h; finite, 0 or more
     * @return the power
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Power ofBtuPerHour(double btuPerHour) {
        return of(btuPerHour, BTU_PER_HOUR);
    }

    /**
     * Makes a power from tons of refrigeration.
     *
     * @param tonsOfRefrigeration value, ton of refrigeration; finite, 0 or more
     * @return the power
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Power ofTonsOfRefrigeration(double tonsOfRefrigeration) {
        return of(tonsOfRefrigeration, TON_OF_REFRIGERATION);
    }

    /**
     * Reads a power such as {@code 10.5 kW}, {@code 36000 Btu/h} or {@code 3 tons of refrigeration}.
     *
     * @param text number and unit
     * @return the power
     * @throws QuantityFormatException if the text is not a number with a unit of power
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static Power parse(String text) {
        return new Power(KIND.parse(text));
    }

    /**
     * Value in watts.
     *
     * @return value, W
     */
    public double watts() {
        return WATT.fromSi(si());
    }

    /**
     * Value in kilowatts.
     *
     * @return value, kW
     */
    public double kilowatts() {
        return KILOWATT.fromSi(si());
    }

    /**
     * Value in Btu per hour.
     *
     * @return value, Btu/h
     */
    public double btuPerHour() {
        return BTU_PER_HOUR.fromSi(si());
    }

    /**
     * Value in tons of refrigeration.
     *
     * @return value, ton of refrigeration
     */
    public double tonsOfRefrigeration() {
        return TON_OF_REFRIGERATION.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOWATT : BTU_PER_HOUR;
    }
}
