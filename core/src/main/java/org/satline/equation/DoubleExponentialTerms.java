package org.satline.equation;

/** Terms {@code n delta^d tau^t exp(-delta^l) exp(-tau^m)} (Lemmon and Jacobsen 2005, R-125). */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record DoubleExponentialTerms(double[] n, double[] d, double[] t, double[] l, double[] m) implements ResidualTerms {
    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        for (int i = 0; i < n.length; i++) {
            double deltaPower = Math.exp(l[i] * at.logDelta);
            double tauPower = Math.exp(m[i] * at.logTau);
            double f = n[i] * Math.exp(d[i] * at.logDelta + t[i] * at.logTau - deltaPower - tauPower);
            out.addProduct(
                    f,
                    d[i] - l[i] * deltaPower,
                    -l[i] * l[i] * deltaPower,
                    t[i] - m[i] * tauPower,
                    -m[i] * m[i] * tauPower);
        }
    }
}
