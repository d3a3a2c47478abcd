package org.satline.filling;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Volume;

/**
 * What is stamped on a cylinder. Tare and water capacity are always needed; {@link FillAssessor} says what the absence of the rest
 * forbids. Immutable, thread-safe.
 *
 * @param values what is stamped: of the type that each stamp names; a water capacity may be given as a volume and is kept as a mass
 */
public record CylinderStamps(Map<Stamp, Object> values) {
    /** Density of water at 15.6 degC (60 degF), to which water capacities refer; 62.37 lb/ft3. */
    public static final Density WATER_AT_60_F = Density.ofKilogramsPerCubicMetre(999.0);

    /** Smaller vessels are cartridges, filled once; common practice, no source. */
    private static final double SMALLEST_CAPACITY_KG = 0.1;

    /** The largest portable tanks hold about this much water; common practice, no source. */
    private static final double LARGEST_CAPACITY_KG = 30_000;

    /** {@inheritDoc} */
    public CylinderStamps {
        Parts.required("values", values);
        Map<Stamp, Object> kept = new EnumMap<>(Stamp.class);
        values.forEach((stamp, value) -> kept.put(stamp, checked(stamp, value)));
        for (Stamp needed : new Stamp[] {Stamp.TARE, Stamp.WATER_CAPACITY}) {
            if (!(kept.get(needed) instanceof Mass mass && mass.kilograms() > 0)) {
                throw new IllegalArgumentException(
                        needed.field()
                                + " is missing from the stamps or zero; read it on the collar, a cylinder without it is not filled");
            }
        }
        values = Collections.unmodifiableMap(kept);
    }

    /**
     * The least that must be known.
     *
     * @param tare the mass of the empty cylinder with its valve, above zero
     * @param waterCapacity the mass of water at 60 degF that fills it, from 0.1 kg to 30000 kg
     * @return the stamps
     */
    public static CylinderStamps of(Mass tare, Mass waterCapacity) {
        Parts.required("tare waterCapacity", tare, waterCapacity);
        return new CylinderStamps(Map.of(Stamp.TARE, tare, Stamp.WATER_CAPACITY, waterCapacity));
    }

    /**
     * The same with the inner volume in place of the water capacity.
     *
     * @param tare the mass of the empty cylinder with its valve, above zero
     * @param volume the inner volume, from 0.1 L to 30 m3
     * @return the stamps
     */
    public static CylinderStamps of(Mass tare, Volume volume) {
        Parts.required("tare volume", tare, volume);
        return new CylinderStamps(Map.of(Stamp.TARE, tare, Stamp.WATER_CAPACITY, volume));
    }

    private static Object checked(Stamp stamp, Object value) {
        Parts.required(stamp.field(), value);
        Object kept =
                stamp == Stamp.WATER_CAPACITY && value instanceof Volume volume ? WATER_AT_60_F.times(volume) : value;
        if (!stamp.type().isInstance(kept)) {
            throw new IllegalArgumentException(stamp.field() + " " + value + " is no "
                    + stamp.type().getSimpleName() + "; write it as in " + stamp.example());
        }
        if (stamp == Stamp.WATER_CAPACITY && !isCapacity(((Mass) kept).kilograms())) {
            throw new IllegalArgumentException(
                    "waterCapacity " + value + " is outside [0.1, 30000] kg; read it on the collar and mind its unit");
        }
        return kept;
    }

    /** Zero is told apart, as a stamp that is missing. */
    private static boolean isCapacity(double kilograms) {
        return kilograms == 0 || (kilograms >= SMALLEST_CAPACITY_KG && kilograms <= LARGEST_CAPACITY_KG);
    }

    /**
     * The same with one stamp more, or another one.
     *
     * @param stamp which
     * @param value what it says, of the type that the stamp names
     * @return the changed stamps
     */
    public CylinderStamps with(Stamp stamp, Object value) {
        Map<Stamp, Object> changed = new EnumMap<>(values);
        changed.put(stamp, value);
        return new CylinderStamps(changed);
    }

    /**
     * The same with one stamp less.
     *
     * @param stamp which; not tare or water capacity
     * @return the changed stamps
     */
    public CylinderStamps without(Stamp stamp) {
        Map<Stamp, Object> changed = new EnumMap<>(values);
        changed.remove(stamp);
        return new CylinderStamps(changed);
    }

    private <T> Optional<T> get(Stamp stamp, Class<T> type) {
        return Optional.ofNullable(values.get(stamp)).map(type::cast);
    }

    /**
     * Tare weight (TW).
     *
     * @return the tare, above zero
     */
    public Mass tare() {
        return get(Stamp.TARE, Mass.class).orElseThrow();
    }

    /**
     * Water capacity (WC), by mass of water at 60 degF.
     *
     * @return the water capacity, above zero
     */
    public Mass waterCapacity() {
        return get(Stamp.WATER_CAPACITY, Mass.class).orElseThrow();
    }

    /**
     * Inner volume: the water capacity over the density of water at 60 degF.
     *
     * @return the volume
     */
    public Volume volume() {
        return Volume.ofCubicMetres(waterCapacity().kilograms() / WATER_AT_60_F.kilogramsPerCubicMetre());
    }

    /**
     * Specification mark.
     *
     * @return the mark, where known
     */
    public Optional<CylinderSpecification> specification() {
        return get(Stamp.SPECIFICATION, CylinderSpecification.class);
    }

    /**
     * Service pressure: stamped on its own, else the one within the specification mark.
     *
     * @return gauge pressure at 70 degF, where known
     */
    public Optional<GaugePressure> servicePressure() {
        return separateServicePressure().or(() -> specification().flatMap(CylinderSpecification::markedPressure));
    }

    /** The service pressure stamped apart from the specification mark. */
    Optional<GaugePressure> separateServicePressure() {
        return get(Stamp.SERVICE_PRESSURE, GaugePressure.class);
    }

    /**
     * Test pressure.
     *
     * @return gauge pressure, where known
     */
    public Optional<GaugePressure> testPressure() {
        return get(Stamp.TEST_PRESSURE, GaugePressure.class);
    }

    /**
     * Whether the cylinder is marked for flammable gas.
     *
     * @return true or false, where known
     */
    public Optional<Boolean> flammableMark() {
        return get(Stamp.FLAMMABLE_MARK, Boolean.class);
    }

    /**
     * The last day on which the cylinder may be filled before its next retest.
     *
     * @return the day, where known
     */
    public Optional<LocalDate> retestDue() {
        return get(Stamp.RETEST_DUE, LocalDate.class);
    }

    /**
     * Whether the cylinder may be refilled: as its mark says, whatever is stated; else as stated.
     *
     * @return true or false, where known
     */
    public Optional<Boolean> refillable() {
        return specification()
                .flatMap(CylinderSpecification::refillable)
                .or(() -> get(Stamp.REFILLABLE, Boolean.class));
    }

    /** Whether what is stated of refilling contradicts the mark. */
    boolean isRefillingContradictory() {
        return get(Stamp.REFILLABLE, Boolean.class)
                .filter(stated -> !refillable().equals(Optional.of(stated)))
                .isPresent();
    }

    /**
     * The greatest mass for which the container is rated.
     *
     * @return the rating, where known
     */
    public Optional<Mass> massRating() {
        return get(Stamp.MASS_RATING, Mass.class);
    }
}
