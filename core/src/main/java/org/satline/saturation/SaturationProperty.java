package org.satline.saturation;

/** What a saturation curve answers: a property of a line, the quantity it is asked by, and its SI unit. */
public enum SaturationProperty {
    /** Bubble-point pressure at a temperature. */
    BUBBLE_PRESSURE("bubble pressure", "Pa", true, false),
    /** Dew-point pressure at a temperature. */
    DEW_PRESSURE("dew pressure", "Pa", false, false),
    /** Bubble-point temperature at a pressure. */
    BUBBLE_TEMPERATURE("bubble temperature", "K", true, true),
    /** Dew-point temperature at a pressure. */
    DEW_TEMPERATURE("dew temperature", "K", false, true),
    /** Density of the bubble-point liquid at a temperature. */
    BUBBLE_LIQUID_DENSITY("density of bubble liquid", "kg/m3", true, false),
    /** Density of the dew-point vapour at a temperature. */
    DEW_VAPOUR_DENSITY("density of dew vapour", "kg/m3", false, false),
    /** Specific enthalpy of the bubble-point liquid at a temperature. */
    BUBBLE_LIQUID_ENTHALPY("enthalpy of bubble liquid", "J/kg", true, false),
    /** Specific enthalpy of the dew-point vapour at a temperature. */
    DEW_VAPOUR_ENTHALPY("enthalpy of dew vapour", "J/kg", false, false),
    /** Specific entropy of the bubble-point liquid at a temperature. */
    BUBBLE_LIQUID_ENTROPY("entropy of bubble liquid", "J/(kg K)", true, false),
    /** Specific entropy of the dew-point vapour at a temperature. */
    DEW_VAPOUR_ENTROPY("entropy of dew vapour", "J/(kg K)", false, false),
    /** Isobaric heat capacity of the bubble-point liquid at a temperature. */
    BUBBLE_LIQUID_HEAT_CAPACITY("heat capacity of bubble liquid", "J/(kg K)", true, false),
    /** Isobaric heat capacity of the dew-point vapour at a temperature. */
    DEW_VAPOUR_HEAT_CAPACITY("heat capacity of dew vapour", "J/(kg K)", false, false);

    private final String words;
    private final String unit;
    private final boolean bubbleLine;
    private final boolean askedByPressure;

    SaturationProperty(String words, String unit, boolean bubbleLine, boolean askedByPressure) {
        this.words = words;
        this.unit = unit;
        this.bubbleLine = bubbleLine;
        this.askedByPressure = askedByPressure;
    }

    /**
     * Returns words to print.
     *
     * @return the property in lower case
     */
    public String words() {
        return words;
    }

    /**
     * Returns the SI unit of the answer.
     *
     * @return unit
     */
    public String unit() {
        return unit;
    }

    /**
     * Tells which line it belongs to.
     *
     * @return true for the bubble line, false for the dew line
     */
    public boolean onBubbleLine() {
        return bubbleLine;
    }

    /**
     * Tells what it is asked by.
     *
     * @return true for a pressure in Pa, false for a temperature in K
     */
    public boolean askedByPressure() {
        return askedByPressure;
    }
}
