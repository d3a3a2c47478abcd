package org.satline.quantity;

import java.util.Objects;

/**
 * Difference of two pressures, such as the drop along a hose; signed. Immutable, thread-safe. Held in pascals; no atmosphere enters.
 */
public final class PressureDifference extends Quantity<PressureDifference> {
    /** Conventional inch of water, Pa: 25.4 mm at 1000 kg/m3 and g_n; 249.0889 (NIST SP 811). */
    private static final double INCH_OF_WATER_PA = Factors.INCH_M * 1000 * Factors.STANDARD_GRAVITY;

    private static final Unit PASCAL = Unit.of("Pa", 1, "pascal", "pascals");
    private static final Unit KILOPASCAL = Unit.of("kPa", 1000);
    private static final Unit BAR = Unit.of("bar", 1e5, "bars");
    private static final Unit PSI = Unit.of("psi", Factors.PSI_PA, "psid");
    private static final Unit MEGAPASCAL = Unit.of("MPa", 1e6);
    private static final Unit MILLIBAR = Unit.of("mbar", 100);
    private static final Unit INCH_OF_WATER =
            Unit.of("inH2O", INCH_OF_WATER_PA, "in. w.c.", "in w.c.", "inWC", "in wg", "in. H2O");
    private static final QuantityKind KIND = QuantityKind.of(
                    "pressure difference", PASCAL, KILOPASCAL, BAR, PSI, MEGAPASCAL, MILLIBAR, INCH_OF_WATER)
            .refusing("a difference has neither gauge nor absolute zero: write psi", "psia", "psig");

    /** No difference. */
    public static final PressureDifference ZERO = new PressureDifference(0);

    private PressureDifference(double si) {
        super(si);
    }

    private static PressureDifference of(double value, Unit unit) {
        return new PressureDifference(KIND.toSi(value, unit));
    }

    /**
     * Makes a pressure difference from pascals.
     *
     * @param pascals value, Pa; finite
     * @return the pressure difference
     * @throws IllegalArgumentException if not finite
     */
    public static PressureDifference ofPascals(double pascals) {
        return of(pascals, PASCAL);
    }

    /**
     * Makes a pressure difference from kilopascals.
     *
     * @param kilopascals value, kPa; finite
     * @return the pressure difference
     * @throws IllegalArgumentException if not finite
     */
    public static PressureDifference ofKilopascals(double kilopascals) {
        return of(kilopascals, KILOPASCAL);
    }

    /**
     * Makes a pressure difference from bars.
     *
     * @param bars value, bar; finite
     * @return the pressure difference
     * @throws IllegalArgumentException if not finite
     */
    public static PressureDifference ofBars(double bars) {
        return of(bars, BAR);
    }

    /**
     * Makes a pressure difference from psi.
     *
     * @param psi value, psi; finite
     * @return the pressure difference
     * @throws IllegalArgumentException if not finite
     */
    public static PressureDifference ofPsi(double psi) {
        return of(psi, PSI);
    }

    /**
     * Reads a pressure difference such as {@code 20 kPa} or {@code 3 psi}.
     *
     * @param text number and unit
     * @return the pressure difference
     * @throws QuantityFormatException if the text is not a number with a unit of pressure difference
     * @throws IllegalArgumentException if the value is not finite
     */
    public static PressureDifference parse(String text) {
        return new PressureDifference(KIND.parse(text));
    }

    /**
     * Value in pascals.
     *
     * @return value, Pa
     */
    public double pascals() {
        return PASCAL.fromSi(si());
    }

    /**
     * Value in kilopascals.
     *
     * @return value, kPa
     */
    public double kilopascals() {
        return KILOPASCAL.fromSi(si());
    }

    /**
     * Value in bars.
     *
     * @return value, bar
     */
    public double bars() {
        return BAR.fromSi(si());
    }

    /**
     * Value in psi.
     *
     * @return value, psi
     */
    public double psi() {
        return PSI.fromSi(si());
    }

    /**
     * Sum of this difference and another.
     *
     * @param other what to add
     * @return the sum
     * @throws IllegalArgumentException if the sum overflows
     */
    public PressureDifference plus(PressureDifference other) {
        Objects.requireNonNull(other, "other");
        return ofPascals(si() + other.si());
    }

    /**
     * This difference less another.
     *
     * @param other what to take away
     * @return the result
     * @throws IllegalArgumentException if the result overflows
     */
    public PressureDifference minus(PressureDifference other) {
        Objects.requireNonNull(other, "other");
        return ofPascals(si() - other.si());
    }

    /**
     * The same difference with the other sign.
     *
     * @return the negated difference
     */
    public PressureDifference negated() {
        return ofPascals(-si());
    }

    /**
     * The size of this difference.
     *
     * @return the difference without its sign
     */
    public PressureDifference abs() {
        return ofPascals(Math.abs(si()));
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOPASCAL : PSI;
    }
}
