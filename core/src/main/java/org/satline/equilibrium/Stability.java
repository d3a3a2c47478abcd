package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.satline.equation.FixedComposition;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;

/**
 * Tells whether a homogeneous state is stable: the tangent-plane distance (Michelsen, Fluid Phase Equilibria 9 (1982) 1-19), here per
 * volume and as a function of the partial densities of a trial phase, {@code D = sum rho_i (mu_i - mu_i0)/RT - (p - p0)/RT}. Where it falls
 * below 0 a second phase forms. It is minimised by Newton's method from several starts: the phases met at the ends of the two-phase region,
 * a thin gas, liquids rich in each component. One thread at a time.
 */
final class Stability {
    private static final int MOST_ITERATIONS = 60;
    private static final double SETTLED = 1e-10;
    /** D over the density of the tested state below which the state is not stable: beyond the round-off of its sums. */
    private static final double NEGATIVE = -1e-11;

    private static final double NEARLY_PURE = 0.98;
    private static final double LARGEST_STEP = 0.5;

    private final FixedComposition composition;
    private final MixtureEquation equation;
    private final int n;
    private final double[] z;
    private final PartialDensityDerivatives state;
    private final FirstPoint roots;
    private final double[] target;
    private double pressure;
    private double density;
    private double[] trial;
    private double temperature;

    Stability(FixedComposition composition) {
        this.composition = composition;
        equation = composition.mixture();
        z = composition.moleFractions();
        n = z.length;
        state = new PartialDensityDerivatives(n);
        roots = new FirstPoint(equation, z, true, 0);
        target = new double[n];
        trial = new double[n];
    }

    /** True if no trial phase was found that would form. */
    boolean holds(double atTemperature, double molarDensity, List<StretchEnd> ends) {
        temperature = atTemperature;
        density = molarDensity;
        double[] rho = new double[n];
        for (int i = 0; i < n; i++) {
            rho[i] = z[i] * molarDensity;
        }
        equation.evaluate(temperature, rho, state);
        for (int i = 0; i < n; i++) {
            target[i] = Math.log(rho[i]) + state.first(i);
        }
        pressure = molarDensity * state.z();
        for (double[] start : starts(ends)) {
            if (forms(start)) {
                return false;
            }
        }
        return true;
    }

    private List<double[]> starts(List<StretchEnd> ends) {
        List<double[]> starts = new ArrayList<>();
        for (StretchEnd end : ends) {
            if (end.solved()) {
                starts.add(phase(end, 0));
                starts.add(phase(end, n));
            }
        }
        double gas = pressure;
        double liquid = composition.reducingDensity() * 2.5;
        starts.add(scaled(z, gas));
        starts.add(scaled(z, liquid));
        for (int k = 0; k < n; k++) {
            double[] rich = new double[n];
            for (int i = 0; i < n; i++) {
                rich[i] = i == k ? NEARLY_PURE : (1 - NEARLY_PURE) * z[i] / Math.max(1e-300, 1 - z[k]);
            }
            starts.add(scaled(rich, liquid));
            starts.add(scaled(rich, gas));
        }
        return starts;
    }

    private double[] phase(StretchEnd end, int from) {
        double[] rho = new double[n];
        for (int i = 0; i < n; i++) {
            rho[i] = Math.exp(end.x()[from + i]);
        }
        return rho;
    }

    private static double[] scaled(double[] x, double density) {
        double[] rho = x.clone();
        for (int i = 0; i < rho.length; i++) {
            rho[i] *= density;
        }
        return rho;
    }

    /** D at a trial phase; leaves derivatives in the state. */
    private double distance(double[] rho) {
        equation.evaluate(temperature, rho, state);
        double d = pressure - state.density() * state.z();
        for (int i = 0; i < n; i++) {
            d += rho[i] * (Math.log(rho[i]) + state.first(i) - target[i]);
        }
        return d;
    }

