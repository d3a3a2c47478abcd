package org.satline.measurement;

import java.util.Optional;

/**
 * The readings of a running system, one row each: a new reading is a new constant here, and files, JSON, bulk rows and pages know it. The
 * order is that of a page.
 */
public enum Place {
    /** Absolute pressure at the suction port. */
    SUCTION_PRESSURE("suctionPressure", Kind.PRESSURE, "118 psig"),
    /** Temperature of the suction line at the port. */
    SUCTION_LINE("suctionLine", Kind.PIPE, "53 degF"),
    /** Absolute pressure at the liquid port. */
    LIQUID_PRESSURE("liquidPressure", Kind.PRESSURE, "388 psig"),
    /** Temperature of the liquid line at the port. */
    LIQUID_LINE("liquidLine", Kind.PIPE, "98 degF"),
    /** Dry bulb of the return air. */
    RETURN_DRY_BULB("returnDryBulb", Kind.AIR, "78 degF"),
    /** Wet bulb of the return air. */
    RETURN_WET_BULB("returnWetBulb", Kind.AIR, "65 degF"),
    /** Dry bulb of the supply air. */
    SUPPLY_DRY_BULB("supplyDryBulb", Kind.AIR, "59 degF"),
    /** Dry bulb of the air entering the condenser. */
    OUTDOOR_AIR("outdoorAir", Kind.AIR, "91 degF"),
    /** Dry bulb of the air leaving the condenser. */
    OUTDOOR_AIR_LEAVING("outdoorAirLeaving", Kind.AIR, "108 degF"),
    /** Temperature of the discharge line. */
    DISCHARGE_LINE("dischargeLine", Kind.PIPE, "165 degF"),
    /** How much lower the suction port stands than the evaporator. */
    SUCTION_DROP("suctionDrop", Kind.DROP, "2 psi"),
    /** How much lower the liquid port stands than the condenser. */
    LIQUID_DROP("liquidDrop", Kind.DROP, "2 psi");

    /** Kinds of readings. */
    public enum Kind {
        /** A pressure, read on a gauge. */
        PRESSURE,
        /** A temperature, read on a pipe. */
        PIPE,
        /** A temperature, read in the air. */
        AIR,
        /** A difference of pressures, stated. */
        DROP
    }

    private final String field;
    private final Kind kind;
    private final String example;

    Place(String field, Kind kind, String example) {
        this.field = field;
        this.kind = kind;
        this.example = example;
    }

    /**
     * Its word in files.
     *
     * @return such as {@code suctionPressure}
     */
    public String field() {
        return field;
    }

    /**
     * Its path in a visit file.
     *
     * @return such as {@code readings.suctionPressure}
     */
    public String path() {
        return "readings." + field;
    }

    /**
     * What kind of reading it is.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What a good text of it looks like.
     *
     * @return number and unit
     */
    public String example() {
        return example;
    }

    /**
     * The place of a word.
     *
     * @param field the word in files
     * @return the place, where there is one
     */
    public static Optional<Place> of(String field) {
        for (Place place : values()) {
            if (place.field.equals(field)) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }
}
