package org.satline.measurement;

import java.util.Arrays;

/**
 * Standard uncertainty from what is known about an error. Only functions; results are in the unit of the argument.
 *
 * <p>Source: JCGM 100:2008, clauses 4.2 (type A), 4.3 (type B) and F.2.2.1 (resolution).
 */
public final class StandardUncertainty {
    private StandardUncertainty() {}

    /**
     * From limits between which every error is equally probable: {@code a / sqrt(3)} (JCGM 100, 4.3.7).
     *
     * @param halfWidth a, half the distance of the limits; finite, not negative
     * @return u
     */
    public static double ofLimits(double halfWidth) {
        return notNegative(halfWidth, "half-width of limits") / Math.sqrt(3);
    }

    /**
     * From limits with errors near the middle more probable: {@code a / sqrt(6)} (JCGM 100, 4.3.9).
     *
     * @param halfWidth a, half the distance of the limits; finite, not negative
     * @return u
     */
    public static double ofTriangle(double halfWidth) {
        return notNegative(halfWidth, "half-width of triangle") / Math.sqrt(6);
    }

    /**
     * From an expanded uncertainty, as a calibration certificate states it: {@code U / k} (JCGM 100, 4.3.3).
     *
     * @param expanded U; finite, not negative
     * @param coverageFactor k; above 0
     * @return u
     */
    public static double ofExpanded(double expanded, double coverageFactor) {
        if (!(coverageFactor > 0 && coverageFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("coverage factor " + coverageFactor + " is not finite and above 0");
        }
        return notNegative(expanded, "expanded uncertainty") / coverageFactor;
    }

    /**
     * From the smallest step of a display: {@code d / (2 sqrt(3))} (JCGM 100, F.2.2.1).
     *
     * @param step d; finite, not negative
     * @return u
     */
    public static double ofResolution(double step) {
        return notNegative(step, "resolution") / (2 * Math.sqrt(3));
    }

    /**
     * Of the mean of repeated readings: {@code s / sqrt(n)} (JCGM 100, 4.2.3).
     *
     * @param readings at least two finite readings
     * @return u of their mean
     */
    public static double ofMean(double... readings) {
        if (readings.length < 2) {
            throw new IllegalArgumentException("standard uncertainty of a mean needs two readings or more, got "
                    + readings.length + "; state an instrument class for a single reading");
        }
        double mean = Arrays.stream(readings).average().orElseThrow();
        double squares = 0;
        for (double reading : readings) {
            squares += (reading - mean) * (reading - mean);
        }
        return notNegative(Math.sqrt(squares / (readings.length - 1) / readings.length), "spread of readings");
    }

    private static double notNegative(double value, String what) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + value + ", expected a finite number not below 0");
        }
        return value;
    }
}
