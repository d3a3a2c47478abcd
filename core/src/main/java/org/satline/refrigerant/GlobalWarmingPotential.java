package org.satline.refrigerant;

import org.satline.quantity.Parts;

/**
 * Global warming potential over 100 years, CO2 = 1.
 *
 * @param value potential by mass, dimensionless
 * @param report assessment report of the IPCC that the figure belongs to
 * @param basis where the figure comes from, or how it was computed
 * @param isUpperBound whether the true value lies below the given one, as in a printed "less than 1"
 */
public record GlobalWarmingPotential(double value, Report report, String basis, boolean isUpperBound) {
    /** Assessment reports of the IPCC. */
    public enum Report {
        /** Fourth report, 2007. */
        AR4,
        /** Fifth report, 2013. */
        AR5,
        /** Sixth report, 2021. */
        AR6
    }

    /** {@inheritDoc} */
    public GlobalWarmingPotential {
        Parts.required("report basis", report, basis);
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("global warming potential " + value + " is not finite and at least 0");
        }
    }
}
