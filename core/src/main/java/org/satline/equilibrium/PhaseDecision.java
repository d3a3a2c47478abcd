package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import org.satline.equation.FixedComposition;

/**
 * Decides by the stability test whether a state is one phase or two, and solves the two from the phase that the test
 * found: beside the critical point, where the ends of the two-phase region do not tell. Immutable and thread-safe.
 */
final class PhaseDecision {
    private final FixedComposition composition;
    private final String designation;

    PhaseDecision(FixedComposition composition, String designation) {
        this.composition = composition;
        this.designation = designation;
    }

    /**
     * At a temperature and pressure.
     *
     * @param density molar density of one phase there, mol/m3
     * @param ends of the two-phase region on the isotherm
     */
    Solution atPressure(double temperature, double pressure, double density, List<StretchEnd> ends) {
        Stability stability = new Stability(composition);
        if (stability.holds(temperature, density, ends)) {
            return Solution.onePhase(temperature, density).at(pressure);
        }
        return split(stability, temperature, Given.PRESSURE, pressure, "Pa");
    }

    /** At a temperature and the logarithm of a molar density of the whole. */
    Solution atDensity(double temperature, double logDensity, List<StretchEnd> ends) {
        double density = Math.exp(logDensity);
        Stability stability = new Stability(composition);
        if (stability.holds(temperature, density, ends)) {
            return Solution.onePhase(temperature, density);
        }
        return split(stability, temperature, Given.DENSITY, density, "mol/m3");
    }

    private Solution split(Stability stability, double temperature, Given asked, double value, String unit) {
        TwoPhaseNewton split = new TwoPhaseNewton(composition.mixture(), composition.moleFractions());
        stability.start(split.x);
        if (split.solve(Given.TEMPERATURE, Math.log(temperature), asked, Math.log(value))
                && split.vapourMoleFraction() >= 0
                && split.vapourMoleFraction() <= 1) {
            return Solution.of(split);
        }
        throw new ConvergenceException(String.format(
                Locale.ROOT,
                "state of %s at %s K and %s %s: two phases, no convergence beside the critical point",
                designation,
                temperature,
                value,
                unit));
    }
}
