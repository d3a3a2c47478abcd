package org.satline.charge.belief;

import java.util.Locale;
import org.satline.explanation.Coded;

/** What may be wrong with an air conditioner. */
public enum Fault implements Coded {
    /** Too little refrigerant. */
    UNDERCHARGE,
    /** Too much refrigerant. */
    OVERCHARGE,
    /** Filter drier, kinked line or metering device holds the refrigerant back. */
    LIQUID_LINE_RESTRICTION,
    /** Dirty or blocked condenser, or its fan. */
    CONDENSER_FOULING,
    /** Dirty filter or coil, slow blower, closed registers. */
    LOW_EVAPORATOR_AIRFLOW,
    /** Leaking compressor valves or bypass. */
    COMPRESSOR_VALVE_LEAKAGE,
    /** Air or another gas that does not condense. */
    NON_CONDENSABLE_GAS,
    /** Another refrigerant than the one of the plate, or a mixture. */
    ANOTHER_REFRIGERANT;

    /**
     * Name in files and texts.
     *
     * @return for example {@code undercharge}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Tells whether it is an error of the charge.
     *
     * @return true for undercharge and overcharge
     */
    public boolean ofCharge() {
        return this == UNDERCHARGE || this == OVERCHARGE;
    }

    /** The fault of a name in files. */
    static Fault ofLabel(String label) {
        return valueOf(label.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
