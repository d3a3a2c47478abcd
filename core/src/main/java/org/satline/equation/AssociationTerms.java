package org.satline.equation;

/** Terms {@code n delta^d tau^t exp(-eta (delta-eps)^2 + 1/(beta (tau-gam)^2 + b))} (Gao et al. 2023, R-717). */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record AssociationTerms(
        double[] n, double[] d, double[] t, double[] eta, double[] eps, double[] beta, double[] gam, double[] b)
        implements ResidualTerms {
    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        double tau = at.tau;
        for (int i = 0; i < n.length; i++) {
            double x = at.delta - eps[i];
            double y = tau - gam[i];
            double q = beta[i] * y * y + b[i];
            double slope = 2 * beta[i] * y / q;
            double f = n[i] * Math.exp(d[i] * at.logDelta + t[i] * at.logTau - eta[i] * x * x + 1 / q);
            out.addProduct(
                    f,
                    d[i] - 2 * eta[i] * at.delta * x,
                    -2 * eta[i] * at.delta * (at.delta + x),
                    t[i] - tau * slope / q,
                    (-tau * slope - tau * tau * (2 * beta[i] / q - 2 * slope * slope)) / q);
        }
    }
}
