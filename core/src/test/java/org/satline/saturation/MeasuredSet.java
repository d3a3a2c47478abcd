package org.satline.saturation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The measured points of one pair in one paper, with what they scatter by.
 *
 * <p>Scatter: standard deviation of the errors about the smooth surface {@code w (a_0 + a_1 x + a_2 T + a_3 x^2 + a_4 x
 * T + a_5 x^3 + a_6 T^2)} fitted to the set itself, one coefficient for three points at most. What the model misses
 * varies smoothly with composition and temperature and vanishes with the weight w of the mixture; what jumps from point
 * to point or from isotherm to isotherm is the measurement's. Small sets lean on the middle scatter of all sets, as if
 * {@link #LEANING} more degrees of freedom showed that.
 *
 * @param name paper and pair
 * @param points its points
 * @param scatter standard, relative to the pressure
 */
public record MeasuredSet(String name, List<MeasuredPoint> points, double scatter) {
    /** Every set, those that entered a fit of this project too. */
    private static final List<MeasuredSet> ALL = read();

    private static final int LEANING = 3;
    private static final int POINTS_A_COEFFICIENT = 3;
    private static final int SMALL = 5;

    /** All sets, in the order of their names. */
    public static List<MeasuredSet> all() {
        return ALL;
    }

    String pairName() {
        return points.get(0).pairName();
    }

    /** The paper. */
    public String source() {
        return points.get(0).source();
    }

    /** Whether its points entered a fit of this project. */
    public boolean entered() {
        return points.get(0).entered();
    }

    /** The part of the set in which a gas is dissolved, or that in which none is; the scatter stays that of the set. */
    MeasuredSet part(boolean gas) {
        return new MeasuredSet(
                name, points.stream().filter(p -> p.gasDissolved() == gas).toList(), scatter);
    }

    boolean isEmpty() {
        return points.isEmpty();
    }

    boolean isSmall() {
        return points.size() < SMALL;
    }

    double sumOf(ToDoubleFunction<MeasuredPoint> term) {
        return points.stream().mapToDouble(term).sum();
    }

    private static List<MeasuredSet> read() {
        TreeMap<String, List<MeasuredPoint>> byName = MeasuredPoint.all().stream()
                .collect(Collectors.groupingBy(MeasuredPoint::set, TreeMap::new, Collectors.toList()));
        double middle = new Median()
                .evaluate(byName.values().stream()
                        .map(Residual::of)
                        .filter(r -> r.freedom >= SMALL)
                        .mapToDouble(r -> Math.sqrt(r.squares / r.freedom))
                        .toArray());
        List<MeasuredSet> sets = new ArrayList<>();
        byName.forEach((name, points) -> {
            Residual own = Residual.of(points);
            double variance = (own.squares + LEANING * middle * middle) / (own.freedom + LEANING);
            sets.add(new MeasuredSet(name, List.copyOf(points), Math.sqrt(variance)));
        });
        return List.copyOf(sets);
    }

    /** Sum of squares about the surface and the degrees of freedom that are left. */
    private record Residual(double squares, int freedom) {
        static Residual of(List<MeasuredPoint> points) {
            int columns = Math.min(7, points.size() / POINTS_A_COEFFICIENT);
            if (columns == 0) {
                return new Residual(0, 0);
            }
            RealMatrix surface = new Array2DRowRealMatrix(points.size(), columns);
            RealVector errors = new ArrayRealVector(points.size());
            double middle = points.stream()
                    .mapToDouble(MeasuredPoint::temperatureK)
                    .average()
                    .orElseThrow();
            for (int i = 0; i < points.size(); i++) {
                MeasuredPoint p = points.get(i);
                double x = 2 * p.moleFraction() - 1;
                double t = (p.temperatureK() - middle) / 30; // of the order of 1, for the condition of the matrix
                double[] terms = {1, x, t, x * x, x * t, x * x * x, t * t};
                for (int k = 0; k < columns; k++) {
                    surface.setEntry(i, k, p.weight() * terms[k]);
                }
                errors.setEntry(i, p.error());
            }
            SingularValueDecomposition fit = new SingularValueDecomposition(surface);
            RealVector left = errors.subtract(surface.operate(fit.getSolver().solve(errors)));
            return new Residual(left.dotProduct(left), points.size() - fit.getRank());
        }
    }
}
