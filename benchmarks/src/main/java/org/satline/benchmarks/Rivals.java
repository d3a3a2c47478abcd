package org.satline.benchmarks;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** Other ways to interpolate the same nodes: splines of Commons Math, and lines after a search in a sorted array and in a tree. */
final class Rivals {
    private final double[] x;
    private final double[] y;
    private final TreeMap<Double, Double> tree = new TreeMap<>();
    private final PolynomialSplineFunction spline;
    private final PolynomialSplineFunction akima;

    Rivals(double[] x, double[] y) {
        this.x = x.clone();
        this.y = y.clone();
        spline = new SplineInterpolator().interpolate(x, y);
        akima = new AkimaSplineInterpolator().interpolate(x, y);
        for (int i = 0; i < x.length; i++) {
            tree.put(x[i], y[i]);
        }
    }

    double spline(double at) {
        return spline.value(at);
    }

    double akima(double at) {
        return akima.value(at);
    }

    double binarySearch(double at) {
        int found = Arrays.binarySearch(x, at);
        int i = Math.min(x.length - 2, found >= 0 ? found : -found - 2);
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }

    double tree(double at) {
        Map.Entry<Double, Double> below = tree.floorEntry(at);
        Map.Entry<Double, Double> above = tree.higherEntry(at);
        if (below == null || above == null) {
            throw new IllegalArgumentException(
                    at + " is outside the tree; give a value between its first and last key");
        }
        double fraction = (at - below.getKey()) / (above.getKey() - below.getKey());
        return below.getValue() + (above.getValue() - below.getValue()) * fraction;
    }
}
