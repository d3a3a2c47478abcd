package org.satline.equation;

/** Terms {@code n delta^d tau^t exp(-eta (delta-eps)^2 - beta (delta-gam))} of departure functions (Kunz and Wagner 2012). */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record DensityGaussianTerms(double[] n, double[] d, double[] t, double[] eta, double[] eps, double[] beta, double[] gam)
        implements ResidualTerms {
    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        double delta = at.delta;
        for (int i = 0; i < n.length; i++) {
            double x = delta - eps[i];
            double exponent = d[i] * at.logDelta + t[i] * at.logTau - eta[i] * x * x - beta[i] * (delta - gam[i]);
            out.addProduct(
                    n[i] * Math.exp(exponent),
                    d[i] - 2 * eta[i] * delta * x - beta[i] * delta,
                    -2 * eta[i] * delta * (delta + x) - beta[i] * delta,
                    t[i],
                    0);
        }
    }
}
