package org.satline.equation;

import java.util.function.DoubleUnaryOperator;

/**
 * A derivative from values alone, with an estimate of its own error: Ridders' extrapolation of central differences to step 0 (Ridders 1982,
 * Adv. Eng. Software 4:75-76).
 */
record CentralDifference(double value, double error, double smallestStep) {
    private static final int STEPS = 8;
    private static final double SHRINK = 1.6;

    /**
     * Differentiates.
     *
     * @param f function
     * @param x where
     * @param step first step; the function must be smooth within it
     */
    static CentralDifference of(DoubleUnaryOperator f, double x, double step) {
        double[][] table = new double[STEPS][STEPS];
        double h = step;
        table[0][0] = slope(f, x, h);
        double best = table[0][0];
        double error = Double.POSITIVE_INFINITY;
        for (int i = 1; i < STEPS; i++) {
            h /= SHRINK;
            table[0][i] = slope(f, x, h);
            double factor = SHRINK * SHRINK;
            for (int j = 1; j <= i; j++) {
                table[j][i] = (table[j - 1][i] * factor - table[j - 1][i - 1]) / (factor - 1);
                factor *= SHRINK * SHRINK;
                double estimate =
                        Math.max(Math.abs(table[j][i] - table[j - 1][i]), Math.abs(table[j][i] - table[j - 1][i - 1]));
                if (estimate <= error) {
                    error = estimate;
                    best = table[j][i];
                }
            }
        }
        return new CentralDifference(best, error, h);
    }

    /**
     * Differentiates with first steps of three sizes. The one that estimates the smallest error counts, unless a narrower one contradicts
     * it: then the wide one has stepped over a sharp feature, such as the terms near a critical point.
     *
     * @param f function
     * @param x where
     * @param widest the widest of the three; the others are a fifth and a fiftieth of it
     */
    static CentralDifference ofThree(DoubleUnaryOperator f, double x, double widest) {
        CentralDifference best = of(f, x, widest);
        for (double step : new double[] {widest / 5, widest / 50}) {
            CentralDifference narrow = of(f, x, step);
            boolean contradict = Math.abs(best.value - narrow.value) > 10 * (best.error + narrow.error);
            best = contradict || narrow.error < best.error ? narrow : best;
        }
        return best;
    }

    private static double slope(DoubleUnaryOperator f, double x, double h) {
        return (f.applyAsDouble(x + h) - f.applyAsDouble(x - h)) / (2 * h);
    }
}
