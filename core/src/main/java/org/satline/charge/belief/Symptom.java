package org.satline.charge.belief;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Coded;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;

/**
 * A quantity whose departure from the fault-free value speaks for or against a fault, and what has to be read for it.
 */
public enum Symptom implements Coded {
    /** Superheat: over its target at a fixed orifice, over 6 K at an expansion valve. */
    SUPERHEAT(Place.SUCTION_PRESSURE, Place.SUCTION_LINE),
    /** Subcooling: over its target behind an expansion valve, over 6 K at a fixed orifice. */
    SUBCOOLING(Place.LIQUID_PRESSURE, Place.LIQUID_LINE),
    /** Bubble point at the liquid pressure over the air entering the condenser. */
    CONDENSING(Place.LIQUID_PRESSURE, Place.OUTDOOR_AIR),
    /** Dew point at the suction pressure over 0 degC. */
    EVAPORATING(Place.SUCTION_PRESSURE),
    /** Discharge temperature over that of compression without loss from the suction line. */
    DISCHARGE(Place.DISCHARGE_LINE, Place.SUCTION_PRESSURE, Place.SUCTION_LINE, Place.LIQUID_PRESSURE),
    /** Temperature drop of the air over the evaporator. */
    EVAPORATOR_AIR_DROP(Place.RETURN_DRY_BULB, Place.SUPPLY_DRY_BULB),
    /** Saturation temperature at rest over the temperature of the system. */
    AT_REST;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of constants
    private final List<Place> places;

    Symptom(Place... places) {
        this.places = List.of(places);
    }

    /** Path of the first field that is missing for it. */
    Optional<String> missing(SystemReadings readings) {
        if (this == AT_REST) {
            return Optional.of("conditions.standingPressure");
        }
        return places.stream()
                .filter(place -> !readings.all().containsKey(place))
                .map(Place::path)
                .findFirst();
    }

    /** Its place in the behaviour table, whose columns stand in the order of these constants. */
    @SuppressWarnings("EnumOrdinal")
    int column() {
        return ordinal();
    }
}
