package org.satline.safety;

/** What is about to be done with the refrigerant. */
public enum Task {
    /** Connecting gauges and sensors to a machine and reading them while it runs. */
    READING,
    /** Searching for leaks. */
    LEAK_SEARCH,
    /** Taking refrigerant out of a machine into a recovery cylinder. */
    RECOVERY,
    /** Putting refrigerant from a source cylinder into a machine. */
    CHARGING,
    /** Sweeping the air out of a hose with refrigerant vapour. */
    HOSE_PURGE,
    /** Filling a cylinder, by recovery or from another cylinder. */
    CYLINDER_FILLING,
    /** Opening the circuit: brazing, changing parts. */
    OPENING_CIRCUIT
}
