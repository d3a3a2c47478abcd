package org.satline.audit;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import org.satline.audit.AuditSummary.Bias;
import org.satline.audit.AuditSummary.Ratio;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditedQuantity;

/** Sums of one refrigerant and quantity, exact, so that they do not depend on the order of the rows. Not thread-safe. */
final class BiasSum {
    /** Expanded uncertainty. */
    private static final double COVERAGE = 2;

    private final String refrigerant;
    private final AuditedQuantity quantity;
    private int rows;
    private int inTolerances;
    private int withRatio;
    private final Sum differences = new Sum();
    private final Sum differenceSquares = new Sum();
    private final Sum roundingSquares = new Sum();
    private final Sum tolerances = new Sum();
    private final Sum ratios = new Sum();
    private final Sum ratioSquares = new Sum();
    private final Sum ratioRoundings = new Sum();

    BiasSum(String refrigerant, AuditedQuantity quantity) {
        this.refrigerant = refrigerant;
        this.quantity = quantity;
    }

    void add(AuditCase row) {
        rows++;
        double difference = row.unit().differenceToSi(row.comparison().difference());
        double rounding = row.unit().differenceToSi(row.rounding());
        differences.add(difference);
        differenceSquares.add(difference * difference);
        roundingSquares.add(rounding * rounding);
        double width = row.comparison().tolerance().width();
        if (width > 0) {
            inTolerances++;
            tolerances.add(row.comparison().difference() / width);
        }
        double ours = row.comparison().ours();
        if (row.unit().hasTrueZero(quantity.dimension()) && Math.abs(ours) > 0) {
            withRatio++;
            double less = row.comparison().difference() / ours;
            ratios.add(less);
            ratioSquares.add(less * less);
            ratioRoundings.add(row.rounding() * row.rounding() / (ours * ours));
        }
    }

    Bias bias() {
        return new Bias(
                refrigerant,
                quantity,
                rows,
                differences.over(rows),
                quantity.siUnit(),
                tolerances.over(inTolerances),
                uncertainty(rows, differences, differenceSquares, roundingSquares),
                withRatio < rows
                        ? Optional.empty()
                        : Optional.of(new Ratio(
                                1 + ratios.over(rows), uncertainty(rows, ratios, ratioSquares, ratioRoundings))));
    }

    /** From the scatter about the mean, and of what is rounded at least the half digit over the root of three. */
    private static double uncertainty(int n, Sum values, Sum squares, Sum roundings) {
        double mean = values.over(n);
        double scatter = n > 1 ? Math.max(0, squares.over(1) - n * mean * mean) / (n - 1) : 0;
        return COVERAGE * Math.sqrt(Math.max(scatter, roundings.over(n) / 3) / n);
    }

    /**
     * A sum that is rounded once, at its end: the parts that a sum of two doubles loses are kept beside it (Shewchuk, Discrete and
     * Computational Geometry 18 (1997) 305, grow-expansion). They do not overlap, so that what they come to does not depend on the order.
     */
    private static final class Sum {
        /** What is larger counts as this, so that a sum of millions is a number. */
        private static final double LARGEST = 1e300;

        private double[] parts = new double[8];
        private int count;

        void add(double value) {
            double carried = Math.max(-LARGEST, Math.min(LARGEST, value));
            int kept = 0;
            for (int i = 0; i < count; i++) {
                double part = parts[i];
                double sum = carried + part;
                double virtual = sum - carried;
                double lost = (carried - (sum - virtual)) + (part - virtual);
                if (lost != 0) {
                    parts[kept++] = lost;
                }
                carried = sum;
            }
            if (kept == parts.length) {
                parts = Arrays.copyOf(parts, 2 * kept);
            }
            parts[kept++] = carried;
            count = kept;
        }

        double over(int divisor) {
            BigDecimal sum = BigDecimal.ZERO;
            for (int i = 0; i < count; i++) {
                sum = sum.add(new BigDecimal(parts[i]));
            }
            return divisor == 0 ? 0 : sum.doubleValue() / divisor;
        }
    }
}
