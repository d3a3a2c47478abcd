package org.satline.transfer.hookup;

/** Whose refrigerant a volume holds. The later in this order prevails where two meet. */
public enum GasOrigin {
    /** No refrigerant. */
    NONE("none"),
    /** New or reclaimed, as it left the source cylinder. */
    SOURCE("source"),
    /** Of the system that is worked on, and of no other. */
    SYSTEM("system"),
    /** Recovered, or mixed with recovered refrigerant. */
    RECOVERED("recovered"),
    /** Not known; treated as mixed. */
    UNKNOWN("unknown");

    private final String code;

    GasOrigin(String code) {
        this.code = code;
    }

    /**
     * Returns the code word.
     *
     * @return stable, for files
     */
    public String code() {
        return code;
    }

    /**
     * Tells whether it may enter this system.
     *
     * @return false for recovered and unknown refrigerant
     */
    public boolean isClean() {
        return compareTo(RECOVERED) < 0;
    }

    /**
     * What the mixture of two counts as.
     *
     * @param other of the other part
     * @return the later of both
     */
    public GasOrigin with(GasOrigin other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
