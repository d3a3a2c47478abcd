package org.satline.simulation;

/**
 * Void fraction of two-phase flow after Zivi, S. M. 1964, Estimation of steady-state steam void-fraction by means of the principle of
 * minimum entropy production, J. Heat Transfer 86:247-252: {@code alpha = 1 / (1 + (1-x)/x (rhoV/rhoL)^(2/3))}.
 */
final class VoidFraction {
    private VoidFraction() {}

    /** Mean density over a tube along which the vapour fraction changes evenly, kg/m3. */
    static double meanDensity(double x1, double x2, double liquidDensity, double vapourDensity) {
        double alpha = meanVoid(Math.min(x1, x2), Math.max(x1, x2), Math.pow(vapourDensity / liquidDensity, 2.0 / 3));
        return alpha * vapourDensity + (1 - alpha) * liquidDensity;
    }

    /** Mean of {@code x / (x + k (1 - x))}: its integral is {@code x/a - k/a^2 ln(k + a x)} with {@code a = 1 - k}. */
    static double meanVoid(double low, double high, double k) {
        if (high - low < 1e-6) {
            double x = (low + high) / 2;
            return x / (x + k * (1 - x));
        }
        double a = 1 - k;
        return 1 / a - k / (a * a) * Math.log((k + a * high) / (k + a * low)) / (high - low);
    }
}
