package org.satline.equilibrium;

import java.util.Arrays;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;

/**
 * Newton's method for a feed phase of fixed composition in equilibrium with an incipient phase: a bubble point where the feed is liquid, a
 * dew point where it is vapour, saturation of a pure substance where there is one component.
 *
 * <p>Unknowns are logarithms of the feed density, of the partial densities of the incipient phase, and of temperature; equations are equal
 * fugacity of every component, equal pressure, and one specified quantity (Michelsen's form of the phase boundary, here in partial
 * densities). Converged means {@code ln f_i} equal within 1e-10 and pressures equal within 1e-10 of {@code rho R T} of the denser phase.
 * One thread at a time.
 */
final class IncipientPhase {
    /** The quantity that is held at a given value, as a natural logarithm of SI units. */
    enum Specified {
        TEMPERATURE,
        PRESSURE,
        DENSITY_RATIO
    }

    /** The stated criterion. */
    private static final double RESIDUAL_LIMIT = 1e-10;
    /** Once inside the criterion, go on while a step still gains digits. */
    private static final double STEP_LIMIT = 1e-13;

    private static final int MOST_ITERATIONS = 40;
    private static final double LARGEST_STEP = 0.5;

    private final MixtureEquation equation;
    private final double[] feed;
    private final double[] logFeed;
    private final int n;
    private final boolean feedIsLiquid;

    final double[] x;
    final double[] residual;
    final double[][] jacobian;
    private final double[] step;
    private final double[] feedDensities;
    private final double[] incipientDensities;
    final PartialDensityDerivatives feedState;
    final PartialDensityDerivatives incipientState;
    private int iterations;

    IncipientPhase(MixtureEquation equation, double[] feed, boolean feedIsLiquid) {
        this.equation = equation;
        this.feed = feed;
        this.feedIsLiquid = feedIsLiquid;
        n = feed.length;
        logFeed = new double[n];
        for (int i = 0; i < n; i++) {
            logFeed[i] = Math.log(feed[i]);
        }
        x = new double[n + 2];
        residual = new double[n + 2];
        jacobian = new double[n + 2][n + 2];
        step = new double[n + 2];
        feedDensities = new double[n];
        incipientDensities = new double[n];
        feedState = new PartialDensityDerivatives(n);
        incipientState = new PartialDensityDerivatives(n);
    }

    /** Number of unknowns: ln feed density, n of ln partial incipient density, ln temperature. */
    int size() {
        return n + 2;
    }

    boolean feedIsLiquid() {
        return feedIsLiquid;
    }

    double temperature() {
        return Math.exp(x[n + 1]);
    }

    double feedDensity() {
        return feedState.density();
    }

    double incipientDensity() {
        return incipientState.density();
    }

    /** Pressure of the phase whose pressure is well conditioned: the vapour. */
    double pressure() {
        PartialDensityDerivatives vapour = feedIsLiquid ? incipientState : feedState;
        return vapour.density() * equation.gasConstant() * temperature() * vapour.z();
    }

    /** ln of (liquid density / vapour density): 0 at the critical point, monotone along the line. */
    double logDensityRatio() {
        double ratio = Math.log(feedState.density() / incipientState.density());
        return feedIsLiquid ? ratio : -ratio;
    }

    /** Largest difference of ln f between the phases at the state last evaluated. */
    double fugacityResidual() {
        double worst = 0;
        for (int i = 0; i < n; i++) {
            worst = Math.max(worst, Math.abs(residual[i]));
        }
        return worst;
    }

    /** Difference of the pressures over rho R T of the denser phase at the state last evaluated. */
    double pressureResidual() {
        return Math.abs(residual[n]);
    }

    int iterations() {
        return iterations;
    }

    /**
     * Iterates from the values in {@link #x}.
     *
     * @return true if converged to two phases that differ in density
     */
    boolean solve(Specified specified, double value) {
        double previous = Double.POSITIVE_INFINITY;
        for (iterations = 1; iterations <= MOST_ITERATIONS; iterations++) {
            evaluate(specified, value);
            double worst = worstResidual();
            if (!(worst < Double.POSITIVE_INFINITY)) {
                return false;
            }
            System.arraycopy(residual, 0, step, 0, step.length);
            if (!LinearSystem.solve(jacobian, step)) {
                return worst < RESIDUAL_LIMIT && distinct();
            }
            double largest = 0;
            for (double s : step) {
                largest = Math.max(largest, Math.abs(s));
            }
            if (!(largest < Double.POSITIVE_INFINITY)) {
                return false;
            }
            if (worst < RESIDUAL_LIMIT && (largest < STEP_LIMIT || largest >= previous)) {
                return distinct();
            }
            previous = worst < RESIDUAL_LIMIT ? largest : Double.POSITIVE_INFINITY;
            double damping = largest > LARGEST_STEP ? LARGEST_STEP / largest : 1;
            for (int i = 0; i < x.length; i++) {
                x[i] -= damping * step[i];
            }
        }
        return false;
    }

