package org.satline.benchmarks;

import java.util.SplittableRandom;
import org.satline.saturation.SaturationCurve;

/** Random inputs with a fixed seed, and the nodes of the rivals; the same for every benchmark. */
final class Inputs {
    /** A power of two, so that an index wraps by a mask. */
    static final int COUNT = 4096;

    static final int NODES = 512;
    private static final double LOW_K = 220;
    private static final double HIGH_K = 330;

    private Inputs() {}

    static double[] temperatures() {
        return new SplittableRandom(1).doubles(COUNT, LOW_K, HIGH_K).toArray();
    }

    static double[] pressures(SaturationCurve curve) {
        double[] pressures = temperatures();
        for (int i = 0; i < COUNT; i++) {
            pressures[i] = curve.dewPressurePa(pressures[i]);
        }
        return pressures;
    }

    static double[] nodeTemperatures() {
        double[] nodes = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            nodes[i] = LOW_K - 1 + (HIGH_K - LOW_K + 2) * i / (NODES - 1);
        }
        return nodes;
    }

    static double[] nodePressures(SaturationCurve curve) {
        double[] nodes = nodeTemperatures();
        for (int i = 0; i < NODES; i++) {
            nodes[i] = curve.dewPressurePa(nodes[i]);
        }
        return nodes;
    }
}
