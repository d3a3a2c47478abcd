package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.List;

/** Ticks of a logarithmic axis: the shorter the axis, the more of them. */
final class LogTicks {
    private static final int[] FEW = {1, 2, 5};
    private static final int[] SOME = {1, 2, 3, 5, 7};

    private LogTicks() {}

    static List<Double> between(double low, double high) {
        double decades = Math.log10(high / low);
        List<Double> ticks = new ArrayList<>();
        int[] steps = decades > 1.3 ? FEW : SOME;
        for (int exponent = (int) Math.floor(Math.log10(low)); exponent <= Math.log10(high); exponent++) {
            for (int step : steps) {
                // By division where the exponent is below zero, so that 0.2 is the 0.2 that people write.
                double tick = exponent < 0 ? step / Math.pow(10, -exponent) : step * Math.pow(10, exponent);
                if (tick >= low && tick <= high) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }
}
