package org.satline.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.satline.audit.AuditCase.Expected;
import org.satline.audit.LikelyCause.Kind;
import org.satline.explanation.Figure;

/**
 * The search for the causes of the rows outside of one refrigerant; keeps what each mistake makes of the rows of the sample. For one
 * thread, used once.
 */
final class CauseSearch {
    /** Rows of one refrigerant that are searched; what is found there is then held against all of them. */
    private static final int ROWS_SEARCHED = 120;

    /** Rows by which it is decided whether another refrigerant is tried on the sample at all, and how many of them it has to explain. */
    private static final int ROWS_TO_CHOOSE_BY = 12;

    private static final int FEWEST_TO_CHOOSE = 2;
    private static final int FEWEST_ROWS_OF_AN_OFFSET = 3;
    private static final int MOST_ALTERNATIVES = 4;

    private static final Comparator<AuditCase> BY_CONTENT = Comparator.comparing(
                    (AuditCase c) -> c.question().quantity())
            .thenComparingDouble(c -> c.question().temperatureK().orElse(0))
            .thenComparingDouble(c -> c.question().pressurePa().orElse(0))
            .thenComparing(c -> c.row().unit())
            .thenComparingDouble(c -> c.comparison().answer())
            .thenComparing(c -> c.row().id());

    private static final List<Slip.OfCase> QUESTIONS = Mistakes.ofQuestions();
    private static final List<Slip.OfCase> VALUES = Mistakes.ofValues();
    private static final List<Slip.OfNumber> NUMBERS = NumberMistakes.all();

    private final List<AuditCase> all;
    private final List<AuditCase> left;
    private final List<AuditCase> sample;
    private final List<Hypothesis> simple = new ArrayList<>();
    private List<Hypothesis> pairs = List.of();
    private final Supplier<List<Hypothesis>> refrigerants;
    private List<Hypothesis> others = List.of();
    private final Map<Hypothesis, Map<AuditCase, Optional<Expected>>> known = new HashMap<>();

    /**
     * Sets out.
     *
     * @param rows rows outside, in the order of their file
     * @param refrigerants mistakes to try where none of those explains everything; costly to make
     */
    CauseSearch(List<AuditCase> rows, Supplier<List<Hypothesis>> refrigerants) {
        this.all = rows.stream().sorted(BY_CONTENT).toList();
        this.left = new ArrayList<>(all);
        this.sample = new ArrayList<>(spread(all, ROWS_SEARCHED));
        Stream.of(QUESTIONS, VALUES, NUMBERS)
                .flatMap(List::stream)
                .forEach(slip -> simple.add(new Hypothesis(slip.mistake(), false, slip::alone)));
        simple.addAll(RowMistakes.of(rows));
        this.refrigerants = refrigerants;
    }

    /** Trials of one round that convince, best first, and how many mistakes were tried. */
    private record Round(List<Trial> convincing, int tries) {}

    /** Takes the mistake that explains most, then the next for the rows that are left, until none convinces. */
    List<LikelyCause> causes() {
        List<LikelyCause> found = new ArrayList<>();
        for (int number = 1; !sample.isEmpty(); number++) {
            Round round = round(number);
            Optional<Trial> best = Optional.empty();
            for (Trial trial : round.convincing) {
                Trial confirmed = Trial.of(trial.hypothesis(), left, fitted(trial.hypothesis()), this::expected);
                if (confirmed.convincing(round.tries)) {
                    best = Optional.of(confirmed);
                    found.add(cause(confirmed, trial, round));
                    break;
                }
            }
            if (best.isEmpty()) {
                break;
            }
            Set<AuditCase> explained = Trial.setOf(best.get().explained());
            left.removeIf(explained::contains);
            sample.removeIf(explained::contains);
        }
        return found;
    }

    private static List<AuditCase> spread(List<AuditCase> rows, int most) {
        List<AuditCase> spread = new ArrayList<>();
        int count = Math.min(most, rows.size());
        for (int i = 0; i < count; i++) {
            spread.add(rows.get((int) ((long) i * rows.size() / count)));
        }
        return spread;
    }

