package org.satline.equilibrium;

import org.satline.equation.HelmholtzEquation;
import org.satline.equation.ReducedHelmholtz;

/** Density at given temperature and pressure on one branch: liquid-like or vapour-like. One thread at a time. */
final class DensitySolver {
    private static final int MOST_ITERATIONS = 60;
    private static final double STEP_LIMIT = 2e-14;

    private static final int PIECES = 400;

    private final HelmholtzEquation equation;
    private final ReducedHelmholtz values = new ReducedHelmholtz();

    DensitySolver(HelmholtzEquation equation) {
        this.equation = equation;
    }

    /**
     * Newton's method in ln rho on the pressure, kept on the branch where pressure rises with density.
     *
     * @param temperature T, K
     * @param pressure p, Pa
     * @param guess starting density, mol/m3
     * @return density, mol/m3, or NaN if this branch was left or no root was met
     */
    double near(double temperature, double pressure, double guess) {
        double rt = equation.gasConstant() * temperature;
        double rho = guess;
        double previous = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            if (!HelmholtzEquation.isState(temperature, rho)) {
                return Double.NaN;
            }
            equation.residual(temperature, rho, values);
            double z = 1 + values.ad();
            double slope = 1 + 2 * values.ad() + values.add();
            if (!(slope > 0)) {
                return Double.NaN;
            }
            double step = (pressure / (rho * rt) - z) / slope;
            step = Math.max(-0.3, Math.min(0.3, step));
            rho *= Math.exp(step);
            double size = Math.abs(step);
            if (size < STEP_LIMIT || (size < 1e-10 && size >= previous)) {
                return rho;
            }
            previous = size;
        }
        return Double.NaN;
    }

    /**
     * Finds a liquid-like density from a rough estimate, on either side of the true value.
     *
     * @return density, mol/m3, or NaN
     */
    double liquid(double temperature, double pressure, double estimate) {
        for (double factor : new double[] {1, 1.1, 1.25, 1.5, 0.95, 0.9, 1.8}) {
            double rho = near(temperature, pressure, estimate * factor);
            if (rho > 0.5 * estimate) {
                return rho;
            }
        }
        return Double.NaN;
    }

    /**
     * Bisects in ln rho where pressure rises from below the wanted one to above it; the slow way that cannot fail.
     *
     * @return density, mol/m3, or NaN if the limits do not enclose the pressure
     */
    double bracketed(double temperature, double pressure, double low, double high) {
        double rt = equation.gasConstant() * temperature;
        double a = Math.log(low);
        double b = Math.log(high);
        if (!(pressureAt(temperature, low, rt) <= pressure)) {
            return Double.NaN;
        }
        for (int grow = 0; pressureAt(temperature, Math.exp(b), rt) < pressure; grow++) {
            if (grow == 20) {
                return Double.NaN;
            }
            b += 0.1;
        }
        while (b - a > 1e-4) {
            double middle = (a + b) / 2;
            if (pressureAt(temperature, Math.exp(middle), rt) <= pressure) {
                a = middle;
            } else {
                b = middle;
            }
        }
        double polished = near(temperature, pressure, Math.exp((a + b) / 2));
        return Math.abs(Math.log(polished) - a) < 1e-3 ? polished : halved(temperature, pressure, a, b);
    }

    /** Beside the critical point of the composition the isotherm is so flat that Newton's method creeps. */
    private double halved(double temperature, double pressure, double low, double high) {
        double rt = equation.gasConstant() * temperature;
        double a = low;
        double b = high;
        for (double middle = (a + b) / 2; middle > a && middle < b; middle = (a + b) / 2) {
            if (pressureAt(temperature, Math.exp(middle), rt) <= pressure) {
                a = middle;
            } else {
                b = middle;
            }
        }
        double rho = Math.exp(b);
        equation.residual(temperature, rho, values);
        return 1 + 2 * values.ad() + values.add() > 0 ? rho : Double.NaN;
    }

    /**
     * Looks for every root between two densities and takes that of the lowest Gibbs energy: where an isotherm of one composition has a loop
     * though two phases are not stable there.
     *
     * @return density, mol/m3, or NaN if there is no root
     */
    double stable(double temperature, double pressure, double low, double high) {
        double rt = equation.gasConstant() * temperature;
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        double step = Math.log(high / low) / PIECES;
        double before = pressureAt(temperature, low, rt) - pressure;
        for (int k = 1; k <= PIECES; k++) {
            double density = low * Math.exp(k * step);
            double here = pressureAt(temperature, density, rt) - pressure;
            if (before <= 0 && here > 0) {
                double root = near(temperature, pressure, density * Math.exp(-step / 2));
                root = root > 0 ? root : bracketed(temperature, pressure, density * Math.exp(-step), density);
                if (root > 0 && gibbs(temperature, root) < least) {
                    least = gibbs(temperature, root);
                    best = root;
                }
            }
            before = here;
        }
        return best;
    }

    /** Molar Gibbs energy over R T, up to a function of temperature and composition: tells roots of one pressure apart. */
    double gibbs(double temperature, double rho) {
        if (!HelmholtzEquation.isState(temperature, rho)) {
            return Double.NaN;
        }
        equation.residual(temperature, rho, values);
        return Math.log(rho) + values.a() + values.ad();
    }

    private double pressureAt(double temperature, double rho, double rt) {
        if (!HelmholtzEquation.isState(temperature, rho)) {
            return Double.NaN;
        }
        equation.residual(temperature, rho, values);
        return rho * rt * (1 + values.ad());
    }
}
