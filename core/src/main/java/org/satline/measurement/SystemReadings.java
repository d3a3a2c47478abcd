package org.satline.measurement;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** What was read on a running system, by place. Immutable, thread-safe; made by {@link #builder()}. What a judgement lacks it says. */
public final class SystemReadings {
    private final Map<Place, Reading<?>> read;

    private SystemReadings(Map<Place, Reading<?>> read) {
        this.read = Collections.unmodifiableMap(read);
    }

    /**
     * Starts with no reading.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder(new EnumMap<>(Place.class));
    }

    /**
     * Starts with these readings.
     *
     * @return a builder
     */
    public Builder toBuilder() {
        return new Builder(copy(read));
    }

    /**
     * All that was read.
     *
     * @return readings in the order of the places, unmodifiable
     */
    public Map<Place, Reading<?>> all() {
        return read;
    }

    /**
     * A pressure.
     *
     * @param place a place of kind {@link Place.Kind#PRESSURE}
     * @return the reading, if taken
     */
    public Optional<Reading<Pressure>> pressure(Place place) {
        return found(place, Pressure.class);
    }

    /**
     * A temperature.
     *
     * @param place a place of kind {@link Place.Kind#PIPE} or {@link Place.Kind#AIR}
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> temperature(Place place) {
        return found(place, Temperature.class);
    }

    /**
     * A drop of pressure between coil and port.
     *
     * @param place a place of kind {@link Place.Kind#DROP}
     * @return the drop; 0 unless stated
     */
    public PressureDifference drop(Place place) {
        return found(place, PressureDifference.class).map(Reading::value).orElse(PressureDifference.ZERO);
    }

    @SuppressWarnings("unchecked") // the builder admits at each place the type of its kind only
    private <Q extends org.satline.quantity.Quantity<Q>> Optional<Reading<Q>> found(Place place, Class<Q> type) {
        if (type(place) != type) {
            throw new IllegalArgumentException(
                    place + " is no " + type.getSimpleName() + " but of kind " + place.kind());
        }
        return Optional.ofNullable((Reading<Q>) read.get(place));
    }

    private static Class<?> type(Place place) {
        return switch (place.kind()) {
            case PRESSURE -> Pressure.class;
            case PIPE, AIR -> Temperature.class;
            case DROP -> PressureDifference.class;
        };
    }

    private static EnumMap<Place, Reading<?>> copy(Map<Place, Reading<?>> from) {
        EnumMap<Place, Reading<?>> copy = new EnumMap<>(Place.class);
        copy.putAll(from);
        return copy;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SystemReadings readings && readings.read.equals(read);
    }

    @Override
    public int hashCode() {
        return read.hashCode();
    }

    @Override
    public String toString() {
        return "readings " + read;
    }

    /** Collects readings. Mutable, for one thread. */
    public static final class Builder {
        private final EnumMap<Place, Reading<?>> read;

        private Builder(EnumMap<Place, Reading<?>> read) {
            this.read = read;
        }

        /**
         * Sets a reading.
         *
         * @param place where it was taken
         * @param reading the reading, of the type of the place; a drop is not below zero, since pressure falls along the flow
         * @return this builder
         * @throws IllegalArgumentException if the reading is of another type, or a drop is below zero
         */
        public Builder put(Place place, Reading<?> reading) {
            Objects.requireNonNull(reading, "reading");
            if (reading.value().getClass() != type(place)) {
                throw new IllegalArgumentException(place.field() + " " + reading.value() + " is no "
                        + type(place).getSimpleName() + "; give one");
            }
            if (reading.value() instanceof PressureDifference drop && !(drop.pascals() >= 0)) {
                throw new IllegalArgumentException(place.field() + " " + drop
                        + " is below zero; pressure falls along the flow, give how much lower the port is");
            }
            read.put(place, reading);
            return this;
        }

        /**
         * Leaves a reading out.
         *
         * @param place where it was taken
         * @return this builder
         */
        public Builder without(Place place) {
            read.remove(place);
            return this;
        }

        /**
         * Sets pressure and line temperature of the suction side.
         *
         * @param pressure absolute pressure at the port
         * @param line temperature of the line
         * @return this builder
         */
        public Builder suction(Reading<Pressure> pressure, Reading<Temperature> line) {
            return put(Place.SUCTION_PRESSURE, pressure).put(Place.SUCTION_LINE, line);
        }

        /**
         * Sets pressure and line temperature of the liquid side.
         *
         * @param pressure absolute pressure at the port
         * @param line temperature of the line
         * @return this builder
         */
        public Builder liquid(Reading<Pressure> pressure, Reading<Temperature> line) {
            return put(Place.LIQUID_PRESSURE, pressure).put(Place.LIQUID_LINE, line);
        }

        /**
         * The readings so far; the builder may go on.
         *
         * @return the readings
         */
        public SystemReadings build() {
            return new SystemReadings(copy(read));
        }
    }
}