    /** Each round is another chance for a coincidence, so what was tried counts once for each round. */
    private Round round(int number) {
        List<Trial> trials = new ArrayList<>();
        for (Hypothesis hypothesis : simple) {
            trials.add(trial(hypothesis));
        }
        offset(Dimension.ENTHALPY).ifPresent(trials::add);
        offset(Dimension.ENTROPY).ifPresent(trials::add);
        trials.removeIf(trial -> trial.applicable() == 0);
        int tries = number * trials.size();
        List<Trial> convincing = convincing(trials, tries);
        if (convincing.stream().noneMatch(trial -> trial.explained().size() == sample.size())) {
            others = others.isEmpty() ? refrigerants.get() : others;
            tries = number * (trials.size() + others.size());
            trials.addAll(promising(others));
            convincing = convincing(trials, tries);
        }
        if (convincing.isEmpty()) {
            pairs = pairs.isEmpty() ? pairs() : pairs;
            tries += number * pairs.size();
            trials.addAll(promising(pairs));
            convincing = convincing(trials, tries);
        }
        return new Round(convincing, tries);
    }

    /** Two mistakes in the same rows: each pair of a mistake and one that is made later on the way from question to number. */
    private List<Hypothesis> pairs() {
        List<Hypothesis> made = new ArrayList<>();
        for (List<Slip.OfCase> first : List.of(QUESTIONS, VALUES)) {
            for (Slip.OfCase slip : first) {
                Map<AuditCase, Optional<AuditCase>> seen = new IdentityHashMap<>();
                List<Slip> later = new ArrayList<>(NUMBERS);
                if (first == QUESTIONS) {
                    later.addAll(VALUES);
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

    private static List<Trial> convincing(List<Trial> trials, int tries) {
        return trials.stream()
                .filter(trial -> trial.convincing(tries))
                .sorted(Trial.BEST_FIRST)
                .toList();
    }

    private Trial trial(Hypothesis hypothesis) {
        return Trial.of(hypothesis, sample, fitted(hypothesis), this::expected);
    }

    private static int fitted(Hypothesis hypothesis) {
        return hypothesis.fitted() ? 1 : 0;
    }

    private Optional<Expected> expected(Hypothesis hypothesis, AuditCase row) {
        Map<AuditCase, Optional<Expected>> rows = known.computeIfAbsent(hypothesis, key -> new IdentityHashMap<>());
        return rows.computeIfAbsent(row, hypothesis::expected);
    }

    /** A zero that is not among the usual ones: the same difference in all rows of enthalpy, or of entropy. */
    private Optional<Trial> offset(Dimension dimension) {
        List<Double> offsets = sample.stream()
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
        List<AuditCase> few = spread(sample, ROWS_TO_CHOOSE_BY);
        int fewest = Math.min(FEWEST_TO_CHOOSE, few.size());
        return many.stream()
                .filter(each ->
                        Trial.of(each, few, 0, this::expected).explained().size() >= fewest)
                .map(this::trial)
                .toList();
    }

    private LikelyCause cause(Trial confirmed, Trial onSample, Round round) {
        Set<AuditCase> rows = Trial.setOf(onSample.explained());
        List<Mistake> alternatives = round.convincing.stream()
                .filter(trial -> trial.hypothesis().besides().isEmpty()
                        && !trial.hypothesis().equals(onSample.hypothesis())
                        && rows.equals(Trial.setOf(trial.explained())))
                .limit(MOST_ALTERNATIVES)
                .map(trial -> trial.hypothesis().mistake())
                .toList();
        Set<AuditCase> open = Trial.setOf(left);
        int before = (int) all.stream()
                .filter(row -> !open.contains(row)
                        && expected(confirmed.hypothesis(), row).isPresent())
                .count();
        AuditCase first = confirmed.explained().get(0);
        return new LikelyCause(
                first.fluid().model().refrigerant().designation(),
                confirmed.hypothesis().mistake(),
                confirmed.hypothesis().besides(),
                confirmed.explained().size(),
                before + confirmed.applicable(),
                confirmed.explained().stream()
                        .map(row -> row.row().id())
                        .sorted()
                        .toList(),
                confirmed.chanceIn(round.tries),
                alternatives);
    }
}
