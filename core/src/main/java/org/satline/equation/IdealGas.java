package org.satline.equation;

/**
 * Ideal-gas part {@code alpha0 = ln delta + constant + linear tau + log ln tau + sum n tau^t + sum n ln(1 - exp(-theta tau))}.
 *
 * @param constant sets the zero of entropy
 * @param linear sets the zero of energy
 * @param log coefficient of {@code ln tau}
 * @param powerN coefficients of the power terms
 * @param powerT their exponents
 * @param vibrationN coefficients of the Planck-Einstein terms
 * @param vibrationTheta their reduced characteristic temperatures
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record IdealGas(
        double constant,
        double linear,
        double log,
        double[] powerN,
        double[] powerT,
        double[] vibrationN,
        double[] vibrationTheta) {
    /** Adds {@code factor} times this part; the scaled derivatives by density are 1, -1 and 0. */
    void addTo(double factor, double delta, double tau, ReducedHelmholtz out) {
        double logTau = Math.log(tau);
        double a = Math.log(delta) + constant + linear * tau + log * logTau;
        double at = linear * tau + log;
        double att = -log;
        for (int i = 0; i < powerN.length; i++) {
            double f = powerN[i] * Math.exp(powerT[i] * logTau);
            a += f;
            at += powerT[i] * f;
            att += powerT[i] * (powerT[i] - 1) * f;
        }
        for (int i = 0; i < vibrationN.length; i++) {
            double x = vibrationTheta[i] * tau;
            double e = Math.exp(-x);
            double rest = -Math.expm1(-x);
            a += vibrationN[i] * Math.log(rest);
            at += vibrationN[i] * x * e / rest;
            att -= vibrationN[i] * x * x * e / (rest * rest);
        }
        out.a += factor * a;
        out.ad += factor;
        out.at += factor * at;
        out.add -= factor;
        out.att += factor * att;
    }
}
