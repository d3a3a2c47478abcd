package org.satline.benchmarks;

import java.util.SplittableRandom;
import org.satline.saturation.SaturationCurve;

/** Random inputs with a fixed seed, and the nodes of the rivals; the same for every benchmark. */
final class Inputs {
    /** A power of two, so that an index wraps by a mask. */
    static final int COUNT = 4096;

    private static final double LOW_K = 220;
    private static final double HIGH_K = 330;
    /** Inputs stay below this part of the warmest temperature, so that every rival has data. */
    private static final double WARMEST = 0.96;

    private Inputs() {}

    private static double high(SaturationCurve curve) {
        return Math.min(HIGH_K, WARMEST * curve.maxTemperatureK());
    }

    static double[] temperatures(SaturationCurve curve) {
        return new SplittableRandom(1).doubles(COUNT, LOW_K, high(curve)).toArray();
    }

    static double[] pressures(SaturationCurve curve) {
        return dewPressures(curve, temperatures(curve));
    }

    static double[] nodeTemperatures(SaturationCurve curve, int count) {
        double[] nodes = new double[count];
        for (int i = 0; i < count; i++) {
            nodes[i] = LOW_K - 1 + (high(curve) - LOW_K + 2) * i / (count - 1);
        }
        return nodes;
    }

    static double[] dewPressures(SaturationCurve curve, double[] temperatures) {
        double[] pressures = new double[temperatures.length];
        for (int i = 0; i < pressures.length; i++) {
            pressures[i] = curve.dewPressurePa(temperatures[i]);
        }
        return pressures;
    }
}
