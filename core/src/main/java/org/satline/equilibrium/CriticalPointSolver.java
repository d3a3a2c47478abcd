package org.satline.equilibrium;

import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.satline.equation.FixedComposition;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;
import org.satline.equation.PureEquation;

/**
 * Critical point by the two criticality conditions (Heidemann and Khalil, AIChE Journal 26 (1980) 769-779) at constant temperature and
 * volume: the smallest eigenvalue of {@code sqrt(z_i z_j) d ln f_i/dn_j} vanishes, and so does its derivative along the eigenvector.
 * Newton's method in ln T and ln rho; solved when a step moves the temperature by less than 1e-9 of it. One thread at a time.
 */
final class CriticalPointSolver {
    private static final int MOST_ITERATIONS = 40;
    private static final double SOLVED = 1e-9;
    /** Relative distance over which the two conditions are differentiated by T and rho. */
    private static final double DIFFERENCE = 1e-5;
    /** Distance along the eigenvector; the error of the four-point rule is of its fourth power. */
    private static final double ALONG = 1e-3;

    private static final double LARGEST_STEP = 0.02;
    /** A solution farther from the start than this, relative, is another one. */
    private static final double FARTHEST = 0.1;

    private final MixtureEquation equation;
    private final FixedComposition composition;
    private final double[] z;
    private final int n;
    private final double[] partial;
    private final PartialDensityDerivatives state;

    CriticalPointSolver(FixedComposition composition) {
        this.composition = composition;
        equation = composition.mixture();
        z = composition.moleFractions();
        n = z.length;
        partial = new double[n];
        state = new PartialDensityDerivatives(n);
    }

    /** Both conditions at one temperature and density. */
    private record Conditions(double eigenvalue, double slope) {}

    /**
     * Solves from a nearby state.
     *
     * @param temperature T, K
     * @param molarDensity mol/m3
     * @return the critical point; empty if none was met nearby
     */
    Optional<CriticalPoint> near(double temperature, double molarDensity) {
        if (n == 1 && equation.components().get(0).singularAtCriticalPoint()) {
            return Optional.of(published(equation.components().get(0)));
        }
        double logT = Math.log(temperature);
        double logRho = Math.log(molarDensity);
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            Conditions here = conditions(logT, logRho);
            Conditions warmer = conditions(logT + DIFFERENCE, logRho);
            Conditions colder = conditions(logT - DIFFERENCE, logRho);
            Conditions denser = conditions(logT, logRho + DIFFERENCE);
            Conditions thinner = conditions(logT, logRho - DIFFERENCE);
            double[][] jacobian = {
                {warmer.eigenvalue - colder.eigenvalue, denser.eigenvalue - thinner.eigenvalue},
                {warmer.slope - colder.slope, denser.slope - thinner.slope}
            };
            double[] step = {2 * DIFFERENCE * here.eigenvalue, 2 * DIFFERENCE * here.slope};
            if (!LinearSystem.solve(jacobian, step)) {
                return Optional.empty();
            }
            double largest = Math.max(Math.abs(step[0]), Math.abs(step[1]));
            if (!(largest < Double.POSITIVE_INFINITY)) {
                return Optional.empty();
            }
            double damping = largest > LARGEST_STEP ? LARGEST_STEP / largest : 1;
            logT -= damping * step[0];
            logRho -= damping * step[1];
            if (Math.abs(step[0]) < SOLVED && largest < 1e3 * SOLVED) {
                return Math.abs(logT - Math.log(temperature)) < FARTHEST
                                && Math.abs(logRho - Math.log(molarDensity)) < 3 * FARTHEST
                        ? Optional.of(point(Math.exp(logT), Math.exp(logRho)))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** The equations of are singular at the published critical point, which is their own by construction. */
    private CriticalPoint published(PureEquation pure) {
        double density = pure.constants().criticalDensity();
        return new CriticalPoint(
                pure.constants().criticalTemperature(),
                pure.constants().criticalPressure(),
                density,
                density * pure.molarMass());
    }

    private CriticalPoint point(double temperature, double molarDensity) {
        fill(molarDensity, new double[n], 0);
        equation.evaluate(temperature, partial, state);
        return new CriticalPoint(
                temperature,
                molarDensity * equation.gasConstant() * temperature * state.z(),
                molarDensity,
                molarDensity * composition.molarMass());
    }

    private Conditions conditions(double logT, double logRho) {
        double temperature = Math.exp(logT);
        double rho = Math.exp(logRho);
        double[] direction = new double[n];
        double[][] matrix = matrix(temperature, rho, direction, 0);
        EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(matrix, false));
        int least = 0;
        for (int i = 1; i < n; i++) {
            if (eigen.getRealEigenvalue(i) < eigen.getRealEigenvalue(least)) {
                least = i;
            }
        }
        double[] u = eigen.getEigenvector(least).toArray();
        double orientation = 0;
        for (int i = 0; i < n; i++) {
            orientation += u[i] * Math.sqrt(z[i]);
        }
        double step = ALONG;
        for (int i = 0; i < n; i++) {
            u[i] *= orientation < 0 ? -1 : 1;
            if (u[i] != 0) {
                step = Math.min(step, 0.1 * Math.sqrt(z[i]) / Math.abs(u[i]));
            }
        }
        double slope = (8 * (along(temperature, rho, u, step) - along(temperature, rho, u, -step))
                        - (along(temperature, rho, u, 2 * step) - along(temperature, rho, u, -2 * step)))
                / (12 * step);
        return new Conditions(eigen.getRealEigenvalue(least), slope);
    }

    /** The quadratic form of the eigenvector, moved along it. */
    private double along(double temperature, double rho, double[] u, double step) {
        double[][] matrix = matrix(temperature, rho, u, step);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sum += u[i] * u[j] * matrix[i][j];
            }
        }
        return sum;
    }

    private double[][] matrix(double temperature, double rho, double[] u, double step) {
        fill(rho, u, step);
        equation.evaluate(temperature, partial, state);
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                matrix[i][j] = Math.sqrt(z[i] * z[j]) * state.second(i * n + j) * rho / state.density();
            }
            matrix[i][i] += z[i] * rho / partial[i];
        }
        return matrix;
    }

    private void fill(double rho, double[] u, double step) {
        for (int i = 0; i < n; i++) {
            partial[i] = rho * (z[i] + step * u[i] * Math.sqrt(z[i]));
        }
    }
}
