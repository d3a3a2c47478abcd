package org.satline.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.audit.AuditCase.Expected;
import org.satline.audit.LikelyCause.Kind;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * Finds mistakes that explain the rows outside of one refrigerant. Each hypothesis is tried on each row; that which explains most is taken, then the next for
 * the rows that are left. One that may well fit by chance is not named. Thread-safe.
 */
final class CauseFinder {
    /** Largest chance of coincidence at which a mistake is named (choice of this library, no source). */
    private static final double LARGEST_CHANCE = 0.05;

    /** Rows of one quantity follow one curve, so its level and its slope are all that can fit by chance independently. */
    private static final int INDEPENDENT_ROWS = 2;

    private static final int ROWS_TO_CHOOSE_BY = 24;
    private static final int FEWEST_ROWS_OF_AN_OFFSET = 3;
    private static final int FEWEST_ROWS_OF_ANOTHER_REFRIGERANT = 2;
    private static final int MOST_ALTERNATIVES = 4;

    private static final List<Hypothesis> SIMPLE = Mistakes.all();

    private final Catalogue catalogue;
    private final ReferenceState reference;
    private final Map<String, Optional<FluidModel>> others = new ConcurrentHashMap<>();

    CauseFinder(Catalogue catalogue, ReferenceState reference) {
        this.catalogue = catalogue;
        this.reference = reference;
    }

    /** A hypothesis on trial: the rows it explains, those it could apply to, and how well it fits. */
    private record Trial(
            Hypothesis hypothesis, List<AuditCase> explained, int candidates, double misfit, double chance) {
        boolean convincing() {
            return !explained.isEmpty() && chance <= LARGEST_CHANCE;
        }
    }

    private static final Comparator<Trial> BEST_FIRST = Comparator.comparingInt(
                    (Trial trial) -> -trial.explained.size())
            .thenComparing(trial -> trial.hypothesis.kind())
            .thenComparingDouble(Trial::misfit)
            .thenComparing(trial -> trial.hypothesis.description());

