package org.satline.audit;

import java.math.BigDecimal;
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

    /** A sum without rounding. */
    private static final class Sum {
        private BigDecimal sum = BigDecimal.ZERO;

        void add(double value) {
            sum = sum.add(new BigDecimal(value));
        }

        double over(int count) {
            return count == 0 ? 0 : sum.doubleValue() / count;
        }
    }
}
