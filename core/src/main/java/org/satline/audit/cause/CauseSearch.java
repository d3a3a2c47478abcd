package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.answer.Dimension;
import org.satline.audit.cause.Findings.Finding;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.explanation.Figure;

/**
 * The search for the causes of the differences of one refrigerant; keeps what each mistake makes of the rows of the sample. For one thread,
 * used once.
 */
final class CauseSearch {
    /** Rows by which it is decided whether another refrigerant is tried on the sample at all, and how many of them it has to explain. */
    private static final int ROWS_TO_CHOOSE_BY = 12;

    private static final int FEWEST_TO_CHOOSE = 2;
    private static final int FEWEST_ROWS_OF_AN_OFFSET = 3;
    private static final int MOST_ALTERNATIVES = 4;
    private static final int MOST_UNPROVEN = 2;

    /** Rows that agree are searched where their mean differs from zero by so many of its standard uncertainties. */
    private static final double SIGNIFICANT = 5;

    private static final List<Slip.OfCase> QUESTIONS = Mistakes.ofQuestions();
    private static final List<Slip.OfCase> VALUES = Mistakes.ofValues();
    private static final List<Slip.OfNumber> NUMBERS = NumberMistakes.all();

    private final List<AuditCase> left;
    private final List<AuditCase> within;
    private final boolean allWithin;
    private final List<Hypothesis> simple = new ArrayList<>();
    private List<Hypothesis> pairs = List.of();
    private final Supplier<List<Hypothesis>> refrigerants;
    private List<Hypothesis> others = List.of();
    private final IdentityHashMap<Hypothesis, Map<AuditCase, Optional<Expected>>> known = new IdentityHashMap<>();

    /**
     * Sets out.
     *
     * @param outside rows outside
     * @param within rows within tolerance
     * @param refrigerants mistakes to try where none of those explains everything; costly to make
     */
    CauseSearch(List<AuditCase> outside, List<AuditCase> within, Supplier<List<Hypothesis>> refrigerants) {
        this.left = new ArrayList<>(outside);
        this.within = within;
        this.allWithin = outside.isEmpty();
        Stream.of(QUESTIONS, VALUES, NUMBERS)
                .flatMap(List::stream)
                .forEach(slip -> simple.add(new Hypothesis(slip.mistake(), false, slip::alone)));
        simple.addAll(RowMistakes.of(outside));
        this.refrigerants = refrigerants;
    }

    /** Trials of one round, those that convince, best first, and how many mistakes were tried that might have fitted. */
    private record Round(List<Trial> trials, List<Trial> convincing, int tries) {}

    /** Takes the mistake that explains most, then the next for the rows that are left, until none convinces. */
    Findings findings() {
        Optional<Trial> pattern = PatternMistakes.of(new Trial.Rows(left, within));
        if (pattern.isPresent()) {
            return new Findings(List.of(finding(pattern.get(), new Round(List.of(), List.of(), 1))), List.of());
        }
        List<Finding> found = new ArrayList<>();
        if (allWithin && !differs()) {
            return new Findings(found, List.of());
        }
        List<Finding> unproven = List.of();
        for (int number = 1; number == 1 || !left.isEmpty(); number++) {
            Round round = round(number);
            if (round.convincing.isEmpty()) {
                unproven = number == 1 && !allWithin ? unproven(round) : unproven;
                break;
            }
            Trial best = round.convincing.get(0);
            found.add(finding(best, round));
            Set<AuditCase> explained = Trial.setOf(best.explained());
            left.removeIf(explained::contains);
        }
        return new Findings(found, unproven);
    }

    /** Whether the rows of any column differ on the whole by more than their digits allow. */
    private boolean differs() {
        Map<String, double[]> columns = new HashMap<>();
        for (AuditCase row : within) {
            double[] sums = columns.computeIfAbsent(row.column(), key -> new double[2]);
            sums[0] += row.comparison().difference();
            sums[1] += row.rounding() * row.rounding() / 3;
        }
        return columns.values().stream().anyMatch(sums -> Math.abs(sums[0]) > SIGNIFICANT * Math.sqrt(sums[1]));
    }

    /** Those that explain every row to the digit, though it may be chance. */
    private List<Finding> unproven(Round round) {
        return Trial.bestFirst(round.trials.stream()
                        .filter(trial -> trial.enough()
                                && trial.exact()
                                && trial.explained().size() == left.size()
                                && trial.hypothesis().besides().isEmpty())
                        .toList())
                .stream()
                .limit(MOST_UNPROVEN)
                .map(trial -> finding(trial, round))
                .toList();
    }