    /** Minimises in alpha_i = 2 sqrt(rho_i), in which an ideal gas has a unit matrix of second derivatives. */
    private boolean forms(double[] start) {
        double[] rho = start;
        double value = distance(rho);
        double scale = density;
        double[] gradient = new double[n];
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            if (value < NEGATIVE * scale) {
                return confirmed(rho);
            }
            double[][] matrix = new double[n][n];
            double size = 0;
            for (int i = 0; i < n; i++) {
                double difference = Math.log(rho[i]) + state.first(i) - target[i];
                gradient[i] = Math.sqrt(rho[i]) * difference;
                size = Math.max(size, Math.abs(gradient[i]) / Math.sqrt(scale));
                for (int j = 0; j < n; j++) {
                    matrix[i][j] = Math.sqrt(rho[i] * rho[j]) * state.second(i * n + j) / state.density();
                }
                matrix[i][i] += 1 + difference / 2;
            }
            if (size < SETTLED) {
                return false;
            }
            double @Nullable [] next = null;
            double nextValue = value;
            for (double shift = 0; shift < 1e6; shift = shift == 0 ? 0.1 : shift * 4) {
                double @Nullable [] step = step(matrix, gradient, shift);
                if (step == null) {
                    continue;
                }
                double[] attempt = moved(rho, step);
                double there = distance(attempt);
                if (there < value) {
                    next = attempt;
                    nextValue = there;
                    break;
                }
            }
            if (next == null) {
                return false;
            }
            rho = next;
            value = nextValue;
        }
        return false;
    }

    /**
     * Inside the two-phase region of a composition the equations have false minima: only a density of the trial's composition that is met
     * from the side of dense liquids or thin gases at the pressure of the state proves anything.
     */
    private boolean confirmed(double[] rho) {
        double sum = 0;
        for (double each : rho) {
            sum += each;
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = rho[i] / sum;
        }
        double pascals = pressure * equation.gasConstant() * temperature;
        for (boolean liquid : new boolean[] {true, false}) {
            double fresh = roots.density(x, temperature, pascals, liquid, 0);
            if (fresh > 0) {
                double[] attempt = scaled(x, fresh);
                if (distance(attempt) < NEGATIVE * density) {
                    trial = attempt;
                    return true;
                }
            }
        }
        return false;
    }

    private double[] moved(double[] rho, double[] step) {
        double[] attempt = new double[n];
        double damping = 1;
        for (int i = 0; i < n; i++) {
            damping = Math.min(damping, LARGEST_STEP * Math.sqrt(rho[i]) / Math.max(1e-300, Math.abs(step[i])));
        }
        for (int i = 0; i < n; i++) {
            double root = Math.sqrt(rho[i]) - damping * step[i] / 2;
            attempt[i] = root * root;
        }
        return attempt;
    }

    /** Newton's step with the diagonal raised; null where the matrix is not positive definite. */
    private double @Nullable [] step(double[][] matrix, double[] gradient, double shift) {
        double[][] factor = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j] + (i == j ? shift : 0);
                for (int k = 0; k < j; k++) {
                    sum -= factor[i][k] * factor[j][k];
                }
                if (i == j) {
                    if (!(sum > 1e-12)) {
                        return null;
                    }
                    factor[i][i] = Math.sqrt(sum);
                } else {
                    factor[i][j] = sum / factor[j][j];
                }
            }
        }
        double[] y = gradient.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                y[i] -= factor[i][k] * y[k];
            }
            y[i] /= factor[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                y[i] -= factor[k][i] * y[k];
            }
            y[i] /= factor[i][i];
        }
        return y;
    }

    /** Unknowns of {@link TwoPhaseNewton} from the tested state and the phase that would form. */
    void start(double[] x) {
        double other = 0;
        for (double rho : trial) {
            other += rho;
        }
        boolean forming = other > density;
        for (int i = 0; i < n; i++) {
            x[forming ? i : n + i] = Math.log(trial[i]);
            x[forming ? n + i : i] = Math.log(z[i] * density);
        }
        x[2 * n] = forming ? 0.95 : 0.05;
        x[2 * n + 1] = Math.log(temperature);
        x[2 * n + 2] = Math.log(density);
    }
}
