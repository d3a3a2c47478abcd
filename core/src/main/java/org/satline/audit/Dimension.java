package org.satline.audit;

import java.util.List;

/** Kinds of units, and the usual units of each that a number may have been taken from by mistake. */
enum Dimension {
    PRESSURE("Pa", "kPa", "bar", "psia", "MPa", "inHg absolute", "atm"),
    TEMPERATURE("K", "degC", "degF"),
    TEMPERATURE_DIFFERENCE("K", "degF"),
    DENSITY("kg/m3", "lb/ft3"),
    ENTHALPY("J/kg", "kJ/kg", "Btu/lb"),
    ENTROPY("J/(kg K)", "kJ/(kg K)", "Btu/(lb degF)"),
    HEAT_CAPACITY("J/(kg K)", "kJ/(kg K)", "Btu/(lb degF)"),
    SPEED("m/s", "ft/s", "ft/min");

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of texts
    private final List<String> usual;

    Dimension(String... usual) {
        this.usual = List.of(usual);
    }

    String siUnit() {
        return usual.get(0);
    }

    /** Usual units, the SI unit first. */
    List<String> usual() {
        return usual;
    }

    /** Whether values count from a zero that somebody chose. */
    boolean countsFromReference() {
        return this == ENTHALPY || this == ENTROPY;
    }
}
