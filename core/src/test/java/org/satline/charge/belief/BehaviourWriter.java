package org.satline.charge.belief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.ml.clustering.CentroidCluster;
import org.apache.commons.math3.ml.clustering.DoublePoint;
import org.apache.commons.math3.ml.clustering.KMeansPlusPlusClusterer;
import org.apache.commons.math3.random.Well19937c;
import org.satline.charge.belief.DrawnSystems.Drawn;
import org.satline.charge.margin.MeteringDevice;

/**
 * Writes the behaviour table from drawn systems: at each hypothesis a linear regression of the clues on their
 * surroundings, each system weighed by its distance in
 * charge error and severity, and the scatter about it. A hypothesis with few systems near it borrows scatter from its
 * fault.
 */
final class BehaviourWriter {
    private static final double STEP = 0.05;
    private static final int STEPS = 10;
    private static final double CHARGE_WIDTH = 0.035;
    private static final double SEVERITY_WIDTH = 0.2;
    private static final double[] SEVERITIES = {0.4, 0.75};
    /** As many systems' worth of the common scatter are mixed in. */
    private static final double BORROWED = 10;
    /** As many systems' worth of no slope at all, with the usual variance of each surrounding. */
    private static final double RIDGE = 4;

    private static final double[] USUAL_VARIANCE = {4, 30, 4, 3};
    private static final int REFRIGERANT_CLUSTERS = 8;

    @SuppressWarnings("ArrayRecordComponent") // sums of a regression, never compared
    private record Fit(double[] mean, double[][] slopes, double[][] scatter, double count, double error) {}

    private final List<Drawn> drawn;

    BehaviourWriter(List<Drawn> drawn) {
        this.drawn = drawn;
    }

    List<String> rows() {
        List<String> rows = new ArrayList<>();
        for (MeteringDevice metering : MeteringDevice.values()) {
            rows.addAll(rows(metering, Optional.empty()));
            for (Fault fault : DrawnSystems.FAULTS) {
                rows.addAll(rows(metering, Optional.of(fault)));
            }
            rows.addAll(refrigerants(metering));
        }
        return rows;
    }

    private List<String> rows(MeteringDevice metering, Optional<Fault> fault) {
        List<Drawn> those = those(metering, fault);
        double[] severities = fault.isPresent() ? SEVERITIES : new double[] {0};
        List<Fit> fits = new ArrayList<>();
        for (double severity : severities) {
            for (int i = -STEPS; i <= STEPS; i++) {
                fits.add(fit(those, STEP * i, severity));
            }
        }
        double[][] common = new double[Behaviour.CLUES][Behaviour.CLUES];
        for (Fit fit : fits) {
            add(common, fit.scatter, 1.0 / fits.size());
        }
        String name = fault.map(Fault::label).orElse("none");
        return fits.stream()
                .map(fit -> {
                    double borrowed = BORROWED / (BORROWED + fit.count);
                    double[][] scatter = new double[Behaviour.CLUES][Behaviour.CLUES];
                    add(scatter, fit.scatter, 1 - borrowed);
                    add(scatter, common, borrowed);
                    return row(metering, name, fit.error, 1.0 / severities.length, fit.mean, fit.slopes, scatter);
                })
                .toList();
    }

    private List<Drawn> those(MeteringDevice metering, Optional<Fault> fault) {
        return drawn.stream()
                .filter(each -> each.metering() == metering && each.fault().equals(fault))
                .toList();
    }

    private static Fit fit(List<Drawn> those, double error, double severity) {
        double[] weights = those.stream()
                .mapToDouble(each -> bell((each.chargeError() - error) / CHARGE_WIDTH)
                        * (severity > 0 ? bell((each.severity() - severity) / SEVERITY_WIDTH) : 1))
                .toArray();
        return fit(those, weights, error);
    }