    /** Each round is another chance for a coincidence, so what was tried counts once for each round. */
    private Round round(int number) {
        List<Trial> trials = new ArrayList<>();
        for (Hypothesis hypothesis : simple) {
            trials.add(trial(hypothesis));
        }
        offset(Dimension.ENTHALPY).ifPresent(trials::add);
        offset(Dimension.ENTROPY).ifPresent(trials::add);
        List<Trial> convincing = convincing(trials, number);
        if (convincing.stream().noneMatch(this::explainsAll)) {
            others = others.isEmpty() ? refrigerants.get() : others;
            trials.addAll(promising(others));
            convincing = convincing(trials, number);
        }
        if (convincing.stream().noneMatch(this::explainsAll)) {
            pairs = pairs.isEmpty() ? pairs() : pairs;
            List<Trial> more = new ArrayList<>(trials);
            more.addAll(promising(pairs));
            List<Trial> both = convincing(more, number);
            if (convincing.isEmpty() || (!both.isEmpty() && explainsAll(both.get(0)))) {
                trials = more;
                convincing = both;
            }
        }
        return new Round(trials, convincing, tries(trials, number));
    }

    private boolean explainsAll(Trial trial) {
        return trial.explained().size() >= left.size();
    }

    /** Two mistakes in the same rows: each pair of a mistake and one that is made later on the way from question to number. */
    private List<Hypothesis> pairs() {
        List<Hypothesis> made = new ArrayList<>();
        for (List<Slip.OfCase> first : List.of(QUESTIONS, VALUES)) {
            for (Slip.OfCase slip : first) {
                IdentityHashMap<AuditCase, Optional<AuditCase>> seen = new IdentityHashMap<>();
                List<Slip> later = new ArrayList<>(NUMBERS);
                if (first == QUESTIONS) {
                    later.addAll(VALUES);
                } else {
                    VALUES.stream().filter(value -> later(slip, value)).forEach(later::add);
                }
                for (Slip second : later) {
                    made.add(new Hypothesis(
                            slip.mistake(),
                            Optional.of(second.mistake()),
                            false,
                            row -> seen.computeIfAbsent(row, slip::seen).flatMap(second::alone)));
                }
            }
        }
        return made;
    }

    /** A table is read before an atmosphere is taken off. */
    private static boolean later(Slip first, Slip second) {
        return first.mistake().kind() == Kind.COARSE_TABLE && second.mistake().kind() == Kind.GAUGE_OR_ABSOLUTE;
    }

    private static int tries(List<Trial> trials, int number) {
        return number * Math.max(1, (int) trials.stream().filter(Trial::near).count());
    }

    private List<Trial> convincing(List<Trial> trials, int number) {
        int tries = tries(trials, number);
        return Trial.bestFirst(trials.stream()
                .filter(trial -> trial.convincing(tries, allWithin))
                .toList());
    }

    private Trial trial(Hypothesis hypothesis) {
        return Trial.of(hypothesis, new Trial.Rows(left, within), this::expected);
    }

    private Optional<Expected> expected(Hypothesis hypothesis, AuditCase row) {
        Map<AuditCase, Optional<Expected>> rows = known.computeIfAbsent(hypothesis, key -> new IdentityHashMap<>());
        return rows.computeIfAbsent(row, hypothesis::expected);
    }

    /** A zero that is not among the usual ones: the same difference in all rows of enthalpy, or of entropy. */
    private Optional<Trial> offset(Dimension dimension) {
        List<Double> offsets = left.stream()
                .filter(row -> row.question().quantity().dimension() == dimension)
                .map(row -> row.unit().differenceToSi(row.comparison().difference()))
                .sorted()
                .toList();
        if (offsets.size() < FEWEST_ROWS_OF_AN_OFFSET) {
            return Optional.empty();
        }
        double median = offsets.get(offsets.size() / 2);
        return Optional.of(trial(new Hypothesis(
                new Mistake(
                        Kind.REFERENCE_STATE,
                        Mistake.Code.UNKNOWN_ZERO,
                        List.of(Figure.of("amount", median, dimension.siUnit()))),
                true,
                row -> row.question().quantity().dimension() == dimension
                        ? Optional.of(row.moved(median))
                        : Optional.empty())));
    }

    /** Those that explain something of a few rows, tried on the whole sample. */
    private List<Trial> promising(List<Hypothesis> many) {
        List<AuditCase> few = RowSample.spread(allWithin ? within : left, ROWS_TO_CHOOSE_BY);
        int fewest = Math.min(FEWEST_TO_CHOOSE, few.size());
        return many.stream()
                .filter(each -> fits(each, few) >= fewest)
                .map(this::trial)
                .toList();
    }

    private long fits(Hypothesis hypothesis, List<AuditCase> few) {
        return few.stream()
                .filter(row -> expected(hypothesis, row)
                        .filter(there -> there.holds(row))
                        .isPresent())
                .count();
    }

    private static Finding finding(Trial best, Round round) {
        Set<AuditCase> rows = Trial.setOf(best.explained());
        List<Mistake> alternatives = round.convincing.stream()
                .filter(trial -> trial.hypothesis().besides().isEmpty()
                        && !trial.hypothesis().fitted()
                        && !trial.hypothesis().equals(best.hypothesis())
                        && trial.alike(best)
                        && rows.equals(Trial.setOf(trial.explained())))
                .limit(MOST_ALTERNATIVES)
                .map(trial -> trial.hypothesis().mistake())
                .toList();
        return new Finding(
                best.hypothesis(),
                best.explained().stream().allMatch(row -> row.comparison().agrees()),
                best.speaking(),
                best.chanceIn(round.tries),
                alternatives);
    }
}
