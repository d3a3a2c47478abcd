package org.satline.fleet;

import org.satline.charge.belief.Fault;

/** What an alarm is about; at most one alarm for each stands at a time on a unit. */
public enum Cause {
    /** Nothing. */
    NONE,
    /** Charge that falls over days. */
    LEAK,
    /** Too little refrigerant, as a state. */
    UNDERCHARGE,
    /** Too much refrigerant. */
    OVERCHARGE,
    /** Too little air over the condenser. */
    CONDENSER_FOULING,
    /** Too little air over the evaporator. */
    LOW_EVAPORATOR_AIRFLOW,
    /** Restricted liquid line. */
    LIQUID_LINE_RESTRICTION,
    /** Leaking valves of the compressor. */
    COMPRESSOR_VALVE_LEAKAGE,
    /** Gas that does not condense. */
    NON_CONDENSABLE_GAS,
    /** A sensor shows what no running unit can. */
    SENSOR;

    /** How many there are. */
    public static final int COUNT = values().length;

    /** Where it is in an array of all; kept in savepoints, so new causes go to the end. */
    @SuppressWarnings("EnumOrdinal") // arrays keep the state of a unit small
    int index() {
        return ordinal();
    }

    static Cause of(Fault fault) {
        return valueOf(fault.name());
    }
}
