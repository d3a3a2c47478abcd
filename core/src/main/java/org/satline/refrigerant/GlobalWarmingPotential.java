package org.satline.refrigerant;

import java.util.Objects;

/**
 * Global warming potential over 100 years, CO2 = 1.
 *
 * @param value potential by mass, dimensionless
 * @param report assessment report of the IPCC that the figure belongs to
 * @param basis where the figure comes from, or how it was computed
 */
public record GlobalWarmingPotential(double value, Report report, String basis) {
    /** Assessment reports of the IPCC. */
    public enum Report {
        /** Fourth report, 2007. */
        AR4,
        /** Fifth report, 2013. */
        AR5,
        /** Sixth report, 2021. */
        AR6
    }

    /**
     * Checks the parts.
     *
     * @param value potential
     * @param report report
     * @param basis basis
     */
    public GlobalWarmingPotential {
        Objects.requireNonNull(report, "report");
        Objects.requireNonNull(basis, "basis");
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("global warming potential " + value + " is not finite and at least 0");
        }
    }
}
