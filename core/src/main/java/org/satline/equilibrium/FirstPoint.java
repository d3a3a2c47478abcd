package org.satline.equilibrium;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;
import org.satline.equation.PureConstants;

/**
 * Starting values for the first point of a phase boundary: K-values from Wilson's correlation, molar volumes from Rackett's, then
 * successive substitution. The correlations only start the iteration; no answer depends on them.
 */
final class FirstPoint {
    /** A pressure at which vapours are nearly ideal and liquids far from critical, Pa. */
    private static final double EASY_PRESSURE = 1e5;

    private static final int ROUNDS = 30;
    private static final double ROUGH = 1e-4;
    private static final double EASE = 0.7;

    private final MixtureEquation equation;
    private final double[] feed;
    private final boolean feedIsLiquid;
    private final double coldest;

    FirstPoint(MixtureEquation equation, double[] feed, boolean feedIsLiquid, double coldest) {
        this.equation = equation;
        this.feed = feed;
        this.feedIsLiquid = feedIsLiquid;
        this.coldest = coldest;
    }

    /** Temperature at which the boundary is near 1 bar, or the coldest temperature where that is warmer. */
    double temperature() {
        double low = coldest;
        if (wilsonPressure(low) >= EASY_PRESSURE) {
            return low;
        }
        double high = low;
        for (int i = 0; i < feed.length; i++) {
            high = Math.max(high, constants(i).criticalTemperature());
        }
        try {
            return new BrentSolver(0.1).solve(100, t -> Math.log(wilsonPressure(t) / EASY_PRESSURE), low, high);
        } catch (NoBracketingException e) {
            return low;
        }
    }

    private PureConstants constants(int i) {
        return equation.components().get(i).constants();
    }

    /** Wilson's vapour pressure, Pa; exact at 0.7 of the critical temperature by the definition of the acentric factor. */
    private double wilson(int i, double temperature) {
        PureConstants c = constants(i);
        return c.criticalPressure()
                * Math.exp(5.373 * (1 + c.acentricFactor()) * (1 - c.criticalTemperature() / temperature));
    }

    private double wilsonPressure(double temperature) {
        double sum = 0;
        for (int i = 0; i < feed.length; i++) {
            sum += feedIsLiquid ? feed[i] * wilson(i, temperature) : feed[i] / wilson(i, temperature);
        }
        return feedIsLiquid ? sum : 1 / sum;
    }

    /** Rackett's liquid molar volume, m3/mol, held at 0.95 of the critical temperature above it. */
    private double rackett(int i, double temperature) {
        PureConstants c = constants(i);
        double reduced = Math.min(0.95, temperature / c.criticalTemperature());
        double z = 0.29056 - 0.08775 * c.acentricFactor();
        return c.gasConstant()
                * c.criticalTemperature()
                / c.criticalPressure()
                * Math.pow(z, 1 + Math.pow(1 - reduced, 2.0 / 7));
    }

    private double liquidEstimate(double[] x, double temperature) {
        double volume = 0;
        for (int i = 0; i < x.length; i++) {
            volume += x[i] * rackett(i, temperature);
        }
        return 1 / volume;
    }

    /**
     * Returns unknowns of {@link IncipientPhase} near the boundary.
     *
     * @param temperature T, K
     * @throws ConvergenceException if no liquid or vapour density was found to start from
     */
    double[] near(double temperature) {
        int n = feed.length;
        double pressure = wilsonPressure(temperature);
        double[] other = new double[n];
        for (int i = 0; i < n; i++) {
            double k = wilson(i, temperature) / pressure;
            other[i] = feedIsLiquid ? feed[i] * k : feed[i] / k;
        }
        normalise(other);
        PartialDensityDerivatives feedState = new PartialDensityDerivatives(n);
        PartialDensityDerivatives otherState = new PartialDensityDerivatives(n);
        double[] densities = new double[2];
        for (int round = 0; round < ROUNDS; round++) {
            densities[0] = density(feed, temperature, pressure, feedIsLiquid, densities[0]);
            densities[1] = density(other, temperature, pressure, !feedIsLiquid, densities[1]);
            if (!(densities[feedIsLiquid ? 1 : 0] > 0)) {
                // Wilson's pressure may lie above every vapour of that composition
                pressure *= EASE;
                continue;
            }
            if (!(densities[0] > 0 && densities[1] > 0)) {
                break;
            }
            evaluate(feed, densities[0], temperature, feedState);
            evaluate(other, densities[1], temperature, otherState);
            double sum = 0;
            double change = 0;
            for (int i = 0; i < n; i++) {
                double fugacity = Math.log(feed[i] * densities[0]) + feedState.first(i);
                double next = Math.exp(fugacity - otherState.first(i)) / densities[1];
                change = Math.max(change, Math.abs(Math.log(next / other[i])));
                other[i] = next;
                sum += next;
            }
            normalise(other);
            double factor = feedIsLiquid ? sum : 1 / sum;
            pressure *= Math.max(0.5, Math.min(2, factor));
            if (change < ROUGH) {
                break;
            }
        }
        if (!(densities[0] > 0 && densities[1] > 0)) {
            throw new ConvergenceException(
                    "phase boundary: no liquid or vapour density at " + temperature + " K to start from");
        }
        double[] x = new double[n + 2];
        x[0] = Math.log(densities[0]);
        for (int i = 0; i < n; i++) {
            x[i + 1] = Math.log(other[i] * densities[1]);
        }
        x[n + 1] = Math.log(temperature);
        return x;
    }

    /**
     * Density of a phase of a composition: from the previous one where there is one, else from the correlations; NaN where none is found.
     */
    double density(double[] x, double temperature, double pressure, boolean liquid, double previous) {
        DensitySolver solver = new DensitySolver(equation.at(x));
        double rho = Double.NaN;
        if (previous > 0) {
            rho = solver.near(temperature, pressure, previous);
        }
        if (!(rho > 0)) {
            rho = liquid
                    ? solver.liquid(temperature, pressure, liquidEstimate(x, temperature))
                    : solver.near(temperature, pressure, pressure / (equation.gasConstant() * temperature));
        }
        return rho;
    }

    private void evaluate(double[] x, double density, double temperature, PartialDensityDerivatives out) {
        double[] partial = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            partial[i] = x[i] * density;
        }
        equation.evaluate(temperature, partial, out);
    }

    private static void normalise(double[] x) {
        double sum = 0;
        for (double value : x) {
            sum += value;
        }
        if (!(sum > 0 && sum < Double.POSITIVE_INFINITY)) {
            throw new ConvergenceException("phase boundary: no composition of a second phase to start from");
        }
        for (int i = 0; i < x.length; i++) {
            x[i] /= sum;
        }
    }
}
