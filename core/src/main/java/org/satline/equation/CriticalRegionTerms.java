package org.satline.equation;

/**
 * Terms {@code n delta D^b psi} that shape the critical region of R-744 (Span and Wagner 1996) and R-718 (Wagner and Pruss 2002).
 *
 * <p>With {@code y = (delta-1)^2}: {@code theta = (1-tau) + A y^(1/(2 beta))}, {@code D = theta^2 + B y^a},
 * {@code psi = exp(-C y - D' (tau-1)^2)}. Derivatives are singular at the critical point itself, hence the least distance in density.
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
record CriticalRegionTerms(
        double[] n, double[] a, double[] b, double[] beta, double[] bigA, double[] bigB, double[] bigC, double[] bigD)
        implements ResidualTerms {
    private static final double LEAST_DISTANCE = 1e-10;
    private static final double NEGLIGIBLE = -80;

    @Override
    public void addTo(ReducedState at, ReducedHelmholtz out) {
        double x = at.delta - 1;
        if (Math.abs(x) < LEAST_DISTANCE) {
            x = x < 0 ? -LEAST_DISTANCE : LEAST_DISTANCE;
        }
        for (int i = 0; i < n.length; i++) {
            addTerm(i, x, 1 + x, at.tau, out);
        }
    }

    private void addTerm(int i, double x, double delta, double tau, ReducedHelmholtz out) {
        double y = x * x;
        double z = tau - 1;
        double decay = -bigC[i] * y - bigD[i] * z * z;
        if (decay < NEGLIGIBLE) {
            return;
        }
        double exponent = 1 / (2 * beta[i]);
        double root = bigA[i] * Math.pow(y, exponent);
        double theta = -z + root;
        double thetaY = exponent * root / y;
        double thetaYy = (exponent - 1) * thetaY / y;
        double bump = bigB[i] * Math.pow(y, a[i]);
        double distance = theta * theta + bump;
        double distanceY = 2 * theta * thetaY + a[i] * bump / y;
        double distanceYy = 2 * thetaY * thetaY + 2 * theta * thetaYy + a[i] * (a[i] - 1) * bump / y / y;
        double dx = 2 * x * distanceY;
        double dxx = 4 * y * distanceYy + 2 * distanceY;
        double dz = -2 * theta;
        double dxz = -4 * x * thetaY;

        double p = Math.pow(distance, b[i]);
        double p1 = b[i] * p / distance;
        double p2 = (b[i] - 1) * p1 / distance;
        double px = p1 * dx;
        double pz = p1 * dz;
        double pxx = p1 * dxx + p2 * dx * dx;
        double pzz = 2 * p1 + p2 * dz * dz;
        double pxz = p1 * dxz + p2 * dx * dz;

        double psi = n[i] * Math.exp(decay);
        double logX = -2 * bigC[i] * x;
        double logZ = -2 * bigD[i] * z;
        double q = p * psi;
        double qx = (px + p * logX) * psi;
        double qz = (pz + p * logZ) * psi;
        double qxx = (pxx + 2 * px * logX + p * (logX * logX - 2 * bigC[i])) * psi;
        double qzz = (pzz + 2 * pz * logZ + p * (logZ * logZ - 2 * bigD[i])) * psi;
        double qxz = (pxz + px * logZ + pz * logX + p * logX * logZ) * psi;

        out.a += delta * q;
        out.ad += delta * (q + delta * qx);
        out.at += tau * delta * qz;
        out.add += delta * delta * (2 * qx + delta * qxx);
        out.adt += tau * delta * (qz + delta * qxz);
        out.att += tau * tau * delta * qzz;
    }
}
