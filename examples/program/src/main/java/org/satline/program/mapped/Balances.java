package org.satline.program.mapped;

import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/** Newton's method on four balances, with halved steps; the decomposition is the library's. */
record Balances(UnaryOperator<double[]> excess, Predicate<double[]> inside) {
    private static final int MOST_ROUNDS = 60;
    private static final double ACCURACY = 1e-7;
    private static final double[] TRIAL = {1e-4, 1e-4, 1e-6, 1e-6};
    private static final double[] MOST = {4, 4, 0.08, 0.08};

    /** Empty where nothing balances. */
    double[] from(double[] start) {
        double[] x = start.clone();
        if (!inside.test(x)) {
            return new double[0];
        }
        double[] f = excess.apply(x);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (size(f) < ACCURACY) {
                return x;
            }
            double[] step = step(x, f);
            double factor = 1;
            for (int i = 0; i < step.length; i++) {
                factor = Math.min(factor, MOST[i] / Math.max(1e-30, Math.abs(step[i])));
            }
            boolean better = false;
            for (double part = factor; part > factor / 300 && !better; part /= 2) {
                double[] next = x.clone();
                for (int i = 0; i < next.length; i++) {
                    next[i] += part * step[i];
                }
                if (inside.test(next)) {
                    double[] there = excess.apply(next);
                    if (size(there) < size(f)) {
                        x = next;
                        f = there;
                        better = true;
                    }
                }
            }
            if (!better) {
                return new double[0];
            }
        }
        return new double[0];
    }

    private double[] step(double[] x, double[] f) {
        int n = x.length;
        double[][] slopes = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] moved = x.clone();
            moved[j] += TRIAL[j];
            double[] there = excess.apply(moved);
            for (int i = 0; i < n; i++) {
                slopes[i][j] = (there[i] - f[i]) / TRIAL[j];
            }
        }
        try {
            return new QRDecomposition(new Array2DRowRealMatrix(slopes))
                    .getSolver()
                    .solve(new ArrayRealVector(f).mapMultiply(-1))
                    .toArray();
        } catch (SingularMatrixException e) {
            return new double[n];
        }
    }

    private static double size(double[] f) {
        double sum = 0;
        for (double each : f) {
            sum += each * each;
        }
        return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : Math.sqrt(sum);
    }
}
