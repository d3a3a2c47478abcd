package org.satline.equation;

/**
 * The quadratic form {@code Y(x) = sum x_i^2 Y_i + sum_{i<j} c_ij x_i x_j (x_i + x_j) / (beta_ij^2 x_i + x_j)} with its first and second
 * derivatives, all x independent (Kunz and Wagner 2012). It serves reducing temperature and reducing volume alike.
 */
final class ReducingFunction {
    private final int size;
    private final double[] diagonal;
    private final double[] factor;
    private final double[] betaSquared;

    /**
     * Creates the form.
     *
     * @param diagonal Y_i
     * @param factor c_ij in row-major order, read for i below j
     * @param beta beta_ij, likewise
     */
    ReducingFunction(double[] diagonal, double[] factor, double[] beta) {
        this.size = diagonal.length;
        this.diagonal = diagonal;
        this.factor = factor;
        this.betaSquared = beta.clone();
        for (int i = 0; i < betaSquared.length; i++) {
            betaSquared[i] *= betaSquared[i];
        }
    }

    double value(double[] x) {
        double y = 0;
        for (int i = 0; i < size; i++) {
            y += x[i] * x[i] * diagonal[i];
            for (int j = i + 1; j < size; j++) {
                if (x[i] > 0 && x[j] > 0) {
                    int ij = i * size + j;
                    y += factor[ij] * x[i] * x[j] * (x[i] + x[j]) / (betaSquared[ij] * x[i] + x[j]);
                }
            }
        }
        return y;
    }

    /** Fills gradient and (row-major, symmetric) second derivatives, and returns the value. */
    double evaluate(double[] x, double[] gradient, double[] hessian) {
        double y = 0;
        for (int i = 0; i < size; i++) {
            gradient[i] = 2 * x[i] * diagonal[i];
            hessian[i * size + i] = 2 * diagonal[i];
            y += x[i] * x[i] * diagonal[i];
        }
        for (int i = 0; i < size; i++) {
            for (int j = i + 1; j < size; j++) {
                y += pair(i, j, x[i], x[j], gradient, hessian);
            }
        }
        return y;
    }

    private double pair(int i, int j, double xi, double xj, double[] gradient, double[] hessian) {
        int ij = i * size + j;
        double b = betaSquared[ij];
        double c = factor[ij];
        double d = b * xi + xj;
        double u = (xi + xj) / d;
        double ui = (1 - b * u) / d;
        double uj = (1 - u) / d;
        double uii = -2 * b * ui / d;
        double ujj = -2 * uj / d;
        double uij = -(b * uj + ui) / d;
        gradient[i] += c * xj * (u + xi * ui);
        gradient[j] += c * xi * (u + xj * uj);
        hessian[i * size + i] += c * xj * (2 * ui + xi * uii);
        hessian[j * size + j] += c * xi * (2 * uj + xj * ujj);
        double mixed = c * (u + xi * ui + xj * uj + xi * xj * uij);
        hessian[ij] = mixed;
        hessian[j * size + i] = mixed;
        return c * xi * xj * u;
    }
}
