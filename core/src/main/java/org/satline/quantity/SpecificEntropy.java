package org.satline.quantity;

/**
 * Specific entropy {@code s}; signed, since its zero is a convention, which whoever computes it states. Immutable, thread-safe. Held
 * in J/(kg K). The Btu is the International Table one.
 */
public final class SpecificEntropy extends Quantity<SpecificEntropy> {
    static final Unit JOULE_PER_KILOGRAM_KELVIN =
            Unit.of("J/(kg K)", 1, "J/kg-K", "J/kgK", "J/(kg*K)", "J/(kg\u00B7K)");
    static final Unit KILOJOULE_PER_KILOGRAM_KELVIN =
            Unit.of("kJ/(kg K)", 1000, "kJ/kg-K", "kJ/kgK", "kJ/(kg*K)", "kJ/(kg\u00B7K)");
    static final Unit BTU_PER_POUND_FAHRENHEIT_DEGREE = Unit.ratio(
            "Btu/(lb degF)",
            Factors.BTU_PER_POUND * Factors.FAHRENHEIT_DEGREES_PER_FIVE_KELVINS,
            5,
            "Btu/lb-F",
            "Btu/lb-degF",
            "Btu/(lb F)",
            "Btu/(lb \u00B0F)",
            "Btu/(lb degR)",
            "Btu/lb-R",
            "Btu/(lb R)");
    private static final QuantityKind KIND = QuantityKind.of(
            "specific entropy",
            JOULE_PER_KILOGRAM_KELVIN,
            KILOJOULE_PER_KILOGRAM_KELVIN,
            BTU_PER_POUND_FAHRENHEIT_DEGREE);

    private SpecificEntropy(double si) {
        super(si);
    }

    private static SpecificEntropy of(double value, Unit unit) {
        return new SpecificEntropy(KIND.toSi(value, unit));
    }

    /**
     * Makes a specific entropy from joules per kilogram kelvin.
     *
     * @param joulesPerKilogramKelvin value, J/(kg K); finite
     * @return the specific entropy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEntropy ofJoulesPerKilogramKelvin(double joulesPerKilogramKelvin) {
        return of(joulesPerKilogramKelvin, JOULE_PER_KILOGRAM_KELVIN);
    }

    /**
     * Makes a specific entropy from kilojoules per kilogram kelvin.
     *
     * @param kilojoulesPerKilogramKelvin value, kJ/(kg K); finite
     * @return the specific entropy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEntropy ofKilojoulesPerKilogramKelvin(double kilojoulesPerKilogramKelvin) {
        return of(kilojoulesPerKilogramKelvin, KILOJOULE_PER_KILOGRAM_KELVIN);
    }

    /**
     * Makes a specific entropy from Btu per pound Fahrenheit degree.
     *
     * @param btuPerPoundFahrenheitDegree value, Btu/(lb degF); finite
     * @return the specific entropy
     * @throws IllegalArgumentException if not finite
     */
    public static SpecificEntropy ofBtuPerPoundFahrenheitDegree(double btuPerPoundFahrenheitDegree) {
        return of(btuPerPoundFahrenheitDegree, BTU_PER_POUND_FAHRENHEIT_DEGREE);
    }

    /**
     * Reads a specific entropy such as {@code 1 kJ/(kg K)} or {@code 0.24 Btu/(lb degF)}.
     *
     * @param text number and unit
     * @return the specific entropy
     * @throws QuantityFormatException if the text is not a number with a unit of specific entropy
     * @throws IllegalArgumentException if the value is not finite
     */
    public static SpecificEntropy parse(String text) {
        return new SpecificEntropy(KIND.parse(text));
    }

    /**
     * Value in joules per kilogram kelvin.
     *
     * @return value, J/(kg K)
     */
    public double joulesPerKilogramKelvin() {
        return JOULE_PER_KILOGRAM_KELVIN.fromSi(si());
    }

    /**
     * Value in kilojoules per kilogram kelvin.
     *
     * @return value, kJ/(kg K)
     */
    public double kilojoulesPerKilogramKelvin() {
        return KILOJOULE_PER_KILOGRAM_KELVIN.fromSi(si());
    }

    /**
     * Value in Btu per pound Fahrenheit degree.
     *
     * @return value, Btu/(lb degF)
     */
    public double btuPerPoundFahrenheitDegree() {
        return BTU_PER_POUND_FAHRENHEIT_DEGREE.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOJOULE_PER_KILOGRAM_KELVIN : BTU_PER_POUND_FAHRENHEIT_DEGREE;
    }
}
