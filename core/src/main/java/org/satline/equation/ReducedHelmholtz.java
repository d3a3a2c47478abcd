package org.satline.equation;

/**
 * A reduced Helmholtz energy and its derivatives, each multiplied by the variables it was differentiated by. Only an equation fills it, so
 * that solvers can be answered again and again without a new object: for one thread at a time, one for each calculation. Programs ask
 * {@code org.satline.equilibrium.FluidModel} instead, whose states are immutable.
 *
 * <p>All values are dimensionless. The scaled form keeps the property formulas short and well behaved as density goes to zero.
 */
public final class ReducedHelmholtz {
    double a;
    double ad;
    double at;
    double add;
    double adt;
    double att;

    /** Creates a set of zeros. */
    public ReducedHelmholtz() {}

    /**
     * Returns {@code alpha}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double a() {
        return a;
    }

    /**
     * Returns {@code delta alpha_delta}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double ad() {
        return ad;
    }

    /**
     * Returns {@code tau alpha_tau}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double at() {
        return at;
    }

    /**
     * Returns {@code delta^2 alpha_deltadelta}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double add() {
        return add;
    }

    /**
     * Returns {@code delta tau alpha_deltatau}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double adt() {
        return adt;
    }

    /**
     * Returns {@code tau^2 alpha_tautau}.
     *
     * @return value, dimensionless; 0 before an equation has filled it
     */
    public double att() {
        return att;
    }

    /** Sets all six values to zero. */
    void clear() {
        a = 0;
        ad = 0;
        at = 0;
        add = 0;
        adt = 0;
        att = 0;
    }

    /** Adds a multiple of other values. */
    void add(double factor, ReducedHelmholtz other) {
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
