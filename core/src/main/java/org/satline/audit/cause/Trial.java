package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.cause.LikelyCause.Kind;

/**
 * A mistake on trial: what it explains of the rows that are left, and how likely it would do so by chance.
 *
 * <p>Two chances are computed and the larger counts: that a wrong curve fits ({@link Evidence}), and, for answers that follow no curve,
 * that so many out of all rows to which the mistake could apply fit one by one at least so well. A mistake that fits every row outside and
 * every row within tolerance as well was made in all of them, and all of them speak for it.
 *
 * @param hypothesis the mistake
 * @param explained rows it explains
 * @param applicable how many rows it could apply to
 * @param speaking how many rows speak for it: those explained, and those within tolerance where it fits them all
 * @param looseness root mean square of misfit over tolerance, of a misfit at least half of the last digit
 * @param near whether it leads about as far from our values as the answers lie, so that it might fit by chance at all
 * @param exact whether what is left is no more than the digits
 * @param chance of one try; at most 1
 */
record Trial(
        Hypothesis hypothesis,
        List<AuditCase> explained,
        int applicable,
        int speaking,
        double looseness,
        boolean near,
        boolean exact,
        double chance) {
    /** Largest chance of coincidence at which a mistake is named (choice of this library, no source). */
    private static final double LARGEST_CHANCE = 0.03;

    /** The same where it is one of very many that are tried: of two at once, or another refrigerant (choice of this library, no source). */
    private static final double LARGEST_CHANCE_OF_MANY = 0.01;

    /** At this chance a mistake is named even if it explains few rows, or rows within tolerance (choice of this library, no source). */
    private static final double OVERWHELMING = 1e-4;

    private static final double LARGEST_CHANCE_WITHIN = 1e-3;

    /** Fewer rows are no pattern; two points lie on very many curves (choice of this library, no source). */
    private static final int FEWEST_ROWS = 3;

    /** A mistake of a calculator is made in all of its rows; a third leaves room for three mistakes (choice of this library, no source). */
    private static final double SMALLEST_SHARE = 1.0 / 3;

    /** A mistake that leads this much farther than the answers lie, or less far, cannot fit (choice of this library, no source). */
    static final double FARTHEST = 4;

    /** Two mistakes that differ less than this in what they leave cannot be told apart (choice of this library, no source). */
    private static final double ALIKE = 1.5;

    private static final Comparator<Trial> SIMPLEST_FIRST = Comparator.comparing(
                    (Trial trial) -> trial.hypothesis.besides().isPresent())
            .thenComparing(trial -> trial.hypothesis.mistake().kind())
            .thenComparing(trial -> trial.hypothesis.fitted())
            .thenComparingDouble(Trial::looseness)
            .thenComparing(trial -> trial.hypothesis.mistake().toString());

    /** The rows on which mistakes are tried: those outside that are left, and those within tolerance. */
    record Rows(List<AuditCase> left, List<AuditCase> within) {}

    /**
     * Tries a mistake.
     *
     * @param hypothesis the mistake
     * @param rows the rows
     * @param expected what a row should hold under it
     */
    static Trial of(Hypothesis hypothesis, Rows rows, BiFunction<Hypothesis, AuditCase, Optional<Expected>> expected) {
        Fit outside = Fit.of(hypothesis, rows.left, expected);
        Fit fit = outside;
        if (outside.explained.size() == outside.applicable) {
            Fit within = Fit.of(hypothesis, rows.within, expected);
            fit = within.explained.size() == within.applicable ? outside.with(within) : outside;
        }
        List<AuditCase> explained = rows.left.isEmpty() ? fit.odd() : outside.explained;
        int applicable = rows.left.isEmpty() ? explained.size() : outside.applicable;
        if (explained.isEmpty()) {
            return new Trial(hypothesis, explained, applicable, 0, 0, fit.near(), false, 1);
        }
        int fitted = hypothesis.fitted() ? 1 : 0;
        return new Trial(
                hypothesis,
                explained,
                applicable,
                fit.explained.size(),
                fit.looseness(),
                fit.near(),
                fit.exact(),
                Math.max(Evidence.chance(fit.points, fitted), fit.oneByOne(fitted)));
    }

    /** How a mistake fits some rows. */
    private record Fit(
            List<AuditCase> explained,
            int applicable,
            List<Evidence.Point> points,
            List<Double> leads,
            List<Double> widths,
            List<Double> tightness) {

        static Fit of(
                Hypothesis hypothesis,
                List<AuditCase> rows,
                BiFunction<Hypothesis, AuditCase, Optional<Expected>> expected) {
            Fit fit = new Fit(
                    new ArrayList<>(), 0, new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            int applicable = 0;
            for (AuditCase row : rows) {
                Optional<Expected> there = expected.apply(hypothesis, row);
                if (there.isPresent()) {
                    applicable++;
                    fit.add(row, there.get());
                }
            }
            return new Fit(fit.explained, applicable, fit.points, fit.leads, fit.widths, fit.tightness);
        }

        private void add(AuditCase row, Expected there) {
            double misfit = row.comparison().answer() - there.value();
            double off = Math.abs(misfit);
            double width = there.width();
            double difference = row.comparison().difference();
            double least = Math.max(row.rounding(), Math.abs(difference));
            double most = Math.max(width, row.rounding());
            leads.add(Math.abs(there.value() - row.comparison().ours()) / Math.max(least, Double.MIN_NORMAL));
            widths.add(most / Math.max(least, Double.MIN_NORMAL));
            if (there.holds(row)) {
                explained.add(row);
                tightness.add(most > 0 ? Math.min(1, Math.max(off, row.rounding()) / most) : 0);
                points.add(
                        new Evidence.Point(row.column(), row.question().place(), difference, misfit, row.rounding()));
            }
        }

        Fit with(Fit other) {
            return new Fit(
                    both(explained, other.explained),
                    applicable + other.applicable,
                    both(points, other.points),
                    both(leads, other.leads),
                    both(widths, other.widths),
                    both(tightness, other.tightness));
        }

        private static <T> List<T> both(List<T> first, List<T> second) {
            List<T> both = new ArrayList<>(first);
            both.addAll(second);
            return both;
        }

        /** Rows explained that differ from ours by more than their digits. */
        List<AuditCase> odd() {
            return explained.stream().filter(AuditCase::isOdd).toList();
        }

        double looseness() {
            return Math.sqrt(
                    tightness.stream().mapToDouble(t -> t * t).average().orElse(0));
        }

        boolean near() {
            double[] sorted =
                    leads.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            return sorted.length > 0
                    && Arrays.stream(sorted)
                                    .filter(lead -> lead >= 1 / FARTHEST && lead <= FARTHEST)
                                    .count()
                            >= SMALLEST_SHARE * sorted.length;
        }

        boolean exact() {
            return points.stream().allMatch(point -> Math.abs(point.misfit()) <= 1.01 * point.rounding());
        }

        /**
         * The chance that at least so many rows fit, if a wrong mistake leads anywhere within the difference with equal likelihood. All
         * rows
         * to which it could apply count, each with the misfit that the worst of those explained has, in tolerances.
         */
        double oneByOne(int fitted) {
            double worst =
                    tightness.stream().mapToDouble(Double::doubleValue).max().orElse(0);
            return atLeast(
                    explained.size() - fitted,
                    widths.stream()
                            .mapToDouble(width -> Math.min(1, 2 * worst * width))
                            .toArray());
        }

        /** The chance that at least so many come true of independent events that are not equally likely (Poisson's binomial). */
        private static double atLeast(int most, double[] chances) {
            if (most <= 0) {
                return 1;
            }
            int misses = chances.length - most;
            double[] missed = new double[misses + 1];
            missed[0] = 1;
            for (double chance : chances) {
                for (int k = misses; k > 0; k--) {
                    missed[k] = missed[k] * chance + missed[k - 1] * (1 - chance);
                }
                missed[0] *= chance;
            }
            return Math.min(1, Arrays.stream(missed).sum());
        }
    }

    private static int most(List<Trial> trials) {
        int most = 0;
        for (Trial trial : trials) {
            most = Math.max(most, trial.explained.size());
        }
        return most;
    }

    /** Those that explain most and leave least first, of those alike the simplest. */
    static List<Trial> bestFirst(List<Trial> trials) {
        List<Trial> left = new ArrayList<>(trials);
        List<Trial> sorted = new ArrayList<>();
        while (!left.isEmpty()) {
            int most = most(left);
            double tightest = left.stream()
                    .filter(trial -> trial.explained.size() == most)
                    .mapToDouble(Trial::looseness)
                    .min()
                    .orElseThrow();
            Trial next = left.stream()
                    .filter(trial -> trial.explained.size() == most && trial.looseness <= ALIKE * tightest)
                    .min(SIMPLEST_FIRST)
                    .orElseThrow();
            sorted.add(next);
            left.remove(next);
        }
        return sorted;
    }

    /** Whether two leave about as much. */
    boolean alike(Trial other) {
        return looseness <= ALIKE * other.looseness && other.looseness <= ALIKE * looseness;
    }

    /** The chance that any of a number of tries fits so well (Bonferroni). */
    double chanceIn(int tries) {
        return Math.min(1, chance * tries);
    }

    /** Whether it explains enough rows to be a pattern. */
    boolean enough() {
        return explained.size() >= FEWEST_ROWS && explained.size() >= SMALLEST_SHARE * applicable;
    }

    /** Whether it explains enough, too well for a coincidence in so many tries. */
    boolean convincing(int tries, boolean allWithin) {
        boolean many = hypothesis.besides().isPresent() || hypothesis.mistake().kind() == Kind.OTHER_REFRIGERANT;
        double pattern = many ? LARGEST_CHANCE_OF_MANY : LARGEST_CHANCE;
        double largest = allWithin ? LARGEST_CHANCE_WITHIN : enough() ? pattern : OVERWHELMING;
        return !explained.isEmpty() && (enough() || !allWithin) && chanceIn(tries) <= largest;
    }

    /** The rows, by identity: equal rows are different rows. */
    static Set<AuditCase> setOf(List<AuditCase> rows) {
        Set<AuditCase> set = Collections.newSetFromMap(new IdentityHashMap<>());
        set.addAll(rows);
        return set;
    }
}
