package org.satline.equation;

import java.util.List;

/**
 * The multi-fluid model of a mixture of given substances at any composition (Kunz and Wagner 2012; Lemmon and Jacobsen 2004). Immutable and
 * thread-safe. One substance alone is a mixture of one component and keeps its own gas constant.
 *
 * <p>With partial densities as variables
 * {@code Psi = sum rho_i alpha_i(delta, tau) + sum_{i<j} (rho_i rho_j/rho) F_ij alpha_ij(delta, tau)}.
 */
public final class MixtureEquation {
    /** Gas constant of every mixture, J/(mol K): CODATA 2018, exact to the digits given. */
    public static final double MIXTURE_GAS_CONSTANT = 8.314462618;

    private final List<PureEquation> components;
    private final PureEquation[] pure;
    private final List<PairInteraction> pairs;
    private final double gasConstant;
    private final ReducingFunction reducingVolume;
    private final ReducingFunction reducingTemperature;
    private final Departure[] departures;

    /** A departure function acting between components i and j. */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
    private record Departure(int i, int j, double factor, ResidualTerms[] terms) {}

    MixtureEquation(List<PureEquation> components, List<PairInteraction> pairs, PairLibrary library) {
        this.components = List.copyOf(components);
        this.pure = components.toArray(new PureEquation[0]);
        this.pairs = List.copyOf(pairs);
        this.gasConstant = pure.length == 1 ? pure[0].gasConstant() : MIXTURE_GAS_CONSTANT;
        int n = pure.length;
        double[] volumes = new double[n];
        double[] temperatures = new double[n];
        for (int i = 0; i < n; i++) {
            volumes[i] = 1 / pure[i].reducingDensity();
            temperatures[i] = pure[i].reducingTemperature();
        }
        double[] volumeFactors = new double[n * n];
        double[] temperatureFactors = new double[n * n];
        double[] volumeBetas = new double[n * n];
        double[] temperatureBetas = new double[n * n];
        int k = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                PairInteraction pair = pairs.get(k++);
                int ij = i * n + j;
                double edge = Math.cbrt(volumes[i]) + Math.cbrt(volumes[j]);
                volumeFactors[ij] = 2 * pair.betaV() * pair.gammaV() * edge * edge * edge / 8;
                temperatureFactors[ij] =
                        2 * pair.betaT() * pair.gammaT() * Math.sqrt(temperatures[i] * temperatures[j]);
                volumeBetas[ij] = pair.betaV();
                temperatureBetas[ij] = pair.betaT();
            }
        }
        reducingVolume = new ReducingFunction(volumes, volumeFactors, volumeBetas);
        reducingTemperature = new ReducingFunction(temperatures, temperatureFactors, temperatureBetas);
        departures = departures(pairs, n, library);
    }

    private static Departure[] departures(List<PairInteraction> pairs, int n, PairLibrary library) {
        Departure[] found = new Departure[pairs.size()];
        int count = 0;
        int k = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                PairInteraction pair = pairs.get(k++);
                if (pair.departureFactor() != 0 && pair.departureName().isPresent()) {
                    ResidualTerms[] terms =
                            library.departure(pair.departureName().get());
                    found[count++] = new Departure(i, j, pair.departureFactor(), terms);
                }
            }
        }
        return java.util.Arrays.copyOf(found, count);
    }

    /**
     * Returns the number of components.
     *
     * @return number, at least 1
     */
    public int size() {
        return pure.length;
    }

    /**
     * Returns the equations of the components.
     *
     * @return equations in the order of all composition arrays
     */
    public List<PureEquation> components() {
        return components;
    }

    /**
     * Returns the interactions of all pairs.
     *
     * @return pairs (0,1), (0,2) ... (1,2) ...
     */
    public List<PairInteraction> pairs() {
        return pairs;
    }

    /**
     * Returns the gas constant.
     *
     * @return R, J/(mol K)
     */
    public double gasConstant() {
        return gasConstant;
    }

    /**
     * Fixes the composition.
     *
     * @param moleFractions x_i, at least 0, sum 1; copied
     * @return the equation of that composition
     * @throws IllegalArgumentException if there are too few or too many, one is outside 0 to 1, or their sum is not 1 within 1e-6
     */
    public FixedComposition at(double[] moleFractions) {
        return new FixedComposition(this, moleFractions);
    }

    double reducingVolume(double[] x) {
        return reducingVolume.value(x);
    }

    double reducingTemperature(double[] x) {
        return reducingTemperature.value(x);
    }

    /** Residual part at fixed composition and reduced variables. */
    void residual(double[] x, ResidualTerms.ReducedState state, ReducedHelmholtz scratch, ReducedHelmholtz out) {
        out.clear();
        for (int i = 0; i < pure.length; i++) {
            if (x[i] > 0) {
                pure[i].residual(state, scratch);
                out.add(x[i], scratch);
            }
        }
        for (Departure d : departures) {
            double weight = x[d.i] * x[d.j] * d.factor;
            if (weight != 0) {
                evaluate(d.terms, state, scratch);
                out.add(weight, scratch);
            }
        }
    }

    private static void evaluate(ResidualTerms[] terms, ResidualTerms.ReducedState state, ReducedHelmholtz out) {
        out.clear();
        for (ResidualTerms group : terms) {
            group.addTo(state, out);
        }
    }

    /**
     * Computes fugacities, pressure and all their first derivatives at given partial densities. For solvers: what is no state, such as a
     * negative density on the way to a solution, gives NaN.
     *
     * @param temperature T, K
     * @param partialDensities rho_i, mol/m3, each above 0
     * @param out receives the values
     * @throws IllegalArgumentException if the arrays are not of the size of this mixture
     */
    public void evaluate(double temperature, double[] partialDensities, PartialDensityDerivatives out) {
        int n = pure.length;
        if (partialDensities.length != n || out.first.length != n) {
            throw new IllegalArgumentException(partialDensities.length + " partial densities and a workspace for "
                    + out.first.length + " components; this mixture has " + n);
        }
        double rho = 0;
        for (int i = 0; i < n; i++) {
            rho += partialDensities[i];
        }
        double[] x = out.moleFractions;
        for (int i = 0; i < n; i++) {
            x[i] = partialDensities[i] / rho;
        }
        out.density = rho;
        double[] vg = out.volumeGradient;
        double[] vh = out.volumeHessian;
        double[] tg = out.temperatureGradient;
        double[] th = out.temperatureHessian;
        double volume = reducingVolume.evaluate(x, vg, vh);
        double reducing = reducingTemperature.evaluate(x, tg, th);
        out.state.set(rho * volume, reducing / temperature);
        explicitParts(x, out);

        // Scaled derivatives of ln delta and ln tau by partial density: L_k = v_k/v - 1, M_k = t_k/t - 2.
        for (int i = 0; i < n; i++) {
            vg[i] = vg[i] / volume - 1;
            tg[i] = tg[i] / reducing - 2;
        }
        ReducedHelmholtz a = out.mixture;
        for (int k = 0; k < n; k++) {
            ReducedHelmholtz e = out.explicit[k];
            out.first[k] = e.a + a.ad * vg[k] + a.at * tg[k];
            out.temperature[k] = -(e.at + a.adt * vg[k] + (a.att + a.at) * tg[k]);
        }
        secondDerivatives(volume, reducing, out);
        out.z = 1 + a.ad;
        out.thermalPressure = 1 + a.ad - a.adt;
        out.residualHelmholtz = a.a;
        out.residualEnergy = a.at;
        out.residualHeat = -a.att;
        for (int j = 0; j < n; j++) {
            double sum = 1;
            for (int i = 0; i < n; i++) {
                sum += x[i] * out.second[i * n + j];
            }
            out.pressure[j] = sum;
        }
    }

    /** Fills e_k, the derivative of Psi by rho_k at constant delta and tau, and the mixture sums. */
    private void explicitParts(double[] x, PartialDensityDerivatives out) {
        ReducedHelmholtz mixture = out.mixture;
        mixture.clear();
        for (int i = 0; i < pure.length; i++) {
            pure[i].residual(out.state, out.pure[i]);
            mixture.add(x[i], out.pure[i]);
            out.explicit[i].clear();
            out.explicit[i].add(1, out.pure[i]);
        }
        for (int i = 0; i < out.second.length; i++) {
            out.second[i] = 0;
        }
        if (departures.length == 0) {
            return;
        }
        int n = pure.length;
        ReducedHelmholtz scratch = out.departure;
        for (Departure d : departures) {
            evaluate(d.terms, out.state, scratch);
            double weight = x[d.i] * x[d.j] * d.factor;
            mixture.add(weight, scratch);
            for (int k = 0; k < n; k++) {
                out.explicit[k].add(-weight, scratch);
            }
            out.explicit[d.i].add(x[d.j] * d.factor, scratch);
            out.explicit[d.j].add(x[d.i] * d.factor, scratch);
            curvature(d, x, scratch.a, out.second);
        }
    }

    /** Adds rho times the second derivatives of rho_i rho_j / rho, times F alpha_ij. */
    private void curvature(Departure d, double[] x, double a, double[] second) {
        int n = pure.length;
        double fa = d.factor * a;
        double xx = x[d.i] * x[d.j];
        for (int k = 0; k < n; k++) {
            double gk = k == d.i ? x[d.j] : k == d.j ? x[d.i] : 0;
            for (int l = 0; l < n; l++) {
                double gl = l == d.i ? x[d.j] : l == d.j ? x[d.i] : 0;
                boolean mixed = (k == d.i && l == d.j) || (k == d.j && l == d.i);
                second[k * n + l] += fa * ((mixed ? 1 : 0) - gk - gl + 2 * xx);
            }
        }
    }

    private void secondDerivatives(double volume, double reducing, PartialDensityDerivatives out) {
        int n = pure.length;
        ReducedHelmholtz a = out.mixture;
        double[] l = out.volumeGradient;
        double[] m = out.temperatureGradient;
        for (int k = 0; k < n; k++) {
            ReducedHelmholtz ek = out.explicit[k];
            for (int j = k; j < n; j++) {
                ReducedHelmholtz ej = out.explicit[j];
                int kj = k * n + j;
                // v_kj/v - (v_k + v_j)/v + 2 and t_kj/t - 2 (t_k + t_j)/t + 6, with v_k/v = L_k + 1 and t_k/t = M_k + 2
                double lkj = out.volumeHessian[kj] / volume - l[k] - l[j];
                double mkj = out.temperatureHessian[kj] / reducing - 2 * (m[k] + m[j]) - 2;
                double value = out.second[kj]
                        + ek.ad * l[j]
                        + ek.at * m[j]
                        + ej.ad * l[k]
                        + ej.at * m[k]
                        + a.add * l[k] * l[j]
                        + a.adt * (l[k] * m[j] + l[j] * m[k])
                        + a.att * m[k] * m[j]
                        + a.ad * lkj
                        + a.at * mkj;
                out.second[kj] = value;
                out.second[j * n + k] = value;
            }
        }
    }
}
