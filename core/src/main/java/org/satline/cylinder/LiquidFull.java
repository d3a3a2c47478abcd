package org.satline.cylinder;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.saturation.SaturationCurve;

/** Finds the temperature at which liquid of a given overall density fills a closed vessel. */
final class LiquidFull {
    /** Absolute accuracy of the temperature, K: far below what any rule or thermometer tells apart. */
    private static final double ACCURACY_K = 1e-6;

    private LiquidFull() {}

    /**
     * The temperature where the bubble-point liquid has the density {@code overall}, kg/m3, which must lie between the densities at the
     * two ends of the line.
     */
    static double temperatureK(SaturationCurve curve, double overall) {
        double low = curve.bubbleTemperatureRange().low();
        double high = curve.bubbleTemperatureRange().high();
        return new BrentSolver(ACCURACY_K).solve(200, t -> curve.bubbleLiquidDensity(t) - overall, low, high);
    }
}
