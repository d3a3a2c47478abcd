package org.satline.fleet;

/** Why a reading is not used. */
public enum RejectReason {
    /** Another number of fields than a reading has. */
    FIELD_COUNT,
    /** Unit, time or value is no number. */
    NOT_A_NUMBER,
    /** The model is not in the catalogue of models. */
    UNKNOWN_MODEL,
    /** A value that the sensor of its channel cannot show. */
    OUT_OF_RANGE,
    /** Later than the run reaches: the clock of the unit is wrong. Let through, it would make every other unit late. */
    CLOCK_AHEAD,
    /** Arrived after its window had closed. */
    TOO_LATE
}
