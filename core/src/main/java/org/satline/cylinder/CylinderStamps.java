package org.satline.cylinder;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Volume;

/**
 * What is stamped on a cylinder. Tare and water capacity are always needed; the rest is optional here, and {@link StampCheck} says what
 * its absence forbids. Immutable, thread-safe.
 */
public final class CylinderStamps {
    /** Density of water at 15.6 degC (60 degF), to which water capacities refer; 62.37 lb/ft3. */
    public static final Density WATER_AT_60_F = Density.ofKilogramsPerCubicMetre(999.0);

    private final Mass tare;
    /** The largest portable tanks hold about this much water; common practice, no source. */
    private static final double LARGEST_CAPACITY_KG = 30_000;

    private final Mass waterCapacity;
    private final Optional<CylinderSpecification> specification;
    private final Optional<GaugePressure> servicePressure;
    private final Optional<GaugePressure> testPressure;
    private final Optional<Boolean> flammableMark;
    private final Optional<LocalDate> retestDue;
    private final Optional<Boolean> refillable;
    private final Optional<Mass> massRating;

    private CylinderStamps(Builder builder, Mass tare, Mass waterCapacity) {
        this.tare = tare;
        this.waterCapacity = waterCapacity;
        this.specification = Optional.ofNullable(builder.specification);
        this.servicePressure = Optional.ofNullable(builder.servicePressure);
        this.testPressure = Optional.ofNullable(builder.testPressure);
        this.flammableMark = Optional.ofNullable(builder.flammableMark);
        this.retestDue = Optional.ofNullable(builder.retestDue);
        this.refillable = Optional.ofNullable(builder.refillable);
        this.massRating = Optional.ofNullable(builder.massRating);
    }

    /**
     * Starts from an empty set of stamps.
     *
     * @return a builder, for one thread
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns the tare weight (TW): the empty cylinder with its valve.
     *
     * @return the tare, above zero
     */
    public Mass tare() {
        return tare;
    }

    /**
     * Returns the water capacity (WC), by mass of water at 60 degF.
     *
     * @return the water capacity, above zero
     */
    public Mass waterCapacity() {
        return waterCapacity;
    }

    /**
     * Returns the inner volume: the water capacity over the density of water at 60 degF.
     *
     * @return the volume
     */
    public Volume volume() {
        return Volume.ofCubicMetres(waterCapacity.kilograms() / WATER_AT_60_F.kilogramsPerCubicMetre());
    }

    /**
     * Returns the specification.
     *
     * @return the mark, where known
     */
    public Optional<CylinderSpecification> specification() {
        return specification;
    }

    /**
     * Returns the service pressure: stamped on its own, else the one within the specification mark.
     *
     * @return gauge pressure at 70 degF, where known
     */
    public Optional<GaugePressure> servicePressure() {
        return servicePressure.or(() -> specification.flatMap(CylinderSpecification::markedPressure));
    }

    /** The service pressure stamped apart from the specification mark. */
    Optional<GaugePressure> separateServicePressure() {
        return servicePressure;
    }

    /**
     * Returns the test pressure.
     *
     * @return gauge pressure, where known
     */
    public Optional<GaugePressure> testPressure() {
        return testPressure;
    }

    /**
     * Tells whether the cylinder is marked for flammable gas.
     *
     * @return true or false, where known
     */
    public Optional<Boolean> flammableMark() {
        return flammableMark;
    }

    /**
     * Returns the last day on which the cylinder may be filled before its next retest.
     *
     * @return the day, where known
     */
    public Optional<LocalDate> retestDue() {
        return retestDue;
    }

    /**
     * Tells whether the cylinder may be refilled: never by a non-refillable mark, whatever is stated; else as stated, else as its specification says.
     *
     * @return true or false, where known
     */
    public Optional<Boolean> refillable() {
        if (specification.filter(CylinderSpecification::isNonRefillable).isPresent()) {
            return Optional.of(false);
        }
        return refillable.or(
                () -> specification.filter(mark -> !mark.type().isEmpty()).map(mark -> true));
    }

    /**
     * Tells whether the cylinder is stated to be refillable against its mark.
     *
     * @return true where a non-refillable mark is stated to be refillable
     */
    public boolean isRefillingContradictory() {
        return refillable.orElse(false) && refillable().equals(Optional.of(false));
    }

    /**
     * Returns the greatest mass for which the container is rated, a figure that some older containers carry.
     *
     * @return the rating, where known
     */
    public Optional<Mass> massRating() {
        return massRating;
    }

