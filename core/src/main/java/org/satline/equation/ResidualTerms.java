package org.satline.equation;

/** Terms of one type of a residual Helmholtz energy. Implementations are immutable. */
interface ResidualTerms {
    /**
     * Adds the terms and their scaled derivatives.
     *
     * @param at reduced density and temperature with their logarithms
     * @param out receives the sums
     */
    void addTo(ReducedState at, ReducedHelmholtz out);

    /** Reduced variables of one state, shared by all term groups so that each logarithm is taken once. */
    final class ReducedState {
        double delta;
        double logDelta;
        double tau;
        double logTau;

        void set(double newDelta, double newTau) {
            delta = newDelta;
            tau = newTau;
            logDelta = Math.log(newDelta);
            logTau = Math.log(newTau);
        }
    }
}