    private static Fit fit(List<Drawn> those, double[] weights, double error) {
        double sum = DoubleStream.of(weights).sum();
        double count = sum * sum / DoubleStream.of(weights).map(w -> w * w).sum();
        double[] mean = new double[Behaviour.CLUES];
        double[] centre = new double[Behaviour.AROUND];
        for (int n = 0; n < weights.length; n++) {
            addScaled(mean, those.get(n).clues(), weights[n] / sum);
            addScaled(centre, those.get(n).around(), weights[n] / sum);
        }
        double[][] normal = new double[Behaviour.AROUND][Behaviour.AROUND];
        double[][] mixed = new double[Behaviour.AROUND][Behaviour.CLUES];
        for (int n = 0; n < weights.length; n++) {
            double[] z = minus(those.get(n).around(), centre);
            double[] y = minus(those.get(n).clues(), mean);
            for (int i = 0; i < z.length; i++) {
                addScaled(normal[i], z, weights[n] / sum * z[i]);
                addScaled(mixed[i], y, weights[n] / sum * z[i]);
            }
        }
        for (int i = 0; i < Behaviour.AROUND; i++) {
            normal[i][i] += USUAL_VARIANCE[i] * RIDGE / count;
        }
        RealMatrix slopes = new LUDecomposition(new Array2DRowRealMatrix(normal))
                .getSolver()
                .solve(new Array2DRowRealMatrix(mixed))
                .transpose();
        double[][] scatter = new double[Behaviour.CLUES][Behaviour.CLUES];
        for (int n = 0; n < weights.length; n++) {
            double[] off = minus(
                    minus(those.get(n).clues(), mean),
                    slopes.operate(minus(those.get(n).around(), centre)));
            for (int i = 0; i < off.length; i++) {
                addScaled(scatter[i], off, weights[n] / sum * off[i]);
            }
        }
        return new Fit(minus(mean, slopes.operate(centre)), slopes.getData(), scatter, count, error);
    }

    /** Which refrigerant it is instead makes clusters of their own. */
    private List<String> refrigerants(MeteringDevice metering) {
        List<Drawn> those = those(metering, Optional.of(Fault.ANOTHER_REFRIGERANT));
        List<Point> points = those.stream().map(Point::new).toList();
        List<CentroidCluster<Point>> clusters = new KMeansPlusPlusClusterer<Point>(
                        REFRIGERANT_CLUSTERS,
                        100,
                        (a, b) ->
                                Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), Math.hypot(a[2] - b[2], a[3] - b[3])),
                        new Well19937c(1))
                .cluster(points);
        return clusters.stream()
                .filter(cluster -> cluster.getPoints().size() > 2 * Behaviour.CLUES)
                .map(cluster -> {
                    List<Drawn> near =
                            cluster.getPoints().stream().map(each -> each.drawn).toList();
                    double[] weights =
                            DoubleStream.generate(() -> 1).limit(near.size()).toArray();
                    Fit fit = fit(near, weights, 0);
                    return row(
                            metering,
                            Fault.ANOTHER_REFRIGERANT.label(),
                            0,
                            (double) near.size() / those.size(),
                            fit.mean,
                            fit.slopes,
                            fit.scatter);
                })
                .toList();
    }

    private static final class Point extends DoublePoint {
        private static final long serialVersionUID = 1;

        private final transient Drawn drawn;

        Point(Drawn drawn) {
            super(drawn.clues());
            this.drawn = drawn;
        }
    }

    private static String row(
            MeteringDevice metering,
            String fault,
            double error,
            double share,
            double[] mean,
            double[][] slopes,
            double[][] scatter) {
        DoubleStream lower = java.util.stream.IntStream.range(0, scatter.length)
                .boxed()
                .flatMapToDouble(i -> java.util.Arrays.stream(scatter[i], 0, i + 1));
        return String.join(
                ",",
                metering.label(),
                fault,
                String.format(Locale.ROOT, "%.2f", error),
                String.format(Locale.ROOT, "%.4f", share),
                cell(DoubleStream.of(mean), "%.2f"),
                cell(java.util.Arrays.stream(slopes).flatMapToDouble(DoubleStream::of), "%.3f"),
                cell(lower, "%.3f"));
    }

    private static String cell(DoubleStream numbers, String format) {
        return numbers.mapToObj(each -> String.format(Locale.ROOT, format, each))
                .map(each -> each.replaceFirst("^-(0\\.0+)$", "$1"))
                .collect(Collectors.joining(" "));
    }

    private static double bell(double x) {
        return Math.exp(-x * x / 2);
    }

    private static double[] minus(double[] a, double[] b) {
        double[] c = a.clone();
        for (int i = 0; i < c.length; i++) {
            c[i] -= b[i];
        }
        return c;
    }

    private static void addScaled(double[] to, double[] what, double factor) {
        for (int i = 0; i < to.length; i++) {
            to[i] += factor * what[i];
        }
    }

    private static void add(double[][] to, double[][] what, double factor) {
        for (int i = 0; i < to.length; i++) {
            addScaled(to[i], what[i], factor);
        }
    }
}