    /** All that is stamped, and what follows from it, in a fixed order. */
    private List<Object> parts() {
        return List.of(
                tare(),
                waterCapacity(),
                specification(),
                servicePressure(),
                testPressure(),
                flammableMark(),
                retestDue(),
                refillable(),
                isRefillingContradictory(),
                massRating());
    }

    /**
     * Equality of all that is stamped, or follows from it.
     *
     * @param other the object to compare with
     * @return whether both are the same stamps
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CylinderStamps stamps && stamps.parts().equals(parts());
    }

    /**
     * Hash code that goes with equality.
     *
     * @return hash code
     */
    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    @Override
    public String toString() {
        return specification.map(mark -> mark + ", ").orElse("") + "WC " + waterCapacity + ", TW " + tare;
    }

    /** Collects the stamps. Mutable; for one thread. */
    public static final class Builder {
        private @Nullable Mass tare;
        private @Nullable Mass waterCapacity;
        private @Nullable CylinderSpecification specification;
        private @Nullable GaugePressure servicePressure;
        private @Nullable GaugePressure testPressure;
        private @Nullable Boolean flammableMark;
        private @Nullable LocalDate retestDue;
        private @Nullable Boolean refillable;
        private @Nullable Mass massRating;

        private Builder() {}

        /**
         * Sets the tare weight.
         *
         * @param value the mass of the empty cylinder with its valve
         * @return this builder
         */
        public Builder tare(Mass value) {
            tare = Objects.requireNonNull(value, "tare");
            return this;
        }

        /**
         * Sets the water capacity.
         *
         * @param value the mass of water at 60 degF that fills the cylinder
         * @return this builder
         */
        public Builder waterCapacity(Mass value) {
            waterCapacity = Objects.requireNonNull(value, "waterCapacity");
            return this;
        }

        /**
         * Sets the specification.
         *
         * @param value the mark
         * @return this builder
         */
        public Builder specification(CylinderSpecification value) {
            specification = Objects.requireNonNull(value, "specification");
            return this;
        }

        /**
         * Sets the service pressure.
         *
         * @param value gauge pressure at 70 degF
         * @return this builder
         */
        public Builder servicePressure(GaugePressure value) {
            servicePressure = Objects.requireNonNull(value, "servicePressure");
            return this;
        }

        /**
         * Sets the test pressure.
         *
         * @param value gauge pressure
         * @return this builder
         */
        public Builder testPressure(GaugePressure value) {
            testPressure = Objects.requireNonNull(value, "testPressure");
            return this;
        }

        /**
         * States whether the cylinder is marked for flammable gas.
         *
         * @param value true where it is
         * @return this builder
         */
        public Builder flammableMark(boolean value) {
            flammableMark = value;
            return this;
        }

        /**
         * Sets the retest date.
         *
         * @param value the last day on which it may be filled
         * @return this builder
         */
        public Builder retestDue(LocalDate value) {
            retestDue = Objects.requireNonNull(value, "retestDue");
            return this;
        }

        /**
         * States whether the cylinder may be refilled.
         *
         * @param value true where it may
         * @return this builder
         */
        public Builder refillable(boolean value) {
            refillable = value;
            return this;
        }

        /**
         * Sets the greatest mass for which the container is rated.
         *
         * @param value the rating
         * @return this builder
         */
        public Builder massRating(Mass value) {
            massRating = Objects.requireNonNull(value, "massRating");
            return this;
        }

        /**
         * Builds the stamps.
         *
         * @return the stamps
         * @throws IllegalArgumentException if tare or water capacity is missing or zero
         */
        public CylinderStamps build() {
            if (waterCapacity != null && !(waterCapacity.kilograms() <= LARGEST_CAPACITY_KG)) {
                throw new IllegalArgumentException("water capacity (WC) " + waterCapacity
                        + " is outside (0, 30000] kg; read it on the collar and mind its unit");
            }
            return new CylinderStamps(
                    this, above0(tare, "tare weight (TW)"), above0(waterCapacity, "water capacity (WC)"));
        }

        private static Mass above0(@Nullable Mass mass, String what) {
            if (mass == null || !(mass.kilograms() > 0)) {
                throw new IllegalArgumentException(
                        what
                                + " is missing from the stamps or zero; read it on the collar, a cylinder without it is not filled");
            }
            return mass;
        }
    }
}