    private boolean distinct() {
        return Math.abs(logDensityRatio()) > 1e-4 && logDensityRatio() > 0;
    }

    private double worstResidual() {
        double worst = 0;
        for (double r : residual) {
            if (!(Math.abs(r) < Double.POSITIVE_INFINITY)) {
                return Double.POSITIVE_INFINITY;
            }
            worst = Math.max(worst, Math.abs(r));
        }
        return worst;
    }

    /** Fills residuals and Jacobian at the present unknowns. */
    void evaluate(Specified specified, double value) {
        double temperature = Math.exp(x[n + 1]);
        double feedDensity = Math.exp(x[0]);
        for (int i = 0; i < n; i++) {
            feedDensities[i] = feed[i] * feedDensity;
            incipientDensities[i] = Math.exp(x[i + 1]);
        }
        equation.evaluate(temperature, feedDensities, feedState);
        equation.evaluate(temperature, incipientDensities, incipientState);
        PartialDensityDerivatives f = feedState;
        PartialDensityDerivatives v = incipientState;
        for (int i = 0; i < n; i++) {
            double[] row = jacobian[i];
            residual[i] = logFeed[i] + x[0] + f.first(i) - x[i + 1] - v.first(i);
            row[0] = f.pressure(i);
            for (int j = 0; j < n; j++) {
                row[j + 1] = -v.moleFraction(j) * v.second(i * n + j);
            }
            row[i + 1] -= 1;
            row[n + 1] = f.temperature(i) - v.temperature(i);
        }
        pressureRow(f, v);
        specifiedRow(specified, value);
    }

    private void pressureRow(PartialDensityDerivatives f, PartialDensityDerivatives v) {
        double scale = Math.max(f.density(), v.density());
        double wf = f.density() / scale;
        double wv = v.density() / scale;
        double[] row = jacobian[n];
        residual[n] = wf * f.z() - wv * v.z();
        double slope = 0;
        for (int i = 0; i < n; i++) {
            slope += feed[i] * f.pressure(i);
            row[i + 1] = -wv * v.moleFraction(i) * v.pressure(i);
        }
        row[0] = wf * slope;
        row[n + 1] = wf * (f.thermalPressure() - f.z()) - wv * (v.thermalPressure() - v.z());
    }

    private void specifiedRow(Specified specified, double value) {
        double[] row = jacobian[n + 1];
        Arrays.fill(row, 0);
        switch (specified) {
            case TEMPERATURE -> {
                residual[n + 1] = x[n + 1] - value;
                row[n + 1] = 1;
            }
            case PRESSURE -> {
                residual[n + 1] = Math.log(pressure()) - value;
                logPressureGradient(row);
            }
            case DENSITY_RATIO -> {
                double sign = feedIsLiquid ? 1 : -1;
                residual[n + 1] = logDensityRatio() - value;
                row[0] = sign;
                for (int i = 0; i < n; i++) {
                    row[i + 1] = -sign * incipientState.moleFraction(i);
                }
            }
        }
    }

    /** Fills d ln p / dx of the vapour phase at the state last evaluated. */
    void logPressureGradient(double[] row) {
        PartialDensityDerivatives vapour = feedIsLiquid ? incipientState : feedState;
        Arrays.fill(row, 0);
        row[n + 1] = vapour.thermalPressure() / vapour.z();
        double slope = 0;
        for (int i = 0; i < n; i++) {
            double term = vapour.moleFraction(i) * vapour.pressure(i) / vapour.z();
            slope += term;
            if (feedIsLiquid) {
                row[i + 1] = term;
            }
        }
        if (!feedIsLiquid) {
            row[0] = slope;
        }
    }

    /**
     * Computes the direction of the line at a converged point.
     *
     * @param tangent receives dx by the specified quantity
     * @return false if the direction is not defined there
     */
    boolean tangent(Specified specified, double value, double[] tangent) {
        evaluate(specified, value);
        Arrays.fill(tangent, 0);
        tangent[n + 1] = 1;
        return LinearSystem.solve(jacobian, tangent);
    }
}
