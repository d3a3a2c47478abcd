package org.satline.program.mapped;

import org.satline.saturation.SaturationNumbers;

/** Refrigerant along a tube in which its vapour fraction changes evenly, with a constant slip between the phases. */
final class Streams {
    private Streams() {}

    /** Mean density between two vapour fractions, kg/m3, by the rule of Simpson on five points. */
    static double density(SaturationNumbers fluid, double kelvins, double x1, double x2, double slip) {
        double liquid = fluid.bubbleLiquidDensity(kelvins);
        double vapour = fluid.dewVapourDensity(kelvins);
        double[] weights = {7, 32, 12, 32, 7};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double x = Math.min(1, Math.max(0, x1 + (x2 - x1) * i / 4));
            double empty = x / (x + slip * (1 - x) * vapour / liquid);
            sum += weights[i] * (empty * vapour + (1 - empty) * liquid);
        }
        return sum / 90;
    }
}
