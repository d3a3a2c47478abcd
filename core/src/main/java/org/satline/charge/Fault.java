package org.satline.charge;

import org.satline.explanation.Coded;

/** What may be wrong with an air conditioner. */
public enum Fault implements Coded {
    /** Too little refrigerant. */
    UNDERCHARGE("undercharge"),
    /** Too much refrigerant. */
    OVERCHARGE("overcharge"),
    /** Filter drier, kinked line or metering device holds the refrigerant back. */
    LIQUID_LINE_RESTRICTION("liquid-line-restriction"),
    /** Dirty or blocked condenser, or its fan. */
    CONDENSER_FOULING("condenser-fouling"),
    /** Dirty filter or coil, slow blower, closed registers. */
    LOW_EVAPORATOR_AIRFLOW("low-evaporator-airflow"),
    /** Leaking compressor valves or bypass. */
    COMPRESSOR_VALVE_LEAKAGE("compressor-valve-leakage"),
    /** Air or another gas that does not condense. */
    NON_CONDENSABLE_GAS("non-condensable-gas");

    private final String label;

    Fault(String label) {
        this.label = label;
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
     * Tells whether it is an error of the charge.
     *
     * @return true for undercharge and overcharge
     */
    public boolean ofCharge() {
        return this == UNDERCHARGE || this == OVERCHARGE;
    }
}
