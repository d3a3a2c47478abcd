package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equation.FixedComposition;
import org.satline.equation.PartialDensityDerivatives;

/**
 * Looks for a state at which the compressed liquid of a composition splits in two, the reason why most blends without a
 * bubble line that rises with temperature have none. What it finds is a proof: two phases of equal fugacities that make
 * up the composition, each denser than the reducing density of its own mixture, at which its components are critical as
 * pure substances. One thread at a time.
 */
final class SecondLiquid {
    /** Temperatures over the coldest of the equations. */
    private static final double[] WARMER = {1, 1.05, 1.1, 1.2, 1.3, 1.45, 1.6};

    private static final double[] PRESSURES_PA = {1e6, 3e6, 1e7, 3e7};
    /** Shares of the mean critical temperature, and of the reducing density, from which a critical point is looked for. */
    private static final double[] TRIED = {1, 1.1, 0.95, 1.2, 1.35};

    private static final int MOST_ROUNDS = 500;
    private static final double EQUAL = 1e-9;
    /** Difference of mole fractions from which two liquids are two. */
    private static final double DISTINCT = 0.01;

    private final FixedComposition composition;
    private final double[] feed;
    private final LiquidStability stability;
    private final FirstPoint densities;

    private SecondLiquid(FixedComposition composition) {
        this.composition = composition;
        feed = composition.moleFractions();
        stability = new LiquidStability(composition.mixture(), feed);
        densities = new FirstPoint(composition.mixture(), feed, true, 0);
    }

    /**
     * Turns the failure of a trace into the reason for it where that can be proved.
     *
     * @param composition what was traced
     * @param coldest coldest temperature of its components' equations, K
     * @param lost the failure
     * @return what to throw
     */
    static RuntimeException reason(FixedComposition composition, double coldest, ConvergenceException lost) {
        SecondLiquid search = new SecondLiquid(composition);
        for (double factor : WARMER) {
            for (double pressure : PRESSURES_PA) {
                if (search.splits(coldest * factor, pressure)) {
                    return TwoLiquidsException.at(names(composition), coldest * factor, pressure);
                }
            }
        }
        return colderThanEquations(composition, coldest).orElse(lost);
    }

    /** A blend rich in a light gas can have its critical point where another component's equation does not reach. */
    private static Optional<ConvergenceException> colderThanEquations(FixedComposition composition, double coldest) {
        double[] z = composition.moleFractions();
        double mean = 0;
        for (int i = 0; i < z.length; i++) {
            mean += z[i] * composition.mixture().components().get(i).constants().criticalTemperature();
        }
        for (double warmth : TRIED) {
            for (double thickness : TRIED) {
                Optional<CriticalPoint> found = new CriticalPointSolver(composition)
                        .near(mean * warmth, composition.reducingDensity() * thickness)
                        .filter(c -> c.temperatureK() < coldest && c.pressurePa() > 0);
                if (found.isPresent()) {
                    return Optional.of(new ConvergenceException(String.format(
                            Locale.ROOT,
                            "bubble line of %s in these proportions: its critical point, %.2f K and %.2f MPa, is colder"
                                    + " than %.2f K, the coldest temperature of the components' equations",
                            String.join(" + ", names(composition)),
                            found.get().temperatureK(),
                            found.get().pressurePa() / 1e6,
                            coldest)));
                }
            }
        }
        return Optional.empty();
    }

    private static List<String> names(FixedComposition composition) {
        return composition.mixture().components().stream()
                .map(c -> c.constants().designation())
                .toList();
    }

    private boolean splits(double temperature, double pressure) {
        double density = densities.density(feed, temperature, pressure, true, 0);
        return density > 0
                && !stability.holds(temperature, pressure, density, phase(feed, density, temperature))
                && settles(feed.clone(), stability.formed(), temperature, pressure);
    }

    /** Successive substitution from the whole and the liquid that would form. */
    private boolean settles(double[] a, double[] b, double temperature, double pressure) {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double densityA = densities.density(a, temperature, pressure, true, 0);
            double densityB = densities.density(b, temperature, pressure, true, 0);
            if (!(dense(a, densityA) && dense(b, densityB))) {
                return false;
            }
            PartialDensityDerivatives phaseA = phase(a, densityA, temperature);
            PartialDensityDerivatives phaseB = phase(b, densityB, temperature);
            double[] ratio = new double[feed.length];
            double apart = 0;
            double differ = 0;
            for (int i = 0; i < feed.length; i++) {
                ratio[i] = Math.exp(Math.log(densityA / densityB) + phaseA.first(i) - phaseB.first(i));
                differ = Math.max(differ, Math.abs(Math.log(ratio[i] * a[i] / b[i])));
                apart = Math.max(apart, Math.abs(a[i] - b[i]));
            }
            if (apart < DISTINCT) {
                return false;
            }
            if (differ < EQUAL) {
                return true;
            }
            if (!divide(ratio, a, b)) {
                return false;
            }
        }
        return false;
    }

    private boolean dense(double[] x, double density) {
        return density > composition.mixture().at(x).reducingDensity();
    }

    private PartialDensityDerivatives phase(double[] x, double density, double temperature) {
        double[] partial = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            partial[i] = x[i] * density;
        }
        PartialDensityDerivatives state = new PartialDensityDerivatives(x.length);
        composition.mixture().evaluate(temperature, partial, state);
        return state;
    }

    /** Shares the whole among both phases (Rachford and Rice); false where it lies in one of them. */
    private boolean divide(double[] ratio, double[] a, double[] b) {
        if (excess(ratio, 0) <= 0 || excess(ratio, 1) >= 0) {
            return false;
        }
        double share = new BrentSolver(1e-14).solve(200, s -> excess(ratio, s), 0, 1);
        for (int i = 0; i < feed.length; i++) {
            a[i] = feed[i] / (1 + share * (ratio[i] - 1));
            b[i] = ratio[i] * a[i];
        }
        return true;
    }

    private double excess(double[] ratio, double share) {
        double sum = 0;
        for (int i = 0; i < feed.length; i++) {
            sum += feed[i] * (ratio[i] - 1) / (1 + share * (ratio[i] - 1));
        }
        return sum;
    }
}
