package org.satline.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.satline.audit.AuditCase.Expected;

/**
 * A mistake on trial: what it explains of the rows that are left, and how likely it would do so by chance.
 *
 * <p>Two chances are computed and the larger counts. Rows of one quantity follow one curve, so a wrong curve that happens to have the right
 * level and slope fits them all: that is the chance of two rows for each quantity. Answers that follow no curve fit one by one: that is the
 * chance that so many out of all rows to which the mistake could apply fit at least so well.
 *
 * @param hypothesis the mistake
 * @param explained rows it explains
 * @param applicable how many rows it could apply to
 * @param misfit root mean square of misfit over tolerance
 * @param chance of one try; at most 1
 */
record Trial(Hypothesis hypothesis, List<AuditCase> explained, int applicable, double misfit, double chance) {
    /** Largest chance of coincidence at which a mistake is named (choice of this library, no source). */
    private static final double LARGEST_CHANCE = 0.05;

    /** At this chance a mistake is named even if it explains few rows (choice of this library, no source). */
    private static final double OVERWHELMING = 1e-4;

    /** Fewer rows are no pattern; two points lie on very many curves (choice of this library, no source). */
    private static final int FEWEST_ROWS = 3;

    /** A mistake of a calculator is made in all of its rows; a third leaves room for three mistakes (choice of this library, no source). */
    private static final double SMALLEST_SHARE = 1.0 / 3;

    /** Rows of one quantity follow one curve, so its level and its slope are all that can fit by chance independently. */
    private static final int INDEPENDENT_ROWS = 2;

    static final Comparator<Trial> BEST_FIRST = Comparator.comparingInt((Trial trial) -> -trial.explained.size())
            .thenComparing(trial -> trial.hypothesis.mistake().kind())
            .thenComparingDouble(Trial::misfit)
            .thenComparing(trial -> trial.hypothesis.mistake().toString());

    /**
     * Tries a mistake.
     *
     * @param hypothesis the mistake
     * @param left rows that are not yet explained
     * @param fitted how many rows went into a parameter of it
     * @param expected what a row should hold under it
     */
    static Trial of(
            Hypothesis hypothesis,
            List<AuditCase> left,
            int fitted,
            BiFunction<Hypothesis, AuditCase, Optional<Expected>> expected) {
        List<AuditCase> explained = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        double misfits = 0;
        double squares = 0;
        double worst = 0;
        for (AuditCase row : left) {
            Optional<Expected> there = expected.apply(hypothesis, row);
            if (there.isEmpty()) {
                continue;
            }
            double off = Math.abs(row.comparison().answer() - there.get().value());
            double width = there.get().width() + 1e-12 * Math.abs(there.get().value());
            double difference = Math.abs(row.comparison().difference());
            double most = Math.max(width, row.rounding());
            widths.add(most / difference);
            if (off <= width) {
                explained.add(row);
                double seen = Math.max(off, row.rounding());
                misfits += seen * seen / (difference * difference);
                squares += width > 0 ? off * off / (width * width) : 0;
                worst = Math.max(worst, most > 0 ? seen / most : 0);
            }
        }
        if (explained.isEmpty()) {
            return new Trial(hypothesis, explained, widths.size(), 0, 1);
        }
        int rows = explained.size();
        double curve =
                Math.pow(Math.min(1, 2 * Math.sqrt(misfits / rows)), Math.max(0, independent(explained) - fitted));
        return new Trial(
                hypothesis,
                explained,
                widths.size(),
                Math.sqrt(squares / rows),
                Math.max(curve, oneByOne(widths, worst, rows - fitted)));
    }

    /**
     * The chance that at least so many rows fit, if a wrong mistake leads anywhere within the difference with equal likelihood. All rows to
     * which it could apply count, each with the misfit that the worst of those explained has, in tolerances.
     */
    private static double oneByOne(List<Double> widths, double worst, int fitting) {
        double sum = 0;
        for (double width : widths) {
            sum += Math.min(1, 2 * worst * width);
        }
        double each = Math.min(1, sum / widths.size());
        return fitting <= 0
                ? 1
                : 1 - new BinomialDistribution(null, widths.size(), each).cumulativeProbability(fitting - 1);
    }

    private static int independent(List<AuditCase> rows) {
        Map<AuditedQuantity, Integer> counts = new EnumMap<>(AuditedQuantity.class);
        rows.forEach(row -> counts.merge(row.question().quantity(), 1, Integer::sum));
        return counts.values().stream()
                .mapToInt(count -> Math.min(INDEPENDENT_ROWS, count))
                .sum();
    }

    /** The chance that any of a number of tries fits so well (Bonferroni). */
    double chanceIn(int tries) {
        return Math.min(1, chance * tries);
    }

    /** Whether it explains enough, too well for a coincidence in so many tries. */
    boolean convincing(int tries) {
        boolean enough = explained.size() >= FEWEST_ROWS && explained.size() >= SMALLEST_SHARE * applicable;
        return chanceIn(tries) <= (enough ? LARGEST_CHANCE : OVERWHELMING);
    }

    /** The rows, by identity: equal rows are different rows. */
    static Set<AuditCase> setOf(List<AuditCase> rows) {
        Set<AuditCase> set = Collections.newSetFromMap(new IdentityHashMap<>());
        set.addAll(rows);
        return set;
    }
}
