package org.satline.equation;

/** Terms {@code n delta^d tau^t exp(-g delta^l)}; {@code l = 0} and {@code g = 0} where there is no exponential. */
final class PolynomialTerms implements ResidualTerms {
    private final double[] n;
    private final double[] d;
    private final double[] t;
    private final int[] l;
    private final double[] g;

    PolynomialTerms(double[] n, double[] d, double[] t, int[] l, double[] g) {
        this.n = n;
        this.d = d;
        this.t = t;
        this.l = l;
        this.g = g;
    }

    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        double delta = at.delta;
        double logDelta = at.logDelta;
        double logTau = at.logTau;
        double a = 0;
        double ad = 0;
        double att = 0;
        double att2 = 0;
        double add = 0;
        double adt = 0;
        int order = 0;
        double power = 0;
        for (int i = 0; i < n.length; i++) {
            int li = l[i];
            if (li != order) {
                order = li;
                power = integerPower(delta, li);
            }
            double gl = li == 0 ? 0 : g[i] * power;
            double f = n[i] * Math.exp(d[i] * logDelta + t[i] * logTau - gl);
            double lgl = li * gl;
            double u = d[i] - lgl;
            double fu = f * u;
            double ft = f * t[i];
            a += f;
            ad += fu;
            att += ft;
            add += fu * (u - 1) - f * li * lgl;
            adt += fu * t[i];
            att2 += ft * (t[i] - 1);
        }
        out.a += a;
        out.ad += ad;
        out.at += att;
        out.add += add;
        out.adt += adt;
        out.att += att2;
    }

    private static double integerPower(double base, int exponent) {
        double result = 1;
        for (int k = 0; k < exponent; k++) {
            result *= base;
        }
        return result;
    }
}
