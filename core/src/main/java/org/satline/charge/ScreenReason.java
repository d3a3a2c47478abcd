package org.satline.charge;

/** Why a screened row has no level, in the order in which it is looked for. */
public enum ScreenReason {
    /** The row is of another refrigerant than the curve. */
    FOREIGN_REFRIGERANT,
    /** A reading, a target, a tolerance or an uncertainty is not finite or below what it can be. */
    NOT_A_READING,
    /** Neither pressure was read, or a reading that judging needs. */
    NOT_READ,
    /** A pressure lies outside the saturation line. */
    OUT_OF_RANGE,
    /** The equation was not solved at a pressure; tables solve nothing. */
    NOT_CONVERGED,
    /** No running system can show these readings: one of them is wrong. */
    IMPLAUSIBLE,
    /** No maker's target, and the published chart has none for these temperatures. */
    NO_TARGET,
    /** It is too cold outdoors to judge by this method, or the suction line of an expansion valve is not surely dry. */
    CONDITION_NOT_MET,
    /** Whether the system cools or heats is not known. */
    MODE_NOT_KNOWN,
    /** Superheat and subcooling contradict each other: a fault other than the charge may be behind them. */
    CONTRADICTED
}
