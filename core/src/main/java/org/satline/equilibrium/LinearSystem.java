package org.satline.equilibrium;

/**
 * Gaussian elimination with partial pivoting in place, for the handful of unknowns of a phase boundary.
 *
 * <p>A linear-algebra library would copy the matrix into its own types at every Newton step, which costs more than the elimination itself.
 */
final class LinearSystem {
    private LinearSystem() {}

    /** Solves {@code a y = b}; destroys a, puts y into b; false if singular. */
    static boolean solve(double[][] a, double[] b) {
        int n = b.length;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
                    pivot = i;
                }
            }
            double p = a[pivot][k];
            if (!(Math.abs(p) > 0)) {
                return false;
            }
            double[] row = a[pivot];
            a[pivot] = a[k];
            a[k] = row;
            double held = b[pivot];
            b[pivot] = b[k];
            b[k] = held;
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / p;
                if (factor != 0) {
                    for (int j = k + 1; j < n; j++) {
                        a[i][j] -= factor * row[j];
                    }
                    b[i] -= factor * b[k];
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j = k + 1; j < n; j++) {
                sum -= a[k][j] * b[j];
            }
            b[k] = sum / a[k][k];
        }
        return true;
    }
}
