package org.satline.tables;

import java.util.function.DoubleUnaryOperator;

/**
 * Interpolates a function at Chebyshev-Lobatto nodes, which include both ends: neighbouring pieces meet.
 *
 * <p>Trefethen, Approximation Theory and Approximation Practice (SIAM, 2013), chapters 2 to 4.
 */
final class PieceFit {
    private PieceFit() {}

    /**
     * Returns the coefficients, lowest power first, of a polynomial in t that meets f at the nodes of [from, to].
     *
     * @param f function of t
     * @param from lower end
     * @param to upper end
     * @param degree degree, 1 or more
     * @param length number of coefficients to return, the rest 0
     */
    static double[] fit(DoubleUnaryOperator f, double from, double to, int degree, int length) {
        double[] values = new double[degree + 1];
        for (int j = 0; j <= degree; j++) {
            values[j] = f.applyAsDouble(node(j, degree, from, to));
        }
        return toPowers(chebyshev(values), from, to, length);
    }

    /** Node j, from {@code to} down to {@code from}; both ends exactly. */
    private static double node(int j, int degree, double from, double to) {
        if (j == 0) {
            return to;
        }
        if (j == degree) {
            return from;
        }
        return between(Math.cos(Math.PI * j / degree), from, to);
    }

    /** The point between nodes j and j + 1 where the interpolation error is about largest. */
    static double midpoint(int j, int degree, double from, double to) {
        return between(Math.cos(Math.PI * (j + 0.5) / degree), from, to);
    }

    private static double between(double s, double from, double to) {
        return from + (to - from) * (1 + s) / 2;
    }

    private static double[] chebyshev(double[] values) {
        int n = values.length - 1;
        double[] c = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            double sum = 0;
            for (int j = 0; j <= n; j++) {
                double weight = j == 0 || j == n ? 0.5 : 1;
                sum += weight * values[j] * Math.cos(Math.PI * j * k / n);
            }
            c[k] = sum * 2 / n * (k == 0 || k == n ? 0.5 : 1);
        }
        return c;
    }

    /** Sums c_k T_k(s) with s = a + b t as powers of t. */
    private static double[] toPowers(double[] c, double from, double to, int length) {
        double b = 2 / (to - from);
        double a = -(to + from) / (to - from);
        double[] sum = new double[length];
        double[] before = new double[length];
        double[] now = new double[length];
        before[0] = 1;
        now[0] = a;
        if (length > 1) {
            now[1] = b;
        }
        for (int i = 0; i < length; i++) {
            sum[i] = c[0] * before[i] + c[1] * now[i];
        }
        for (int k = 2; k < c.length; k++) {
            double[] next = new double[length];
            for (int i = 0; i < length; i++) {
                next[i] = 2 * (a * now[i] + (i > 0 ? b * now[i - 1] : 0)) - before[i];
                sum[i] += c[k] * next[i];
            }
            before = now;
            now = next;
        }
        return sum;
    }
}
