package org.satline.audit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.satline.audit.AuditSummary.Constant;
import org.satline.audit.answer.AuditCase;

/** Whether the answers of one column all lie the same amount or by the same factor off; keeps extremes alone. Not thread-safe. */
final class ConstantSum {
    private static final int FEWEST_ROWS = 3;

    /** Ratios this close together count as one (choice of this library, no source). */
    private static final double LARGEST_SPREAD_OF_RATIO = 1e-3;

    /** Differences this close together count as one, as a share of them (choice of this library, no source). */
    private static final double LARGEST_SPREAD = 0.1;

    /** Largest chance that differences as scattered as they are large lie so close together (choice of this library, no source). */
    private static final double LARGEST_CHANCE = 1e-3;

    /** What binary arithmetic adds to the spread of differences that differ by one printed digit. */
    private static final double DUST = 1e-6;

    /** More states than this make no chance smaller that counts. */
    private static final int MOST_STATES = 1000;

    private final AuditCase first;
    private int rows;
    private int outside;
    private boolean allWithZero = true;
    private double digit;
    private final Range differences = new Range();
    private final Range parts = new Range();
    private final Range ratiosOutside = new Range();
    private final Set<Double> states = new HashSet<>();

    ConstantSum(AuditCase first) {
        this.first = first;
    }

    void add(AuditCase row) {
        rows++;
        double difference = row.comparison().difference();
        double ours = row.comparison().ours();
        differences.add(difference);
        digit = Math.max(digit, 2 * row.rounding());
        if (states.size() < MOST_STATES) {
            states.add(ours);
        }
        boolean zero = row.unit().hasTrueZero(row.question().quantity().dimension()) && Math.abs(ours) > 0;
        allWithZero &= zero;
        if (zero) {
            parts.add(difference / ours);
        }
        if (!row.comparison().agrees()) {
            outside++;
            if (zero) {
                ratiosOutside.add(row.comparison().answer() / ours);
            }
        }
    }

    Optional<Constant> constant() {
        return ratio().or(this::difference);
    }

    private Optional<Constant> ratio() {
        boolean one = outside >= FEWEST_ROWS
                && ratiosOutside.count == outside
                && ratiosOutside.spread() <= LARGEST_SPREAD_OF_RATIO * Math.abs(ratiosOutside.least)
                && Math.abs(ratiosOutside.middle() - 1) > ratiosOutside.spread();
        return one ? Optional.of(made(true, ratiosOutside.middle(), outside)) : Optional.empty();
    }

    private Optional<Constant> difference() {
        // the same question asked again is no further evidence
        if (outside < FEWEST_ROWS || states.size() < FEWEST_ROWS) {
            return Optional.empty();
        }
        double middle = differences.middle();
        double spread = Math.max(digit, differences.spread());
        boolean alike = spread <= Math.max(LARGEST_SPREAD * Math.abs(middle), (1 + DUST) * digit);
        // that all of them fall into one window of this width, were each as likely anywhere between zero and there
        boolean rare = states.size() * Math.pow(spread / Math.abs(middle), states.size() - 1.0) <= LARGEST_CHANCE;
        // where states lie close together, a ratio makes nearly constant differences too: whichever scatters less is
        // the better word
        boolean ratherARatio = allWithZero && parts.spread() <= spread / Math.abs(middle) * Math.abs(parts.middle());
        return alike && rare && !ratherARatio ? Optional.of(made(false, middle, rows)) : Optional.empty();
    }

    private Constant made(boolean ratio, double value, int count) {
        return new Constant(
                first.designation(),
                first.question().quantity(),
                first.comparison().unit(),
                ratio ? Constant.Kind.RATIO : Constant.Kind.DIFFERENCE,
                value,
                count);
    }

    /** Least and largest of some numbers. */
    private static final class Range {
        private int count;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        void add(double value) {
            count++;
            least = Math.min(least, value);
            most = Math.max(most, value);
        }

        double middle() {
            return (least + most) / 2;
        }

        double spread() {
            return most - least;
        }
    }
}
