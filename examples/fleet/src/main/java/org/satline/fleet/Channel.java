package org.satline.fleet;

import java.util.List;

/** What a unit sends, in the order of the fields in files and arrays. Pressures are absolute. */
public enum Channel {
    /** Suction pressure. */
    SUCTION_KPA(50, 3000),
    /** Suction line. */
    SUCTION_LINE_C(-40, 80),
    /** Liquid pressure. */
    LIQUID_KPA(50, 6000),
    /** Liquid line. */
    LIQUID_LINE_C(-40, 90),
    /** Discharge line. */
    DISCHARGE_LINE_C(-40, 160),
    /** Return air, dry bulb. */
    RETURN_DRY_BULB_C(-20, 60),
    /** Return air, wet bulb. */
    RETURN_WET_BULB_C(-20, 50),
    /** Supply air, dry bulb. */
    SUPPLY_DRY_BULB_C(-30, 70),
    /** Outdoor air. */
    OUTDOOR_C(-50, 60);

    /** How many there are. */
    public static final int COUNT = values().length;

    private static final List<Channel> ALL = List.of(values());

    private final float low;
    private final float high;

    Channel(float low, float high) {
        this.low = low;
        this.high = high;
    }

    /**
     * Tells whether a sensor of this channel can show a value: beyond it, wire or sensor is broken. Our choice, wider
     * than any running unit.
     *
     * @param value the value in the unit of the channel
     * @return whether it lies in the range; false for NaN
     */
    public boolean canShow(float value) {
        return value >= low && value <= high;
    }

    /**
     * Returns where its value is in an array of all.
     *
     * @return 0 for the first
     */
    @SuppressWarnings("EnumOrdinal") // the order is that of the fields of a line, fixed by the files
    public int index() {
        return ordinal();
    }

    /**
     * Returns all channels.
     *
     * @return in order
     */
    public static List<Channel> all() {
        return ALL;
    }
}