    /** Causes of the rows outside of one refrigerant; the order of the rows does not matter. */
    List<LikelyCause> causes(List<AuditCase> rows) {
        List<AuditCase> all = rows.stream().sorted(BY_CONTENT).toList();
        List<AuditCase> left = new ArrayList<>(all);
        List<LikelyCause> found = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Trial> trials = trials(left, all);
            if (trials.isEmpty()) {
                break;
            }
            Trial best = trials.get(0);
            found.add(cause(best, trials));
            Set<AuditCase> explained = new HashSet<>(best.explained);
            left.removeIf(explained::contains);
        }
        return found;
    }

    private static final Comparator<AuditCase> BY_CONTENT = Comparator.comparing(
                    (AuditCase c) -> c.question().quantity())
            .thenComparingDouble(c -> c.question().temperatureK().orElse(0))
            .thenComparingDouble(c -> c.question().pressurePa().orElse(0))
            .thenComparing(c -> c.row().unit())
            .thenComparingDouble(c -> c.comparison().answer())
            .thenComparing(c -> c.row().id());

    private List<Trial> trials(List<AuditCase> left, List<AuditCase> all) {
        List<Trial> trials = new ArrayList<>();
        for (Hypothesis hypothesis : SIMPLE) {
            trials.add(trial(hypothesis, left, all, 1, 0));
        }
        offset(Dimension.ENTHALPY, left, all).ifPresent(trials::add);
        offset(Dimension.ENTROPY, left, all).ifPresent(trials::add);
        trials.removeIf(trial -> !trial.convincing());
        if (trials.stream().noneMatch(trial -> trial.explained.size() == left.size())) {
            trials.addAll(otherRefrigerants(left, all));
        }
        trials.removeIf(trial -> !trial.convincing());
        trials.sort(BEST_FIRST);
        return trials;
    }

    /**
     * Tries a hypothesis.
     *
     * @param alternatives how many of its like are tried
     * @param fitted how many rows went into a parameter of it
     */
    private static Trial trial(
            Hypothesis hypothesis, List<AuditCase> left, List<AuditCase> all, int alternatives, int fitted) {
        List<AuditCase> explained = new ArrayList<>();
        List<Double> misfits = new ArrayList<>();
        double squares = 0;
        for (AuditCase row : left) {
            Optional<Expected> expected = hypothesis.expected(row);
            if (expected.isEmpty() || !explains(row, expected.get())) {
                continue;
            }
            explained.add(row);
            double width = expected.get().width();
            double off = row.comparison().answer() - expected.get().value();
            misfits.add(Math.max(Math.abs(off), row.rounding())
                    / Math.abs(row.comparison().difference()));
            squares += width > 0 ? off * off / (width * width) : 0;
        }
        double chance = Math.min(1, alternatives * chance(misfits, independent(explained) - fitted));
        int candidates = explained.isEmpty()
                ? 0
                : (int) all.stream()
                        .filter(row -> hypothesis.expected(row).isPresent())
                        .count();
        return new Trial(
                hypothesis,
                explained,
                candidates,
                explained.isEmpty() ? 0 : Math.sqrt(squares / explained.size()),
                chance);
    }

    private static int independent(List<AuditCase> rows) {
        Map<AuditedQuantity, Integer> counts = new EnumMap<>(AuditedQuantity.class);
        rows.forEach(row -> counts.merge(row.question().quantity(), 1, Integer::sum));
        return counts.values().stream()
                .mapToInt(count -> Math.min(INDEPENDENT_ROWS, count))
                .sum();
    }

    /**
     * How likely it is that rows fit so well by chance, if a wrong mistake leads anywhere within the difference with equal likelihood: all rows are taken to fit
     * as well as they do on average, so that one lucky row counts for little.
     */
    private static double chance(List<Double> misfits, int independent) {
        double squares = 0;
        for (double misfit : misfits) {
            squares += misfit * misfit;
        }
        double each = Math.min(1, 2 * Math.sqrt(squares / Math.max(1, misfits.size())));
        return Math.pow(each, Math.max(0, independent));
    }

    private static boolean explains(AuditCase row, Expected expected) {
        double off = Math.abs(row.comparison().answer() - expected.value());
        return off <= expected.width() + 1e-12 * Math.abs(expected.value());
    }

    /** A zero that is not among the usual ones: the same difference in all rows of enthalpy, or of entropy. */
    private static Optional<Trial> offset(Dimension dimension, List<AuditCase> left, List<AuditCase> all) {
        List<Double> offsets = left.stream()
                .filter(row -> row.question().quantity().dimension() == dimension)
                .map(row -> row.unit().differenceToSi(row.comparison().difference()))
                .sorted()
                .toList();
        if (offsets.size() < FEWEST_ROWS_OF_AN_OFFSET) {
            return Optional.empty();
        }
        double median = offsets.get(offsets.size() / 2);
        Hypothesis hypothesis = new Hypothesis(
                Kind.REFERENCE_STATE,
                "the answer counts from another zero, " + Numbers.plain(median) + " " + dimension.siUnit() + " off",
                row -> row.question().quantity().dimension() == dimension
                        ? Optional.of(row.moved(median))
                        : Optional.empty());
        Trial trial = trial(hypothesis, left, all, 1, 1);
        return trial.explained.size() < FEWEST_ROWS_OF_AN_OFFSET ? Optional.empty() : Optional.of(trial);
    }

    private List<Trial> otherRefrigerants(List<AuditCase> left, List<AuditCase> all) {
        List<AuditCase> sample = new ArrayList<>();
        double step = Math.max(1, left.size() / (double) ROWS_TO_CHOOSE_BY);
        for (double at = 0; at < left.size(); at += step) {
            sample.add(left.get((int) at));
        }
        String own = left.get(0).fluid().model().refrigerant().designation();
        List<Refrigerant> tried = catalogue.all().stream()
                .filter(each -> !each.designation().equals(own) && model(each).isPresent())
                .toList();
        List<Trial> trials = new ArrayList<>();
        for (Refrigerant each : tried) {
            FluidModel model = model(each).orElseThrow();
            Hypothesis hypothesis = new Hypothesis(
                    Kind.OTHER_REFRIGERANT,
                    "the answers are those of " + each.designation(),
                    row -> Optional.of(row.expected(model)));
            if (trial(hypothesis, sample, List.of(), tried.size(), 0).explained.isEmpty()) {
                continue;
            }
            Trial trial = trial(hypothesis, left, all, tried.size(), 0);
            if (trial.explained.size() >= FEWEST_ROWS_OF_ANOTHER_REFRIGERANT) {
                trials.add(trial);
            }
        }
        return trials;
    }

    private Optional<FluidModel> model(Refrigerant refrigerant) {
        return others.computeIfAbsent(refrigerant.designation(), key -> {
            if (!refrigerant.hasComposition()) {
                return Optional.empty();
            }
            try {
                FluidModel model = FluidModel.of(refrigerant);
                return Optional.of(model.has(reference) ? model.with(reference) : model);
            } catch (IllegalArgumentException | ConvergenceException e) {
                return Optional.empty(); // listed without an equation
            }
        });
    }

    private static LikelyCause cause(Trial best, List<Trial> trials) {
        Set<AuditCase> rows = new HashSet<>(best.explained);
        List<String> alternatives = trials.stream()
                .skip(1)
                .filter(trial -> rows.equals(new HashSet<>(trial.explained)))
                .limit(MOST_ALTERNATIVES)
                .map(trial -> trial.hypothesis.kind().words() + ": " + trial.hypothesis.description())
                .toList();
        AuditCase first = best.explained.get(0);
        return new LikelyCause(
                best.hypothesis.kind(),
                first.fluid().model().refrigerant().designation(),
                best.hypothesis.description(),
                best.explained.size(),
                best.candidates,
                best.explained.stream().map(row -> row.row().id()).sorted().toList(),
                best.chance,
                alternatives);
    }
}
