package org.satline.quantity;

/**
 * Specific heat capacity, {@code c_p} or {@code c_V}; above 0. Immutable, thread-safe. Held in J/(kg K). The Btu is the International
 * Table one.
 */
public final class SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {
    private static final Unit JOULE_PER_KILOGRAM_KELVIN = SpecificEntropy.JOULE_PER_KILOGRAM_KELVIN;
    private static final Unit KILOJOULE_PER_KILOGRAM_KELVIN = SpecificEntropy.KILOJOULE_PER_KILOGRAM_KELVIN;
    private static final Unit BTU_PER_POUND_FAHRENHEIT_DEGREE = SpecificEntropy.BTU_PER_POUND_FAHRENHEIT_DEGREE;
    private static final QuantityKind KIND = QuantityKind.of(
                    "specific heat capacity",
                    JOULE_PER_KILOGRAM_KELVIN,
                    KILOJOULE_PER_KILOGRAM_KELVIN,
                    BTU_PER_POUND_FAHRENHEIT_DEGREE)
            .above(0, "a heat capacity is positive; check the number");

    private SpecificHeatCapacity(double si) {
        super(si);
    }

    private static SpecificHeatCapacity of(double value, Unit unit) {
        return new SpecificHeatCapacity(KIND.toSi(value, unit));
    }

    /**
     * Makes a specific heat capacity from joules per kilogram kelvin.
     *
     * @param joulesPerKilogramKelvin value, J/(kg K); finite, above 0
     * @return the specific heat capacity
     * @throws IllegalArgumentException if not finite or not above 0
     */
    public static SpecificHeatCapacity ofJoulesPerKilogramKelvin(double joulesPerKilogramKelvin) {
        return of(joulesPerKilogramKelvin, JOULE_PER_KILOGRAM_KELVIN);
    }

    /**
     * Makes a specific heat capacity from kilojoules per kilogram kelvin.
     *
     * @param kilojoulesPerKilogramKelvin value, kJ/(kg K); finite, above 0
     * @return the specific heat capacity
     * @throws IllegalArgumentException if not finite or not above 0
     */
    public static SpecificHeatCapacity ofKilojoulesPerKilogramKelvin(double kilojoulesPerKilogramKelvin) {
        return of(kilojoulesPerKilogramKelvin, KILOJOULE_PER_KILOGRAM_KELVIN);
    }

    /**
     * Makes a specific heat capacity from Btu per pound Fahrenheit degree.
     *
     * @param btuPerPoundFahrenheitDegree value, Btu/(lb degF); finite, above 0
     * @return the specific heat capacity
     * @throws IllegalArgumentException if not finite or not above 0
     */
    public static SpecificHeatCapacity ofBtuPerPoundFahrenheitDegree(double btuPerPoundFahrenheitDegree) {
        return of(btuPerPoundFahrenheitDegree, BTU_PER_POUND_FAHRENHEIT_DEGREE);
    }

    /**
     * Reads a specific heat capacity such as {@code 1 kJ/(kg K)} or {@code 0.24 Btu/(lb degF)}.
     *
     * @param text number and unit
     * @return the specific heat capacity
     * @throws QuantityFormatException if the text is not a number with a unit of specific heat capacity
     * @throws IllegalArgumentException if the value is not finite or not above 0
     */
    public static SpecificHeatCapacity parse(String text) {
        return new SpecificHeatCapacity(KIND.parse(text));
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
