package org.satline.charge;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.StandardUncertainty;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.OnDemand;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationLines;

/**
 * One row of a service's readings of a running system, in SI doubles: small, and open to whatever a data base holds. NaN stands for not
 * read. What is wrong with a row is said when it is asked about, so that it does not stop the rows beside it. Immutable, thread-safe;
 * made by {@link #of}.
 *
 * <p>Each reading has an error of its own. Where no uncertainty is stated, the permitted errors of the California Energy Code, Reference
 * Appendix RA3.2 (gauges 2013, thermometers 2008) are taken.
 */
public final class ChargeRow {
    private static final double SUCTION_PA = limits(DigitalGauge.ra32SuctionLine());
    private static final double LIQUID_PA = limits(DigitalGauge.ra32LiquidLine());
    private static final OnDemand<ThermometerClass> THERMOMETER = new OnDemand<>() {
        @Override
        protected ThermometerClass read() {
            return ThermometerClass.named("california-ra3.2");
        }
    };
    private static final Place[] PLACES = Place.values();

    private final Refrigerant refrigerant;
    private final MeteringDevice metering;
    private final double[] read;
    private final double targetK;
    private final double toleranceK;
    private final double pressureUncertaintyPa;
    private final double temperatureUncertaintyK;
    private final Optional<Boolean> outdoorMinimumMet;

    private ChargeRow(Builder builder) {
        refrigerant = builder.refrigerant;
        metering = builder.metering;
        read = builder.read.clone();
        targetK = builder.targetK;
        toleranceK = builder.toleranceK;
        pressureUncertaintyPa = builder.pressureUncertaintyPa;
        temperatureUncertaintyK = builder.temperatureUncertaintyK;
        outdoorMinimumMet = builder.outdoorMinimumMet;
    }

    private static double limits(DigitalGauge gauge) {
        return StandardUncertainty.ofLimits(
                gauge.permittedError(GaugePressure.ofPascals(0)).pascals());
    }

    /**
     * Starts a row.
     *
     * @param refrigerant what is in the system
     * @param metering what meters it
     * @return a builder without a reading
     */
    public static Builder of(Refrigerant refrigerant, MeteringDevice metering) {
        return new Builder(
                Objects.requireNonNull(refrigerant, "refrigerant"), Objects.requireNonNull(metering, "metering"));
    }

    /**
     * Returns the refrigerant.
     *
     * @return what is in the system
     */
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    /**
     * Returns the metering device.
     *
     * @return what meters the refrigerant
     */
    public MeteringDevice metering() {
        return metering;
    }

