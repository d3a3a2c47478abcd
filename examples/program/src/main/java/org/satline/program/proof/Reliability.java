package org.satline.program.proof;

import org.satline.program.page.Printed;

/** Stated probabilities in classes, and how often they came true. Mutable, for one thread. */
final class Reliability {
    private static final double[] EDGES = {0, 0.05, 0.2, 0.4, 0.6, 0.8, 0.95, 1.0000001};

    private final int[] stated = new int[EDGES.length - 1];
    private final double[] sum = new double[EDGES.length - 1];
    private final int[] came = new int[EDGES.length - 1];

    void add(double probability, boolean cameTrue) {
        int bin = 0;
        while (probability >= EDGES[bin + 1]) {
            bin++;
        }
        stated[bin]++;
        sum[bin] += probability;
        came[bin] += cameTrue ? 1 : 0;
    }

    void print(StringBuilder text) {
        VerdictScore.line(text, "%-18s%10s%16s%16s", "stated", "cases", "mean stated", "came true");
        for (int i = 0; i < stated.length; i++) {
            VerdictScore.line(
                    text,
                    "%-18s%10d%14.1f %%%14.1f %%",
                    Printed.figure("%.0f to %.0f %%", 100 * EDGES[i], 100 * Math.min(1, EDGES[i + 1])),
                    stated[i],
                    100 * sum[i] / Math.max(1, stated[i]),
                    100.0 * came[i] / Math.max(1, stated[i]));
        }
    }
}
