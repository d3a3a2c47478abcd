package org.satline.charge;

/** What may be wrong with an air conditioner. */
public enum Fault {
    /** Too little refrigerant. */
    UNDERCHARGE("undercharge", "find and mend the leak, then add refrigerant"),
    /** Too much refrigerant. */
    OVERCHARGE("overcharge", "take refrigerant out in small steps"),
    /** Filter drier, kinked line or metering device holds the refrigerant back. */
    LIQUID_LINE_RESTRICTION(
            "liquid-line-restriction", "feel for a temperature drop along the liquid line, drier and metering device"),
    /** Dirty or blocked condenser, or its fan. */
    CONDENSER_FOULING("condenser-fouling", "clean the condenser and check its fan"),
    /** Dirty filter or coil, slow blower, closed registers. */
    LOW_EVAPORATOR_AIRFLOW("low-evaporator-airflow", "check filter, coil, blower and ducts"),
    /** Leaking compressor valves or bypass. */
    COMPRESSOR_VALVE_LEAKAGE("compressor-valve-leakage", "check whether the compressor still pumps"),
    /** Air or another gas that does not condense. */
    NON_CONDENSABLE_GAS(
            "non-condensable-gas",
            "compare the standing pressure, compressor off and all at one temperature, with saturation");

    private final String label;
    private final String advice;

    Fault(String label, String advice) {
        this.label = label;
        this.advice = advice;
    }

    /**
     * Name in files and texts.
     *
     * @return for example {@code undercharge}
     */
    public String label() {
        return label;
    }

    /**
     * What to look at.
     *
     * @return one sentence
     */
    public String advice() {
        return advice;
    }

    /**
     * Tells whether it is an error of the charge.
     *
     * @return true for undercharge and overcharge
     */
    public boolean ofCharge() {
        return this == UNDERCHARGE || this == OVERCHARGE;
    }
}
