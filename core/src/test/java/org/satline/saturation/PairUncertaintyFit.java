package org.satline.saturation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.satline.equation.PairStatus;

/**
 * The model of what the interaction of a pair contributes to the uncertainty of a bubble pressure, fitted to measured sets.
 *
 * <p>{@code u = w f} with the weight w of the composition and a figure f: that of the class for a pair without a set of its own, else
 * {@code f^2 = (f_class^2 + m f_own^2) / (1 + m)} with m sets of its own: the class counts as one set. A figure is half of what 95 % of the
 * points of its sets stay within, scatter of the measurement (0.3 %, that of the best sets) taken off. Classes of fitted pairs: both
 * substances below their critical temperature, or one of them a dissolved gas above it. What a gas costs there is taken over as a ratio for
 * pairs that are not fitted; their own figures rest on published blends, not on these sets.
 */
public final class PairUncertaintyFit {
    /** Scatter of a good measured set, standard, relative to the pressure; kept apart from the figures. */
    public static final double SCATTER = 0.003;

    private static final double SHARE = 0.95;
    private static final double COVERAGE = 2;
    private static final double LEAST_WEIGHT = 0.1;
    private static final int RESAMPLES = 1000;

    private final List<MeasuredPoint> points;
    private final double fitted;
    private final double fittedGas;

    private PairUncertaintyFit(List<MeasuredPoint> points) {
        this.points = points;
        List<MeasuredPoint> fits =
                points.stream().filter(p -> p.status() == PairStatus.FITTED).toList();
        fitted = figure(fits.stream().filter(p -> !p.gasDissolved()).toList());
        fittedGas = figure(fits.stream().filter(MeasuredPoint::gasDissolved).toList());
    }

    static PairUncertaintyFit toAllSets() {
        return new PairUncertaintyFit(held());
    }

    private static List<MeasuredPoint> held() {
        return MeasuredPoint.all().stream().filter(p -> !p.entered()).toList();
    }

    private static double figure(List<MeasuredPoint> of) {
        double[] needed = of.stream()
                .mapToDouble(p -> Math.sqrt(Math.max(0, Math.pow(p.error() / COVERAGE, 2) - SCATTER * SCATTER))
                        / Math.max(LEAST_WEIGHT, p.weight()))
                .sorted()
                .toArray();
        return needed[(int) Math.ceil(SHARE * needed.length) - 1];
    }

    /** How much larger the figure is where a gas is dissolved. */
    double gasRatio() {
        return fittedGas / fitted;
    }

    double classFigure(boolean gas) {
        return gas ? fittedGas : fitted;
    }

    private double classFigure(PairStatus status, boolean gas) {
        double base = switch (status) {
            case FITTED -> fitted;
            // rest on published blends, see the table of figures
            case ADJUSTED -> 0.04;
            case ESTIMATED -> 0.075;
            case DEFAULTED -> 0.12;
        };
        return gas ? base * gasRatio() : base;
    }

    double figureOf(String pair, PairStatus status, boolean gas) {
        List<MeasuredPoint> own = points.stream()
                .filter(p -> p.pairName().equals(pair) && p.gasDissolved() == gas)
                .toList();
        double ofClass = classFigure(status, gas);
        if (own.isEmpty()) {
            return ofClass;
        }
        long sets = own.stream().map(MeasuredPoint::set).distinct().count();
        double ofOwn = figure(own);
        return Math.sqrt((ofClass * ofClass + sets * ofOwn * ofOwn) / (1 + sets));
    }

    /** Rows of the table of figures, one for each pair with measured sets that entered no fit of this project. */
    List<String> rows() {
        Map<String, List<MeasuredPoint>> byPair = points.stream()
                .collect(Collectors.groupingBy(MeasuredPoint::pairName, TreeMap::new, Collectors.toList()));
        List<String> rows = new ArrayList<>();
        byPair.forEach((pair, own) -> {
            PairStatus status = own.get(0).status();
            if (status != PairStatus.ADJUSTED) {
                long sets = own.stream().map(MeasuredPoint::set).distinct().count();
                rows.add(String.format(
                        Locale.ROOT,
                        "%s,%s,,%.2f,%.2f,%d measured bubble pressures of %d sets together with the class",
                        pair.replace(" + ", ","),
                        status.word(),
                        100 * figureOf(pair, status, false),
                        100 * figureOf(pair, status, true),
                        own.size(),
                        sets));
            }
        });
        return rows;
    }

    /** How many points of sets held out, one after the other, lie within once and twice the figure from all other sets. */
    public static List<Coverage> crossValidation() {
        List<MeasuredPoint> all = held();
        Map<String, List<Outcome>> byClass = new TreeMap<>();
        for (String set : all.stream().map(MeasuredPoint::set).distinct().toList()) {
            PairUncertaintyFit others = new PairUncertaintyFit(
                    all.stream().filter(p -> !p.set().equals(set)).toList());
            Map<Boolean, Double> figures = new TreeMap<>();
            for (MeasuredPoint p : all) {
                if (p.set().equals(set)) {
                    double figure = figures.computeIfAbsent(
                            p.gasDissolved(), gas -> others.figureOf(p.pairName(), p.status(), gas));
                    double u = Math.hypot(figure * p.weight(), SCATTER);
                    byClass.computeIfAbsent(className(p), k -> new ArrayList<>())
                            .add(new Outcome(set, Math.abs(p.error()) <= u, Math.abs(p.error()) <= COVERAGE * u));
                }
            }
        }
        List<Coverage> result = new ArrayList<>();
        byClass.forEach((name, outcomes) -> result.add(coverage(name, outcomes)));
        result.add(
                coverage("all", byClass.values().stream().flatMap(List::stream).toList()));
        return result;
    }

    private static String className(MeasuredPoint p) {
        return p.status() == PairStatus.FITTED
                ? p.gasDissolved() ? "fitted, a gas dissolved" : "fitted, both condensable"
                : p.status().word();
    }

    private record Outcome(String set, boolean once, boolean twice) {}

    /**
     * Shares covered in one class.
     *
     * @param name the class
     * @param points number of points held out
     * @param sets number of sets
     * @param once share within the standard uncertainty
     * @param twice share within twice that
     * @param low lower end of the 95 % interval of that share, sets drawn anew
     * @param high upper end
     */
    public record Coverage(String name, int points, int sets, double once, double twice, double low, double high) {}

    private static Coverage coverage(String name, List<Outcome> outcomes) {
        Map<String, List<Outcome>> bySet =
                outcomes.stream().collect(Collectors.groupingBy(Outcome::set, TreeMap::new, Collectors.toList()));
        List<List<Outcome>> sets = List.copyOf(bySet.values());
        Random random = new Random(1);
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < RESAMPLES; i++) {
            int n = 0;
            int covered = 0;
            for (int k = 0; k < sets.size(); k++) {
                List<Outcome> drawn = sets.get(random.nextInt(sets.size()));
                n += drawn.size();
                covered += (int) drawn.stream().filter(Outcome::twice).count();
            }
            shares.add((double) covered / n);
        }
        shares.sort(Comparator.naturalOrder());
        return new Coverage(
                name,
                outcomes.size(),
                sets.size(),
                outcomes.stream().filter(Outcome::once).count() / (double) outcomes.size(),
                outcomes.stream().filter(Outcome::twice).count() / (double) outcomes.size(),
                shares.get(RESAMPLES / 40),
                shares.get(RESAMPLES - 1 - RESAMPLES / 40));
    }
}