    /**
     * Returns a reading as given.
     *
     * @param place where it was taken
     * @return Pa absolute, K, or Pa of a drop; empty where it was not read
     */
    public OptionalDouble read(Place place) {
        double value = si(place);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /**
     * Tells whether the row states the uncertainty of its readings.
     *
     * @return false where permitted errors stand in for it
     */
    public boolean statesUncertainty() {
        return !Double.isNaN(pressureUncertaintyPa) && !Double.isNaN(temperatureUncertaintyK);
    }

    /**
     * The row as a case for the judge, who weighs faults too.
     *
     * @param curve saturation curve of its refrigerant
     * @return the case
     * @throws IllegalArgumentException if the curve is of another refrigerant, or a value of the row is not what it should be
     */
    public ChargeCase chargeCase(SaturationCurve curve) {
        if (!isOf(curve)) {
            throw new IllegalArgumentException(
                    "row of " + refrigerant.designation() + " is asked about with the curve of "
                            + curve.refrigerant().designation() + "; take the curve of its own refrigerant");
        }
        SystemReadings.Builder readings = SystemReadings.builder();
        for (Place place : PLACES) {
            if (isRead(place)) {
                readings.put(place, reading(place));
            }
        }
        ChargeQuestion question = new ChargeQuestion(metering, difference(targetK), difference(toleranceK));
        OperatingConditions conditions = outdoorMinimumMet
                .map(met -> OperatingConditions.unknown().withOutdoorMinimumMet(met))
                .orElseGet(OperatingConditions::unknown);
        return new ChargeCase(curve, readings.build(), question, conditions);
    }

    private Reading<?> reading(Place place) {
        double si = si(place);
        return switch (place.kind()) {
            case PRESSURE -> Reading.of(Pressure.ofPascals(si), uncertainty(place), place.field());
            case PIPE, AIR -> Reading.of(Temperature.ofKelvins(si), uncertainty(place), place.field());
            case DROP -> Reading.exact(PressureDifference.ofPascals(si));
        };
    }

    private static Optional<TemperatureDifference> difference(double kelvins) {
        return Double.isNaN(kelvins) ? Optional.empty() : Optional.of(TemperatureDifference.ofKelvins(kelvins));
    }

    @SuppressWarnings("EnumOrdinal") // an array for one run of the program: a map would box every reading of every row
    private static int index(Place place) {
        return place.ordinal();
    }

    boolean isOf(SaturationLines curve) {
        return curve.refrigerant().equals(refrigerant);
    }

    /** A reading, NaN where there is none. */
    double si(Place place) {
        return read[index(place)];
    }

    boolean isRead(Place place) {
        return !Double.isNaN(read[index(place)]);
    }

    /** Standard uncertainty of a reading, in its unit; 0 of a drop. */
    double uncertainty(Place place) {
        return switch (place.kind()) {
            case PRESSURE ->
                Double.isNaN(pressureUncertaintyPa)
                        ? (place == Place.SUCTION_PRESSURE ? SUCTION_PA : LIQUID_PA)
                        : pressureUncertaintyPa;
            case PIPE, AIR ->
                Double.isNaN(temperatureUncertaintyK)
                        ? StandardUncertainty.ofLimits(
                                THERMOMETER.get().permittedErrorK(Temperature.ofKelvins(si(place))))
                        : temperatureUncertaintyK;
            case DROP -> 0;
        };
    }

    double pressureUncertaintyPa() {
        return pressureUncertaintyPa;
    }

    double temperatureUncertaintyK() {
        return temperatureUncertaintyK;
    }

    double targetK() {
        return targetK;
    }

    double toleranceK() {
        return toleranceK;
    }

    Optional<Boolean> outdoorMinimumMet() {
        return outdoorMinimumMet;
    }

    @Override
    public String toString() {
        Map<Place, Double> given = new EnumMap<>(Place.class);
        Arrays.stream(PLACES).filter(this::isRead).forEach(place -> given.put(place, si(place)));
        return "row of " + refrigerant.designation() + ", " + metering.label() + ", " + given;
    }

    /** Collects a row. Mutable, for one thread; nothing is refused here. */
    public static final class Builder {
        private final Refrigerant refrigerant;
        private final MeteringDevice metering;
        private final double[] read = new double[PLACES.length];
        private double targetK = Double.NaN;
        private double toleranceK = Double.NaN;
        private double pressureUncertaintyPa = Double.NaN;
        private double temperatureUncertaintyK = Double.NaN;
        private Optional<Boolean> outdoorMinimumMet = Optional.empty();

        private Builder(Refrigerant refrigerant, MeteringDevice metering) {
            this.refrigerant = refrigerant;
            this.metering = metering;
            Arrays.fill(read, Double.NaN);
        }

        /**
         * Sets a reading.
         *
         * @param place where it was taken
         * @param si absolute pressure, Pa; temperature, K; drop, Pa; NaN for not read
         * @return this builder
         */
        public Builder read(Place place, double si) {
            read[index(place)] = si;
            return this;
        }

        /**
         * Sets pressure and line temperature of the suction side.
         *
         * @param pressurePa absolute pressure, Pa
         * @param lineK temperature of the line, K
         * @return this builder
         */
        public Builder suction(double pressurePa, double lineK) {
            return read(Place.SUCTION_PRESSURE, pressurePa).read(Place.SUCTION_LINE, lineK);
        }

        /**
         * Sets pressure and line temperature of the liquid side.
         *
         * @param pressurePa absolute pressure, Pa
         * @param lineK temperature of the line, K
         * @return this builder
         */
        public Builder liquid(double pressurePa, double lineK) {
            return read(Place.LIQUID_PRESSURE, pressurePa).read(Place.LIQUID_LINE, lineK);
        }

        /**
         * Sets the maker's target of the quantity that the metering device is judged by.
         *
         * @param kelvins target, K, in [0, 50]; NaN for none
         * @return this builder
         */
        public Builder target(double kelvins) {
            targetK = kelvins;
            return this;
        }

        /**
         * Sets the half-width of the band around the target.
         *
         * @param kelvins above 0 K; NaN for the published one
         * @return this builder
         */
        public Builder tolerance(double kelvins) {
            toleranceK = kelvins;
            return this;
        }

        /**
         * States the standard uncertainty of every reading.
         *
         * @param pressurePa of a pressure, Pa; NaN for the permitted errors
         * @param temperatureK of a temperature, K; NaN for the permitted errors
         * @return this builder
         */
        public Builder uncertainty(double pressurePa, double temperatureK) {
            pressureUncertaintyPa = pressurePa;
            temperatureUncertaintyK = temperatureK;
            return this;
        }

        /**
         * Answers whether the maker's own outdoor minimum is met.
         *
         * @param met whether it is warm enough for the method
         * @return this builder
         */
        public Builder outdoorMinimumMet(boolean met) {
            outdoorMinimumMet = Optional.of(met);
            return this;
        }

        /**
         * The row so far; the builder may go on.
         *
         * @return the row
         */
        public ChargeRow build() {
            return new ChargeRow(this);
        }
    }
}
