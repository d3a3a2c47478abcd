package org.satline.saturation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.satline.equation.PairStatus;

/**
 * Random-effects model of the errors of bubble pressures, fitted to measured sets.
 *
 * <p>The error of point k of a set s of a pair is {@code e_k = w_k f + b_s + z_k}: w the weight of the composition, f
 * what the model misses of the pair, b the bias of the set, z its scatter. The scatter {@code s_z} is the set's own,
 * see {@link MeasuredSet}; its bias has the standard deviation {@code k s_z}, with one k for all sets by restricted
 * maximum likelihood from the pairs that several papers measured. Both are the measurement's, {@code m^2 = (1 + k^2)
 * s_z^2}, and no part of what is stated of the model.
 *
 * <p>Estimates of f by moments: of a set {@code f_s^2 = (sum e^2 - n m^2) / sum w^2}, not below 0; of a class the mean
 * over its sets; of a pair with sets of its own {@code f^2 = (f_class^2 + sum g_s f_s^2) / (1 + sum g_s)}: the class
 * counts as one set, a set with {@code g = (f_class^2 / (f_class^2 + n m^2 / sum w^2))^2}, little where its own errors
 * hide what the model misses. Classes of fitted pairs: both substances below their critical temperature, or one of them
 * a dissolved gas above it. Other figures rest on published blends, not on these sets: what a gas costs multiplies one
 * as small as that of the fitted class, since the fit misses in proportion, and adds as a square to a larger one, which
 * the guess of the interaction rules.
 */
public final class PairUncertaintyFit {
    private static final double COVERAGE = 2;
    private static final int RESAMPLES = 1000;
    private static final double MOST_BIAS = 10;

    private final List<MeasuredSet> sets;
    private final double biasPerScatter;
    private final double fitted;
    private final double fittedGas;

    private PairUncertaintyFit(List<MeasuredSet> sets) {
        this.sets = sets;
        biasPerScatter = mostLikelyBias(sets);
        fitted = classFigure(false);
        fittedGas = classFigure(true);
    }

    static PairUncertaintyFit toAllSets() {
        return new PairUncertaintyFit(held());
    }

    private static List<MeasuredSet> held() {
        return MeasuredSet.all().stream().filter(s -> !s.entered()).toList();
    }

