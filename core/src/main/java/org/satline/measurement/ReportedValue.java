package org.satline.measurement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.satline.quantity.Parts;

/**
 * A value with its expanded uncertainty, rounded as JCGM 100:2008 clause 7.2.6 asks: the uncertainty to two significant digits, upward,
 * the value to the same place. Immutable, thread-safe.
 *
 * @param value rounded value
 * @param expanded rounded expanded uncertainty U = k u
 * @param coverageFactor k
 * @param unit unit of both
 */
public record ReportedValue(BigDecimal value, BigDecimal expanded, double coverageFactor, String unit) {
    private static final int SIGNIFICANT_DIGITS = 2;

    /** {@inheritDoc} */
    public ReportedValue {
        Parts.numbers("coverageFactor", coverageFactor);
        Parts.required("value expanded unit", value, expanded, unit);
    }

    /**
     * Rounds a value and its uncertainty with coverage factor 2.
     *
     * @param value the value, finite
     * @param standardUncertainty u, in the same unit; finite, not negative
     * @param unit unit of both
     * @return the rounded pair
     */
    public static ReportedValue of(double value, double standardUncertainty, String unit) {
        return of(value, standardUncertainty, UncertaintyBudget.USUAL_COVERAGE_FACTOR, unit);
    }

    /**
     * Rounds a value and its uncertainty.
     *
     * @param value the value, finite
     * @param standardUncertainty u, in the same unit; finite, not negative
     * @param coverageFactor k, above 0
     * @param unit unit of both
     * @return the rounded pair; with u = 0 the value is given to three decimals
     * @throws IllegalArgumentException if a number is not finite or out of its range
     */
    public static ReportedValue of(double value, double standardUncertainty, double coverageFactor, String unit) {
        if (!(Double.isFinite(value) && standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("value " + value + " with standard uncertainty " + standardUncertainty
                    + " cannot be reported; both must be finite and the uncertainty not below 0");
        }
        if (!(coverageFactor > 0 && coverageFactor < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("coverage factor " + coverageFactor + " is not finite and above 0");
        }
        BigDecimal expanded = BigDecimal.valueOf(standardUncertainty).multiply(BigDecimal.valueOf(coverageFactor));
        if (expanded.signum() == 0) {
            return new ReportedValue(
                    BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN),
                    BigDecimal.ZERO,
                    coverageFactor,
                    unit);
        }
        int place = decimalsFor(expanded);
        BigDecimal rounded = expanded.setScale(place, RoundingMode.CEILING);
        if (decimalsFor(rounded) < place) { // 0.0996 became 0.100: three digits, one too many
            place--;
            rounded = rounded.setScale(place, RoundingMode.CEILING);
        }
        return new ReportedValue(
                BigDecimal.valueOf(value).setScale(place, RoundingMode.HALF_EVEN), rounded, coverageFactor, unit);
    }

    private static int decimalsFor(BigDecimal number) {
        return SIGNIFICANT_DIGITS - (number.precision() - number.scale());
    }

    /** Such as {@code 5.8 K +/- 1.3 K (k = 2)}. */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unit + " +/- " + expanded.toPlainString() + " " + unit + " (k = "
                + BigDecimal.valueOf(coverageFactor).stripTrailingZeros().toPlainString() + ")";
    }
}
