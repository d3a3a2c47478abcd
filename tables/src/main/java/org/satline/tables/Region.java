package org.satline.tables;

import org.satline.saturation.SaturationProperty;

/** Part of a saturation line, by temperature over that of the located end. Immutable. */
public enum Region {
    /** Below 0.9 of the end. */
    BELOW_0_9("below 0.9", 0, 0.9),
    /** 0.9 to 0.95 of the end. */
    FROM_0_9("0.9 to 0.95", 0.9, 0.95),
    /** 0.95 to 0.99 of the end. */
    FROM_0_95("0.95 to 0.99", 0.95, 0.99),
    /** Above 0.99 of the end. */
    ABOVE_0_99("above 0.99", 0.99, 2);

    private static final Region[] ALL = values();

    private final String words;
    private final double from;
    private final double to;

    Region(String words, double from, double to) {
        this.words = words;
        this.from = from;
        this.to = to;
    }

    /**
     * Returns words to print.
     *
     * @return the limits, as fractions of the end temperature
     */
    public String words() {
        return words;
    }

    /**
     * Returns where it begins.
     *
     * @return temperature over that of the end, at least 0
     */
    public double from() {
        return from;
    }

    /**
     * Returns where it ends.
     *
     * @return temperature over that of the end; above 1 for the last one
     */
    public double to() {
        return to;
    }

    static Region of(double fractionOfEnd) {
        for (Region region : ALL) {
            if (fractionOfEnd < region.to) {
                return region;
            }
        }
        return ABOVE_0_99;
    }

    /**
     * Returns the bound that a table has to keep here, relative for pressures, densities and heat capacities, else in the property's unit.
     * No bound was asked above 0.99 except for pressures and densities, and for heat capacities above 0.95: those are our own.
     *
     * @param property the property
     * @return largest error allowed
     */
    public double bound(SaturationProperty property) {
        boolean top = this == ABOVE_0_99;
        return switch (property) {
            case BUBBLE_PRESSURE, DEW_PRESSURE, BUBBLE_LIQUID_DENSITY, DEW_VAPOUR_DENSITY -> top ? 1e-6 : 1e-8;
            case BUBBLE_TEMPERATURE, DEW_TEMPERATURE -> top ? 1e-5 : 1e-7;
            case BUBBLE_LIQUID_ENTHALPY, DEW_VAPOUR_ENTHALPY -> top ? 10 : 0.1;
            case BUBBLE_LIQUID_ENTROPY, DEW_VAPOUR_ENTROPY -> top ? 0.03 : 0.001;
            case BUBBLE_LIQUID_HEAT_CAPACITY, DEW_VAPOUR_HEAT_CAPACITY ->
                switch (this) {
                    case BELOW_0_9, FROM_0_9 -> 1e-5;
                    case FROM_0_95 -> 1e-4;
                    case ABOVE_0_99 -> 1e-2;
                };
        };
    }

    /**
     * Tells how errors of a property are counted.
     *
     * @param property the property
     * @return true if relative to the value
     */
    public static boolean relative(SaturationProperty property) {
        return switch (property) {
            case BUBBLE_PRESSURE,
                    DEW_PRESSURE,
                    BUBBLE_LIQUID_DENSITY,
                    DEW_VAPOUR_DENSITY,
                    BUBBLE_LIQUID_HEAT_CAPACITY,
                    DEW_VAPOUR_HEAT_CAPACITY -> true;
            default -> false;
        };
    }
}