    /** Bias of a set over its scatter, by restricted maximum likelihood. */
    private static double mostLikelyBias(List<MeasuredSet> sets) {
        List<List<MeasuredSet>> several = sets.stream()
                .filter(s -> !s.isSmall())
                .collect(Collectors.groupingBy(MeasuredSet::pairName, TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .filter(of -> of.size() > 1)
                .toList();
        return new BrentOptimizer(1e-6, 1e-6)
                .optimize(
                        new MaxEval(1000),
                        GoalType.MINIMIZE,
                        new SearchInterval(0, MOST_BIAS, 1),
                        new UnivariateObjectiveFunction(k -> several.stream()
                                .mapToDouble(of -> restrictedLikelihood(of, k))
                                .sum()))
                .getPoint();
    }

    /** Minus the logarithm, with what the sets of one pair share taken out. */
    private static double restrictedLikelihood(List<MeasuredSet> of, double bias) {
        double logs = 0;
        double precision = 0;
        double weighted = 0;
        double squares = 0;
        for (MeasuredSet s : of) {
            double ww = s.sumOf(p -> p.weight() * p.weight());
            double slope = s.sumOf(p -> p.weight() * p.error()) / ww;
            double lever = s.sumOf(MeasuredPoint::weight) / ww;
            double variance = s.scatter() * s.scatter() * (1 / ww + bias * bias * lever * lever);
            logs += Math.log(variance);
            precision += 1 / variance;
            weighted += slope / variance;
            squares += slope * slope / variance;
        }
        return (logs + Math.log(precision) + squares - weighted * weighted / precision) / 2;
    }

    /** What a set's bias is of its scatter, both standard. */
    public static double biasOverScatter() {
        return toAllSets().biasPerScatter;
    }

    private double measurement(MeasuredSet set) {
        return (1 + biasPerScatter * biasPerScatter) * set.scatter() * set.scatter();
    }

    /** Square of what the model misses in a set. */
    private double missed(MeasuredSet set) {
        double squares = set.sumOf(p -> p.error() * p.error()) - set.points().size() * measurement(set);
        return Math.max(0, squares) / set.sumOf(p -> p.weight() * p.weight());
    }

    private double classFigure(boolean gas) {
        return Math.sqrt(sets.stream()
                .filter(s -> s.points().get(0).status() == PairStatus.FITTED)
                .map(s -> s.part(gas))
                .filter(s -> !s.isEmpty())
                .mapToDouble(this::missed)
                .average()
                .orElseThrow());
    }

    double fitted(boolean gas) {
        return gas ? fittedGas : fitted;
    }

    /** The figure with a gas dissolved, from that without. */
    double withGas(double figure) {
        if (figure <= fitted) {
            return figure * fittedGas / fitted;
        }
        return Math.sqrt(figure * figure + fittedGas * fittedGas - fitted * fitted);
    }

    private double classFigure(PairStatus status, boolean gas) {
        double base = switch (status) {
            case FITTED -> fitted;
            // rest on published blends, see the table of figures
            case ADJUSTED -> 0.04;
            case ESTIMATED -> 0.075;
            case DEFAULTED -> 0.12;
        };
        return gas ? withGas(base) : base;
    }

    double figureOf(String pair, PairStatus status, boolean gas) {
        double ofClass = classFigure(status, gas);
        double square = ofClass * ofClass;
        double sum = square;
        double weights = 1;
        for (MeasuredSet set : sets) {
            MeasuredSet part = set.part(gas);
            if (set.pairName().equals(pair) && !part.isEmpty()) {
                double hidden = part.points().size() * measurement(set) / part.sumOf(p -> p.weight() * p.weight());
                double weight = Math.pow(square / (square + hidden), 2);
                sum += weight * missed(part);
                weights += weight;
            }
        }
        return Math.sqrt(sum / weights);
    }

    /** Rows of the table of figures, one for each pair with measured sets that entered no fit of this project. */
    List<String> rows() {
        Map<String, List<MeasuredSet>> byPair =
                sets.stream().collect(Collectors.groupingBy(MeasuredSet::pairName, TreeMap::new, Collectors.toList()));
        List<String> rows = new ArrayList<>();
        byPair.forEach((pair, own) -> {
            PairStatus status = own.get(0).points().get(0).status();
            if (status != PairStatus.ADJUSTED) {
                rows.add(String.format(
                        Locale.ROOT,
                        "%s,%s,,%.2f,%.2f,\"%d measured bubble pressures, scatter of the sets %s %%, together with"
                                + " the class\"",
                        pair.replace(" + ", ","),
                        status.word(),
                        100 * figureOf(pair, status, false),
                        100 * figureOf(pair, status, true),
                        own.stream().mapToInt(s -> s.points().size()).sum(),
                        own.stream()
                                .map(s -> String.format(Locale.ROOT, "%.2f", 100 * s.scatter()))
                                .sorted()
                                .collect(Collectors.joining("/"))));
            }
        });
        return rows;
    }

    /**
     * How many points lie within once and twice the figure from all other papers, one paper after the other held out
     * with all its sets. The measurement's part of the comparison is that of the set held out.
     */
    public static List<Coverage> crossValidation() {
        Map<String, List<Outcome>> byClass = new TreeMap<>();
        for (String source : held().stream().map(MeasuredSet::source).distinct().toList()) {
            PairUncertaintyFit others = new PairUncertaintyFit(
                    held().stream().filter(s -> !s.source().equals(source)).toList());
            held().stream()
                    .filter(s -> s.source().equals(source))
                    .forEach(s -> others.compare(s)
                            .forEach((name, outcomes) -> byClass.computeIfAbsent(name, k -> new ArrayList<>())
                                    .addAll(outcomes)));
        }
        List<Coverage> result = new ArrayList<>();
        byClass.forEach((name, outcomes) -> result.add(coverage(name, outcomes)));
        result.add(
                coverage("all", byClass.values().stream().flatMap(List::stream).toList()));
        return result;
    }

    private Map<String, List<Outcome>> compare(MeasuredSet set) {
        Map<String, List<Outcome>> byClass = new LinkedHashMap<>();
        for (MeasuredPoint p : set.points()) {
            double figure = figureOf(p.pairName(), p.status(), p.gasDissolved());
            double u = Math.hypot(figure * p.weight(), Math.sqrt(measurement(set)));
            byClass.computeIfAbsent(className(p), k -> new ArrayList<>())
                    .add(new Outcome(set.source(), Math.abs(p.error()) <= u, Math.abs(p.error()) <= COVERAGE * u));
        }
        return byClass;
    }

    private static String className(MeasuredPoint p) {
        return p.status() == PairStatus.FITTED
                ? p.gasDissolved() ? "fitted, a gas dissolved" : "fitted, both condensable"
                : p.status().word();
    }

    private record Outcome(String source, boolean once, boolean twice) {}

    /**
     * Shares covered in one class.
     *
     * @param name the class
     * @param points number of points held out
     * @param sources number of papers
     * @param once share within the standard uncertainty
     * @param twice share within twice that
     * @param low lower end of the 95 % interval of that share, papers drawn anew
     * @param high upper end
     */
    public record Coverage(String name, int points, int sources, double once, double twice, double low, double high) {}

    private static Coverage coverage(String name, List<Outcome> outcomes) {
        Map<String, List<Outcome>> bySource =
                outcomes.stream().collect(Collectors.groupingBy(Outcome::source, TreeMap::new, Collectors.toList()));
        List<List<Outcome>> sources = List.copyOf(bySource.values());
        Random random = new Random(1);
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < RESAMPLES; i++) {
            int n = 0;
            int covered = 0;
            for (int k = 0; k < sources.size(); k++) {
                List<Outcome> drawn = sources.get(random.nextInt(sources.size()));
                n += drawn.size();
                covered += (int) drawn.stream().filter(Outcome::twice).count();
            }
            shares.add((double) covered / n);
        }
        shares.sort(Comparator.naturalOrder());
        return new Coverage(
                name,
                outcomes.size(),
                sources.size(),
                outcomes.stream().filter(Outcome::once).count() / (double) outcomes.size(),
                outcomes.stream().filter(Outcome::twice).count() / (double) outcomes.size(),
                shares.get(RESAMPLES / 40),
                shares.get(RESAMPLES - 1 - RESAMPLES / 40));
    }
}
