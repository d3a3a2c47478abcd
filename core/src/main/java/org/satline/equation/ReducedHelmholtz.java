package org.satline.equation;

/**
 * Scratch values: a reduced Helmholtz energy and its derivatives, each multiplied by the variables it was differentiated by. Mutable, for
 * use by one thread at a time; create one for each calculation and fill it again and again.
 *
 * <p>All values are dimensionless. The scaled form keeps the property formulas short and well behaved as density goes to zero.
 */
public final class ReducedHelmholtz {
    /** {@code alpha}. */
    public double a;

    /** {@code delta alpha_delta}. */
    public double ad;

    /** {@code tau alpha_tau}. */
    public double at;

    /** {@code delta^2 alpha_deltadelta}. */
    public double add;

    /** {@code delta tau alpha_deltatau}. */
    public double adt;

    /** {@code tau^2 alpha_tautau}. */
    public double att;

    /** Creates a set of zeros. */
    public ReducedHelmholtz() {}

    /** Sets all six values to zero. */
    public void clear() {
        a = 0;
        ad = 0;
        at = 0;
        add = 0;
        adt = 0;
        att = 0;
    }

    /**
     * Adds a multiple of other values.
     *
     * @param factor the multiple, dimensionless
     * @param other what is added
     */
    public void add(double factor, ReducedHelmholtz other) {
        a += factor * other.a;
        ad += factor * other.ad;
        at += factor * other.at;
        add += factor * other.add;
        adt += factor * other.adt;
        att += factor * other.att;
    }

    /**
     * Adds one term {@code f = n exp(u(delta) + v(tau))}.
     *
     * @param f value of the term
     * @param du {@code U = delta u'}
     * @param dduu {@code delta dU/ddelta}
     * @param dv {@code V = tau v'}
     * @param ddvv {@code tau dV/dtau}
     */
    void addProduct(double f, double du, double dduu, double dv, double ddvv) {
        double fu = f * du;
        double fv = f * dv;
        a += f;
        ad += fu;
        at += fv;
        add += fu * (du - 1) + f * dduu;
        adt += fu * dv;
        att += fv * (dv - 1) + f * ddvv;
    }
}
