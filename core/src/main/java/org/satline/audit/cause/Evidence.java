package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What rows say together of a mistake. Answers to one question follow one curve, so a wrong curve that has the right level and slope, and
 * where that shows the right bend, fits all of them: those few amounts are all that can agree by chance. How well each agrees is known
 * better the more rows there are: its standard uncertainty falls with their square root.
 */
final class Evidence {
    /** Level and slope. */
    private static final int ALWAYS = 2;

    private static final int MOST = 4;

    /**
     * Mistakes count as tries that lead between a quarter and four times as far as the answers lie, either way: the chance that one of them
     * has the right level within a small part of it is that part over 2 ln 4, were each size as likely as its double.
     */
    private static final double LEVELS = 2 * Math.log(Trial.FARTHEST);

    /** A bend counts where it is this many standard uncertainties large (choice of this library, no source). */
    private static final double SHOWS = 5;

    /** A row in evidence: where it lies on the curve, what it is off from ours and from the mistake, and half of its last digit. */
    record Point(String curve, double at, double difference, double misfit, double rounding) {}

    private Evidence() {}

    /**
     * The chance that a wrong mistake agrees so well in level, slope and bends of every curve.
     *
     * @param points the rows
     * @param fitted how many amounts were taken from the rows themselves
     * @return at most 1
     */
    static double chance(List<Point> points, int fitted) {
        Map<String, List<Point>> curves = new TreeMap<>();
        Set<Point> seen = new HashSet<>();
        for (Point point : points) {
            if (seen.add(point)) { // the same question asked again is no further evidence
                curves.computeIfAbsent(point.curve, key -> new ArrayList<>()).add(point);
            }
        }
        List<Double> chances = new ArrayList<>();
        curves.values().forEach(curve -> chances.addAll(ofCurve(curve)));
        return together(chances.subList(Math.min(fitted, chances.size()), chances.size()));
    }

    /** The chance that so many independent chances come to no more than their product. */
    private static double together(List<Double> chances) {
        double product = chances.stream().reduce(1.0, (a, b) -> a * b);
        double log = -Math.log(Math.max(Double.MIN_NORMAL, product));
        double term = 1;
        double sum = 0;
        for (int i = 0; i < chances.size(); i++) {
            sum += term;
            term *= log / (i + 1);
        }
        return chances.isEmpty() ? 1 : Math.min(1, product * sum);
    }

    private static List<Double> ofCurve(List<Point> points) {
        int n = points.size();
        int orders =
                (int) Math.min(MOST, points.stream().map(Point::at).distinct().count());
        double roundings = 0;
        double differences = 0;
        for (Point point : points) {
            roundings += point.rounding * point.rounding;
            differences += point.difference * point.difference;
        }
        // of a rounded number the standard deviation is the half digit over the root of three
        double standard = Math.sqrt(roundings / (3 * n));
        List<Double> chances = new ArrayList<>();
        for (double[] shape : shapes(points, orders)) {
            double difference = 0;
            double misfit = 0;
            for (int i = 0; i < n; i++) {
                difference += shape[i] * points.get(i).difference;
                misfit += shape[i] * points.get(i).misfit;
            }
            boolean bend = chances.size() >= ALWAYS;
            if (bend && Math.abs(difference) < SHOWS * standard) {
                continue;
            }
            double scale = bend ? Math.abs(difference) : Math.sqrt(differences) * (chances.isEmpty() ? LEVELS : 1);
            chances.add(Math.min(1, Math.max(Math.abs(misfit), standard) / scale));
        }
        return chances;
    }

    /** Sum of the squares that a quadratic leaves of the differences. */
    static double leftOfQuadratic(List<Point> points) {
        double[] left = points.stream().mapToDouble(Point::difference).toArray();
        for (double[] shape : shapes(points, 3)) {
            double along = dot(shape, left);
            for (int i = 0; i < left.length; i++) {
                left[i] -= along * shape[i];
            }
        }
        return dot(left, left);
    }

    /** Orthonormal polynomials over the places of the points, of order 0 up. */
    private static List<double[]> shapes(List<Point> points, int orders) {
        double low = points.stream().mapToDouble(Point::at).min().orElseThrow();
        double high = points.stream().mapToDouble(Point::at).max().orElseThrow();
        List<double[]> shapes = new ArrayList<>();
        for (int order = 0; order < orders; order++) {
            double[] shape = new double[points.size()];
            for (int i = 0; i < shape.length; i++) {
                double x = high > low ? 2 * (points.get(i).at - low) / (high - low) - 1 : 0;
                shape[i] = Math.pow(x, order);
            }
            for (double[] before : shapes) {
                double along = dot(shape, before);
                for (int i = 0; i < shape.length; i++) {
                    shape[i] -= along * before[i];
                }
            }
            double length = Math.sqrt(dot(shape, shape));
            if (!(length > 1e-9)) {
                break; // too few places apart for another order
            }
            for (int i = 0; i < shape.length; i++) {
                shape[i] /= length;
            }
            shapes.add(shape);
        }
        return shapes;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
