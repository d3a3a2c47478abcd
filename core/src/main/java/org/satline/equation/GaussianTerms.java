package org.satline.equation;

/** Terms {@code n delta^d tau^t exp(-eta (delta-eps)^2 - beta (tau-gam)^2)}. */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record GaussianTerms(double[] n, double[] d, double[] t, double[] eta, double[] eps, double[] beta, double[] gam)
        implements ResidualTerms {
    /** Below exp(-80) a term is lost in the last digit of the sums whatever its coefficient. */
    private static final double NEGLIGIBLE = -80;

    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        for (int i = 0; i < n.length; i++) {
            double x = at.delta - eps[i];
            double y = at.tau - gam[i];
            double bell = -eta[i] * x * x - beta[i] * y * y;
            if (bell < NEGLIGIBLE) {
                continue;
            }
            double f = n[i] * Math.exp(d[i] * at.logDelta + t[i] * at.logTau + bell);
            out.addProduct(
                    f,
                    d[i] - 2 * eta[i] * at.delta * x,
                    -2 * eta[i] * at.delta * (at.delta + x),
                    t[i] - 2 * beta[i] * at.tau * y,
                    -2 * beta[i] * at.tau * (at.tau + y));
        }
    }
}
