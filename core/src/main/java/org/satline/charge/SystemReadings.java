package org.satline.charge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.measurement.Reading;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/**
 * What was read on a running system. Immutable, thread-safe; made by {@link #builder()}, each reading optional. What a judgement
 * lacks it says.
 */
public final class SystemReadings {
    private final Builder read;

    private SystemReadings(Builder read) {
        this.read = read;
    }

    /**
     * Starts with no reading.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Starts with these readings.
     *
     * @return a builder
     */
    public Builder toBuilder() {
        return new Builder(read);
    }

    /**
     * Absolute pressure at the suction port.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Pressure>> suctionPressure() {
        return Optional.ofNullable(read.suctionPressure);
    }

    /**
     * Temperature of the suction line at the port.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> suctionLine() {
        return Optional.ofNullable(read.suctionLine);
    }

    /**
     * Absolute pressure at the liquid port.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Pressure>> liquidPressure() {
        return Optional.ofNullable(read.liquidPressure);
    }

    /**
     * Temperature of the liquid line at the port.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> liquidLine() {
        return Optional.ofNullable(read.liquidLine);
    }

    /**
     * Wet bulb of the return air.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> returnWetBulb() {
        return Optional.ofNullable(read.returnWetBulb);
    }

    /**
     * Dry bulb of the return air.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> returnDryBulb() {
        return Optional.ofNullable(read.returnDryBulb);
    }

    /**
     * Dry bulb of the supply air.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> supplyDryBulb() {
        return Optional.ofNullable(read.supplyDryBulb);
    }

    /**
     * Dry bulb of the air entering the condenser.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> condenserAir() {
        return Optional.ofNullable(read.condenserAir);
    }

    /**
     * Dry bulb of the air leaving the condenser.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> condenserAirLeaving() {
        return Optional.ofNullable(read.condenserAirLeaving);
    }

    /**
     * Temperature of the discharge line.
     *
     * @return the reading, if taken
     */
    public Optional<Reading<Temperature>> dischargeLine() {
        return Optional.ofNullable(read.dischargeLine);
    }

    /**
     * Pressure in the evaporator minus pressure at the suction port; 0 unless stated.
     *
     * @return the difference
     */
    public PressureDifference evaporatorAboveSuctionPort() {
        return read.evaporatorAboveSuctionPort;
    }

    /**
     * Pressure in the condenser minus pressure at the liquid port; 0 unless stated.
     *
     * @return the difference
     */
    public PressureDifference condenserAboveLiquidPort() {
        return read.condenserAboveLiquidPort;
    }

    /** All that was read, in a fixed order. */
    private List<Object> parts() {
        return List.of(
                suctionPressure(),
                suctionLine(),
                liquidPressure(),
                liquidLine(),
                returnWetBulb(),
                returnDryBulb(),
                supplyDryBulb(),
                condenserAir(),
                condenserAirLeaving(),
                dischargeLine(),
                evaporatorAboveSuctionPort(),
                condenserAboveLiquidPort());
    }

    /**
     * Equality of all that was read.
     *
     * @param other the object to compare with
     * @return whether both are the same readings
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SystemReadings readings && readings.parts().equals(parts());
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

    /** Collects readings. Mutable, for one thread. */
    public static final class Builder {
        private @Nullable Reading<Pressure> suctionPressure;
        private @Nullable Reading<Temperature> suctionLine;
        private @Nullable Reading<Pressure> liquidPressure;
        private @Nullable Reading<Temperature> liquidLine;
        private @Nullable Reading<Temperature> returnWetBulb;
        private @Nullable Reading<Temperature> returnDryBulb;
        private @Nullable Reading<Temperature> supplyDryBulb;
        private @Nullable Reading<Temperature> condenserAir;
        private @Nullable Reading<Temperature> condenserAirLeaving;
        private @Nullable Reading<Temperature> dischargeLine;
        private PressureDifference evaporatorAboveSuctionPort = PressureDifference.ofPascals(0);
        private PressureDifference condenserAboveLiquidPort = PressureDifference.ofPascals(0);

        private Builder() {}

