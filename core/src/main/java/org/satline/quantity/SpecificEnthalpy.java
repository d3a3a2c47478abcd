package org.satline.quantity;

/**
 * Specific enthalpy {@code h}; signed, since its zero is a convention, which whoever computes it states. Immutable, thread-safe. Held in
 * J/kg. The Btu is the International Table one.
 */
public final class SpecificEnthalpy extends Quantity<SpecificEnthalpy> {
    private static final Unit JOULE_PER_KILOGRAM = Unit.of("J/kg", 1);
    private static final Unit KILOJOULE_PER_KILOGRAM = Unit.of("kJ/kg", 1000, "J/g");
    private static final Unit BTU_PER_POUND = Unit.of("Btu/lb", Factors.BTU_PER_POUND, "Btu/lbm");
    private static final QuantityKind KIND =
            QuantityKind.of("specific enthalpy", JOULE_PER_KILOGRAM, KILOJOULE_PER_KILOGRAM, BTU_PER_POUND);

    private SpecificEnthalpy(double si) {
        super(si);
    }

    private static SpecificEnthalpy of(double value, Unit unit) {
        return new SpecificEnthalpy(KIND.toSi(value, unit));
    }

    /**
     * Makes a specific enthalpy from joules per kilogram.
     *
     * @param joulesPerKilogram value, J/kg; finite
     * @return the specific enthalpy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEnthalpy ofJoulesPerKilogram(double joulesPerKilogram) {
        return of(joulesPerKilogram, JOULE_PER_KILOGRAM);
    }

    /**
     * Makes a specific enthalpy from kilojoules per kilogram.
     *
     * @param kilojoulesPerKilogram value, kJ/kg; finite
     * @return the specific enthalpy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEnthalpy ofKilojoulesPerKilogram(double kilojoulesPerKilogram) {
        return of(kilojoulesPerKilogram, KILOJOULE_PER_KILOGRAM);
    }

    /**
     * Makes a specific enthalpy from Btu per pound.
     *
     * @param btuPerPound value, Btu/lb; finite
     * @return the specific enthalpy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEnthalpy ofBtuPerPound(double btuPerPound) {
        return of(btuPerPound, BTU_PER_POUND);
    }

    /**
     * Reads a specific enthalpy such as {@code 200 kJ/kg} or {@code 86 Btu/lb}.
     *
     * @param text number and unit
     * @return the specific enthalpy
     * @throws QuantityFormatException if the text is not a number with a unit of specific enthalpy
     * @throws IllegalArgumentException if the value is not finite
     */
    public static SpecificEnthalpy parse(String text) {
        return new SpecificEnthalpy(KIND.parse(text));
    }

    /**
     * Value in joules per kilogram.
     *
     * @return value, J/kg
     */
    public double joulesPerKilogram() {
        return JOULE_PER_KILOGRAM.fromSi(si());
    }

    /**
     * Value in kilojoules per kilogram.
     *
     * @return value, kJ/kg
     */
    public double kilojoulesPerKilogram() {
        return KILOJOULE_PER_KILOGRAM.fromSi(si());
    }

    /**
     * Value in Btu per pound.
     *
     * @return value, Btu/lb
     */
    public double btuPerPound() {
        return BTU_PER_POUND.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOJOULE_PER_KILOGRAM : BTU_PER_POUND;
    }
}
