package org.satline.audit.answer;

import java.util.List;

/** Kinds of units, and the usual units of each that a number may have been taken from by mistake. */
public enum Dimension {
    /** An absolute or gauge pressure. */
    PRESSURE("Pa", "kPa", "bar", "psia", "MPa", "inHg absolute", "atm"),
    /** A temperature. */
    TEMPERATURE("K", "degC", "degF"),
    /** A difference of temperatures. */
    TEMPERATURE_DIFFERENCE("K", "degF"),
    /** Mass by volume. */
    DENSITY("kg/m3", "lb/ft3"),
    /** Specific enthalpy. */
    ENTHALPY("J/kg", "kJ/kg", "Btu/lb"),
    /** Specific entropy. */
    ENTROPY("J/(kg K)", "kJ/(kg K)", "Btu/(lb degF)"),
    /** Specific heat capacity. */
    HEAT_CAPACITY("J/(kg K)", "kJ/(kg K)", "Btu/(lb degF)"),
    /** A speed. */
    SPEED("m/s", "ft/s", "ft/min");

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of texts
    private final List<String> usual;

    Dimension(String... usual) {
        this.usual = List.of(usual);
    }

    /** {@return the unit in which the library computes} */
    public String siUnit() {
        return usual.get(0);
    }

    /** {@return usual units, the SI unit first} */
    public List<String> usual() {
        return usual;
    }

    /** {@return whether values count from a zero that somebody chose} */
    public boolean countsFromReference() {
        return this == ENTHALPY || this == ENTROPY;
    }
}