        private Builder(Builder other) {
            suctionPressure = other.suctionPressure;
            suctionLine = other.suctionLine;
            liquidPressure = other.liquidPressure;
            liquidLine = other.liquidLine;
            returnWetBulb = other.returnWetBulb;
            returnDryBulb = other.returnDryBulb;
            supplyDryBulb = other.supplyDryBulb;
            condenserAir = other.condenserAir;
            condenserAirLeaving = other.condenserAirLeaving;
            dischargeLine = other.dischargeLine;
            evaporatorAboveSuctionPort = other.evaporatorAboveSuctionPort;
            condenserAboveLiquidPort = other.condenserAboveLiquidPort;
        }

        /**
         * Readings at the suction port.
         *
         * @param pressure absolute pressure
         * @param line line temperature there
         * @return this builder
         */
        public Builder suction(Reading<Pressure> pressure, Reading<Temperature> line) {
            return suctionPressure(pressure).suctionLine(line);
        }

        /**
         * Readings at the liquid port.
         *
         * @param pressure absolute pressure
         * @param line line temperature there
         * @return this builder
         */
        public Builder liquid(Reading<Pressure> pressure, Reading<Temperature> line) {
            return liquidPressure(pressure).liquidLine(line);
        }

        /**
         * Absolute pressure at the suction port.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder suctionPressure(Reading<Pressure> reading) {
            suctionPressure = Objects.requireNonNull(reading, "suction pressure");
            return this;
        }

        /**
         * Temperature of the suction line.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder suctionLine(Reading<Temperature> reading) {
            suctionLine = Objects.requireNonNull(reading, "suction line");
            return this;
        }

        /**
         * Absolute pressure at the liquid port.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder liquidPressure(Reading<Pressure> reading) {
            liquidPressure = Objects.requireNonNull(reading, "liquid pressure");
            return this;
        }

        /**
         * Temperature of the liquid line.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder liquidLine(Reading<Temperature> reading) {
            liquidLine = Objects.requireNonNull(reading, "liquid line");
            return this;
        }

        /**
         * Wet bulb of the return air.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder returnWetBulb(Reading<Temperature> reading) {
            returnWetBulb = Objects.requireNonNull(reading, "return wet bulb");
            return this;
        }

        /**
         * Dry bulb of the return air.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder returnDryBulb(Reading<Temperature> reading) {
            returnDryBulb = Objects.requireNonNull(reading, "return dry bulb");
            return this;
        }

        /**
         * Dry bulb of the supply air.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder supplyDryBulb(Reading<Temperature> reading) {
            supplyDryBulb = Objects.requireNonNull(reading, "supply dry bulb");
            return this;
        }

        /**
         * Dry bulb of the air entering the condenser.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder condenserAir(Reading<Temperature> reading) {
            condenserAir = Objects.requireNonNull(reading, "condenser air");
            return this;
        }

        /**
         * Dry bulb of the air leaving the condenser.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder condenserAirLeaving(Reading<Temperature> reading) {
            condenserAirLeaving = Objects.requireNonNull(reading, "condenser air leaving");
            return this;
        }

        /**
         * Temperature of the discharge line.
         *
         * @param reading the reading
         * @return this builder
         */
        public Builder dischargeLine(Reading<Temperature> reading) {
            dischargeLine = Objects.requireNonNull(reading, "discharge line");
            return this;
        }

        /**
         * Pressure drop between coil and port on the suction side.
         *
         * @param evaporatorAbovePort pressure in the evaporator minus pressure at the port, not below zero: vapour flows from coil to port
         * @return this builder
         */
        public Builder suctionDrop(PressureDifference evaporatorAbovePort) {
            if (!(evaporatorAbovePort.pascals() >= 0)) {
                throw new IllegalArgumentException(
                        "suction drop " + evaporatorAbovePort
                                + " is below zero; vapour flows from the evaporator to the port, give how much lower the port is");
            }
            evaporatorAboveSuctionPort = evaporatorAbovePort;
            return this;
        }

        /**
         * Pressure drop between coil and port on the liquid side.
         *
         * @param condenserAbovePort pressure in the condenser minus pressure at the port; negative for a port on the discharge line
         * @return this builder
         */
        public Builder liquidDrop(PressureDifference condenserAbovePort) {
            condenserAboveLiquidPort = Objects.requireNonNull(condenserAbovePort, "liquid drop");
            return this;
        }

        /**
         * The readings so far; the builder may go on.
         *
         * @return the readings
         */
        public SystemReadings build() {
            return new SystemReadings(new Builder(this));
        }
    }
}
