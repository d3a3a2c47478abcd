package org.satline.equilibrium;

import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;

/**
 * Tells whether a second liquid would form beside the phases of a bubble or dew point: the tangent-plane test
 * (Michelsen, Fluid Phase Equilibria 9 (1982) 1-19) with a trial liquid that starts nearly pure in each component,
 * followed by successive substitution. Any trial composition w with {@code sum w_i (ln f_i(w) - ln f_i)} below 0 proves
 * that the point is not stable. One thread at a time.
 */
final class LiquidStability {
    private static final int MOST_ROUNDS = 80;
    private static final double SETTLED = 1e-9;
    /** Below this the tangent-plane distance is negative beyond round-off of the 1e-10 to which ln f agree. */
    private static final double NEGATIVE = -1e-8;

    private static final double SAME_ROOT = 1e-6;
    /** Share of the component that a trial starts from. */
    private static final double NEARLY_PURE = 0.98;

    private final MixtureEquation equation;
    private final double[] feed;
    private final int n;
    private final double[] target;
    private final double[] trial;
    private final double[] next;
    private final double[] partial;
    private final PartialDensityDerivatives state;
    private final FirstPoint densities;

    LiquidStability(MixtureEquation equation, double[] feed) {
        this.equation = equation;
        this.feed = feed;
        n = feed.length;
        target = new double[n];
        trial = new double[n];
        next = new double[n];
        partial = new double[n];
        state = new PartialDensityDerivatives(n);
        densities = new FirstPoint(equation, feed, true, 0);
    }

    /** True if no trial liquid was found that would form beside the point. */
    boolean holds(IncipientPhase point) {
        return holds(point.temperature(), point.pressure(), point.feedDensity(), point.feedState);
    }

    /**
     * The same for a phase of the feed's composition.
     *
     * @param density its molar density, mol/m3
     * @param phase its derivatives
     */
    boolean holds(double temperature, double pressure, double density, PartialDensityDerivatives phase) {
        for (int i = 0; i < n; i++) {
            target[i] = Math.log(feed[i] * density) + phase.first(i);
        }
        for (int k = 0; k < n; k++) {
            if (forms(k, temperature, pressure)) {
                return false;
            }
        }
        return true;
    }

    /** Composition of the liquid that would form, mole fractions, after a test that failed. */
    double[] formed() {
        return trial.clone();
    }

    private boolean forms(int rich, double temperature, double pressure) {
        for (int i = 0; i < n; i++) {
            trial[i] = i == rich ? NEARLY_PURE : (1 - NEARLY_PURE) * feed[i] / Math.max(1e-300, 1 - feed[rich]);
        }
        double density = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            density = densities.density(trial, temperature, pressure, true, density);
            if (!(density > 0)) {
                return false;
            }
            for (int i = 0; i < n; i++) {
                partial[i] = trial[i] * density;
            }
            equation.evaluate(temperature, partial, state);
            double distance = 0;
            double sum = 0;
            double change = 0;
            for (int i = 0; i < n; i++) {
                double logNext = target[i] - Math.log(density) - state.first(i);
                distance += trial[i] * (Math.log(trial[i]) - logNext);
                change = Math.max(change, Math.abs(logNext - Math.log(trial[i])));
                next[i] = Math.exp(logNext);
                sum += next[i];
            }
            if (distance < NEGATIVE) {
                // inside the two-phase region the equations have false roots: only the liquid root met from a fresh
                // start proves anything
                double fresh = densities.density(trial, temperature, pressure, true, 0);
                if (Math.abs(Math.log(fresh / density)) < SAME_ROOT) {
                    return true;
                }
                if (!(fresh > density)) {
                    return false;
                }
                density = fresh;
                continue;
            }
            double shift = Math.abs(Math.log(sum));
            for (int i = 0; i < n; i++) {
                trial[i] = next[i] / sum;
            }
            if (!(change - shift > SETTLED)) {
                return false;
            }
        }
        return false;
    }
}
