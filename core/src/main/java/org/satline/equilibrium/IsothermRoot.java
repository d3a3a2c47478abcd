package org.satline.equilibrium;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equation.FixedComposition;

/** Density of a homogeneous state on an isotherm from its enthalpy or entropy. Immutable and thread-safe. */
final class IsothermRoot {
    private static final double AT_THE_LIMIT = 1e-9;
    private static final int MOST_EVALUATIONS = 200;
    private static final double ACCURACY = 1e-14;

    private final FixedComposition composition;

    IsothermRoot(FixedComposition composition) {
        this.composition = composition;
    }

    /** ln of the density at which a quantity takes a value between two densities of one isotherm, between which it does not turn. */
    double logDensity(double temperature, Given asked, double value, double thin, double dense) {
        HomogeneousNewton newton = new HomogeneousNewton(composition);
        double unit = composition.gasConstant() * (asked == Given.ENTROPY ? 1 : temperature);
        double atThin = (newton.value(temperature, Math.exp(thin), asked) - value) / unit;
        double atDense = (newton.value(temperature, Math.exp(dense), asked) - value) / unit;
        if (Math.abs(atThin) < AT_THE_LIMIT && atThin * atDense >= 0) {
            return thin;
        }
        if (Math.abs(atDense) < AT_THE_LIMIT && atThin * atDense >= 0) {
            return dense;
        }
        if (!(atThin * atDense <= 0)) {
            throw new BeyondRangeException(atThin * unit + value, atDense * unit + value);
        }
        return new BrentSolver(ACCURACY, ACCURACY)
                .solve(
                        MOST_EVALUATIONS,
                        x -> (newton.value(temperature, Math.exp(x), asked) - value) / unit,
                        thin,
                        dense);
    }
}
