package org.satline.audit.answer;

import org.satline.quantity.Parts;

/**
 * An answer beside ours, everything in the unit of the answer. Immutable.
 *
 * @param answer the other calculator's answer
 * @param ours our value
 * @param difference answer less ours
 * @param tolerance what they may differ
 * @param unit the unit, as it stands in the row
 */
public record Comparison(double answer, double ours, double difference, AuditTolerance tolerance, String unit) {
    /** Rounding of a unit conversion, relative: a few units in the last place of a double. */
    private static final double CONVERSION = 1e-14;

    /** {@inheritDoc} */
    public Comparison {
        Parts.required("tolerance unit", tolerance, unit);
        Parts.numbers("answer ours difference", answer, ours, difference);
    }

    /**
     * Tells whether the answer agrees.
     *
     * @return true if the difference is not beyond the tolerance
     */
    public boolean agrees() {
        return Math.abs(difference) <= tolerance.width() + CONVERSION * Math.abs(ours);
    }

    /**
     * Returns how far the answer is off, as a multiple of the tolerance.
     *
     * @return 0 or more; above 1 is outside; the largest double where the tolerance is 0 and the answer differs
     */
    public double severity() {
        if (difference == 0) {
            return 0;
        }
        return Math.min(Double.MAX_VALUE, Math.abs(difference) / tolerance.width());
    }
}
