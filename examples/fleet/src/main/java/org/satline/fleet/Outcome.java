package org.satline.fleet;

/** What a settled window says about a unit. */
public enum Outcome {
    /** Short of refrigerant. */
    LOW,
    /** The charge is on target. */
    ON_TARGET,
    /** Too much refrigerant. */
    HIGH,
    /** The readings do not decide. */
    UNDECIDED,
    /** Another fault than the charge comes first. */
    OTHER_FAULT,
    /** No running unit can read so: a sensor is wrong. */
    IMPLAUSIBLE
}
