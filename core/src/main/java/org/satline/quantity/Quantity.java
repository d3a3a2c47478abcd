package org.satline.quantity;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One number of one kind, held in SI; what the quantities have in common. Two of one kind are ordered and equal by value; {@code <},
 * {@code >} and ranges of Kotlin work on them. Immutable, thread-safe.
 *
 * @param <Q> the quantity itself
 */
public abstract sealed class Quantity<Q extends Quantity<Q>> implements Comparable<Q>
        permits Density,
                GaugePressure,
                Length,
                Mass,
                MassDifference,
                Power,
                Pressure,
                PressureDifference,
                SpecificEnthalpy,
                SpecificEntropy,
                SpecificHeatCapacity,
                Speed,
                Temperature,
                TemperatureDifference,
                Volume,
                VolumeFlow {
    private final double si;

    Quantity(double si) {
        this.si = si;
    }

    /**
     * Value in the SI unit.
     *
     * @return value, in {@link #siUnit()}
     */
    public final double si() {
        return si;
    }

    /**
     * Symbol of the SI unit, such as {@code K}, {@code Pa} or {@code kg/m3}; {@code Pa gauge} for gauge pressures. {@code parse} reads it.
     *
     * @return the unit of {@link #si()}
     */
    public final String siUnit() {
        return kind().siUnit().symbol();
    }

    abstract QuantityKind kind();

    /** The unit in which a value reads well. */
    abstract Unit unitIn(UnitSystem system);

    /**
     * Value in a unit given by its spelling, as {@code parse} reads it.
     *
     * @param unit a unit of this kind of quantity
     * @return value in that unit
     * @throws QuantityFormatException if the unit is unknown here; the message lists the accepted ones
     */
    public final double valueIn(String unit) {
        return kind().unit(unit).fromSi(si);
    }

    /**
     * Text in a unit given by its spelling, with a fixed number of decimals, rounded half up. {@code parse} reads it back.
     *
     * @param unit a unit of this kind of quantity
     * @param decimals digits after the point, [0, 15]
     * @return number, space, unit symbol
     * @throws QuantityFormatException if the unit is unknown here; the message lists the accepted ones
     * @throws IllegalArgumentException if decimals is out of range
     */
    public final String in(String unit, int decimals) {
        return kind().print(si, kind().unit(unit), decimals);
    }

    /**
     * Text in the usual unit of a system: two decimals for temperatures and their differences, otherwise six significant digits.
     * {@code parse} reads it back, up to that rounding.
     *
     * @param system SI or US units
     * @return number, space, unit symbol
     */
    public final String format(UnitSystem system) {
        Objects.requireNonNull(system, "system");
        return kind().print(si, unitIn(system));
    }

    /**
     * Order by value.
     *
     * @param other the value to compare with
     * @return negative, zero or positive as this value is less than, equal to or greater than the other
     */
    @Override
    public final int compareTo(Q other) {
        return Double.compare(si, other.si());
    }

    /**
     * Exact equality: same kind of quantity and the same double in SI.
     *
     * @param other the object to compare with
     * @return whether both are the same value
     */
    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Quantity<?> scalar && scalar.kind() == kind() && Double.compare(scalar.si(), si) == 0;
    }

    /**
     * Hash code that goes with exact equality.
     *
     * @return hash code
     */
    @Override
    public final int hashCode() {
        return Double.hashCode(si);
    }

    /**
     * Text in SI units, as {@link #format(UnitSystem)} gives it.
     *
     * @return number, space, unit symbol
     */
    @Override
    public final String toString() {
        return format(UnitSystem.SI);
    }
}
