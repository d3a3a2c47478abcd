package org.satline.quantity;

import java.util.Objects;

/**
 * Mass density {@code rho}; above 0. Immutable, thread-safe. Held in kg/m3.
 */
public final class Density extends Quantity<Density> {
    private static final Unit KILOGRAM_PER_CUBIC_METRE = Unit.of("kg/m3", 1, "g/L");
    private static final Unit POUND_PER_CUBIC_FOOT =
            Unit.ratio("lb/ft3", Factors.POUND_KG, Factors.CUBIC_FOOT_M3, "lbm/ft3", "lb/cu ft");
    private static final Unit KILOGRAM_PER_LITRE = Unit.of("kg/L", 1000, "g/cm3", "g/mL");
    private static final QuantityKind KIND = QuantityKind.of(
                    "density", KILOGRAM_PER_CUBIC_METRE, POUND_PER_CUBIC_FOOT, KILOGRAM_PER_LITRE)
            .above(0, "a density is positive; check the number");

    private Density(double si) {
        super(si);
    }

    private static Density of(double value, Unit unit) {
        return new Density(KIND.toSi(value, unit));
    }

    /**
     * Makes a density from kilograms per cubic metre.
     *
     * @param kilogramsPerCubicMetre value, kg/m3; finite, above 0
     * @return the density
     * @throws IllegalArgumentException if not finite or not above 0
     */
    public static Density ofKilogramsPerCubicMetre(double kilogramsPerCubicMetre) {
        return of(kilogramsPerCubicMetre, KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Makes a density from pounds per cubic foot.
     *
     * @param poundsPerCubicFoot value, lb/ft3; finite, above 0
     * @return the density
     * @throws IllegalArgumentException if not finite or not above 0
     */
    public static Density ofPoundsPerCubicFoot(double poundsPerCubicFoot) {
        return of(poundsPerCubicFoot, POUND_PER_CUBIC_FOOT);
    }

    /**
     * Reads a density such as {@code 1207 kg/m3} or {@code 75.3 lb/ft3}.
     *
     * @param text number and unit
     * @return the density
     * @throws QuantityFormatException if the text is not a number with a unit of density
     * @throws IllegalArgumentException if the value is not finite or not above 0
     */
    public static Density parse(String text) {
        return new Density(KIND.parse(text));
    }

    /**
     * Value in kilograms per cubic metre.
     *
     * @return value, kg/m3
     */
    public double kilogramsPerCubicMetre() {
        return KILOGRAM_PER_CUBIC_METRE.fromSi(si());
    }

    /**
     * Value in pounds per cubic foot.
     *
     * @return value, lb/ft3
     */
    public double poundsPerCubicFoot() {
        return POUND_PER_CUBIC_FOOT.fromSi(si());
    }

    /**
     * Mass of a volume at this density.
     *
     * @param volume the volume
     * @return density times volume
     * @throws IllegalArgumentException if the product overflows
     */
    public Mass times(Volume volume) {
        Objects.requireNonNull(volume, "volume");
        return Mass.ofKilograms(si() * volume.cubicMetres());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    @Override
    Unit unitIn(UnitSystem system) {
        return system == UnitSystem.SI ? KILOGRAM_PER_CUBIC_METRE : POUND_PER_CUBIC_FOOT;
    }
}
