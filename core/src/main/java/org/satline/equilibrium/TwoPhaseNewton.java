package org.satline.equilibrium;

import java.util.Arrays;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;

/**
 * Newton's method for a two-phase state of given overall composition and two given quantities of {@link Given}.
 *
 * <p>Unknowns: logarithms of the partial densities of liquid and vapour, the vapour mole fraction, ln T and ln of the overall density.
 * Equations: equal fugacities, equal pressures, material balance, additivity of the volumes, and the two given quantities. Converged as
 * {@link IncipientPhase} says, balances within 1e-12. One thread at a time.
 */
final class TwoPhaseNewton {
    private static final double RESIDUAL_LIMIT = 1e-10;
    private static final double BALANCE_LIMIT = 1e-12;
    private static final double STEP_LIMIT = 1e-12;
    private static final int MOST_ITERATIONS = 50;
    private static final double LARGEST_STEP = 0.4;
    private static final double LARGEST_LIQUID_STEP = 0.03;

    private final MixtureEquation equation;
    private final double[] z;
    private final double[] molarMass;
    private final double meanMolarMass;
    private final int n;
    final double[] x;
    private final double[] residual;
    private final double[] step;
    private final double[][] jacobian;
    private final double[] liquid;
    private final double[] vapour;
    final PartialDensityDerivatives liquidState;
    final PartialDensityDerivatives vapourState;
    private final PhaseHeat liquidHeat;
    private final PhaseHeat vapourHeat;

    TwoPhaseNewton(MixtureEquation equation, double[] z) {
        this.equation = equation;
        this.z = z;
        n = z.length;
        molarMass = new double[n];
        double mean = 0;
        for (int i = 0; i < n; i++) {
            molarMass[i] = equation.components().get(i).molarMass();
            mean += z[i] * molarMass[i];
        }
        meanMolarMass = mean;
        int size = 2 * n + 3;
        x = new double[size];
        residual = new double[size];
        step = new double[size];
        jacobian = new double[size][size];
        liquid = new double[n];
        vapour = new double[n];
        liquidState = new PartialDensityDerivatives(n);
        vapourState = new PartialDensityDerivatives(n);
        liquidHeat = new PhaseHeat(equation);
        vapourHeat = new PhaseHeat(equation);
    }

    double vapourMoleFraction() {
        return x[2 * n];
    }

    double temperature() {
        return Math.exp(x[2 * n + 1]);
    }

    double density() {
        return Math.exp(x[2 * n + 2]);
    }

    double pressure() {
        return vapourState.density() * equation.gasConstant() * temperature() * vapourState.z();
    }

    double vapourMassFraction() {
        return vapourMoleFraction() * molarMassOf(vapourState) / meanMolarMass;
    }

    private double molarMassOf(PartialDensityDerivatives phase) {
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += phase.moleFraction(i) * molarMass[i];
        }
        return mean;
    }

    /** Iterates from the values in {@link #x}; true if converged to two different phases. */
    boolean solve(Given first, double firstValue, Given second, double secondValue) {
        boolean caloric = first.isCaloric() || second.isCaloric();
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            evaluate(caloric);
            given(2 * n + 1, first, firstValue);
            given(2 * n + 2, second, secondValue);
            double equilibrium = worst(0, n + 1);
            double balance = worst(n + 1, residual.length);
            System.arraycopy(residual, 0, step, 0, step.length);
            if (!LinearSystem.solve(jacobian, step)) {
                return false;
            }
            double largest = 0;
            for (double s : step) {
                largest = Math.max(largest, Math.abs(s));
            }
            if (!(largest < Double.POSITIVE_INFINITY)) {
                return false;
            }
            if (equilibrium < RESIDUAL_LIMIT && balance < BALANCE_LIMIT && largest < STEP_LIMIT * 1e3) {
                return Math.log(liquidState.density() / vapourState.density()) > 1e-4;
            }
            double damping = damping(largest);
            for (int i = 0; i < x.length; i++) {
                x[i] -= damping * step[i];
            }
        }
        return false;
    }

    /** Keeps the liquid near its root: at low temperature an isotherm can have a false one at a lower density. */
    private double damping(double largest) {
        double liquidStep = 0;
        for (int i = 0; i < n; i++) {
            liquidStep += liquidState.moleFraction(i) * step[i];
        }
        double damping = largest > LARGEST_STEP ? LARGEST_STEP / largest : 1;
        double liquidSize = Math.abs(liquidStep) * damping;
        return liquidSize > LARGEST_LIQUID_STEP ? damping * LARGEST_LIQUID_STEP / liquidSize : damping;
    }

    private double worst(int from, int to) {
        double worst = 0;
        for (int i = from; i < to; i++) {
            worst = Math.max(worst, Math.abs(residual[i]));
        }
        return worst;
    }

    private void evaluate(boolean caloric) {
        double temperature = temperature();
        for (int i = 0; i < n; i++) {
            liquid[i] = Math.exp(x[i]);
            vapour[i] = Math.exp(x[n + i]);
        }
        equation.evaluate(temperature, liquid, liquidState);
        equation.evaluate(temperature, vapour, vapourState);
        for (double[] row : jacobian) {
            Arrays.fill(row, 0);
        }
        fugacities();
        pressures();
        materialBalance();
        if (caloric) {
            liquidHeat.evaluate(temperature, liquid, liquidState);
            vapourHeat.evaluate(temperature, vapour, vapourState);
        }
    }

    private void fugacities() {
        PartialDensityDerivatives l = liquidState;
        PartialDensityDerivatives v = vapourState;
        for (int i = 0; i < n; i++) {
            double[] row = jacobian[i];
            residual[i] = x[i] + l.first(i) - x[n + i] - v.first(i);
            for (int j = 0; j < n; j++) {
                row[j] = l.moleFraction(j) * l.second(i * n + j);
                row[n + j] = -v.moleFraction(j) * v.second(i * n + j);
            }
            row[i] += 1;
            row[n + i] -= 1;
            row[2 * n + 1] = l.temperature(i) - v.temperature(i);
        }
    }

    private void pressures() {
        PartialDensityDerivatives l = liquidState;
        PartialDensityDerivatives v = vapourState;
        double ratio = v.density() / l.density();
        double[] row = jacobian[n];
        residual[n] = l.z() - ratio * v.z();
        for (int j = 0; j < n; j++) {
            row[j] = l.moleFraction(j) * l.pressure(j);
            row[n + j] = -ratio * v.moleFraction(j) * v.pressure(j);
        }
        row[2 * n + 1] = l.thermalPressure() - l.z() - ratio * (v.thermalPressure() - v.z());
    }

    /** n - 1 balances, since mole fractions of a phase add up to 1 by themselves, and the volumes. */
    private void materialBalance() {
        double beta = vapourMoleFraction();
        PartialDensityDerivatives l = liquidState;
        PartialDensityDerivatives v = vapourState;
        for (int i = 0; i < n - 1; i++) {
            double[] row = jacobian[n + 1 + i];
            residual[n + 1 + i] = (1 - beta) * l.moleFraction(i) + beta * v.moleFraction(i) - z[i];
            for (int j = 0; j < n; j++) {
                row[j] = -(1 - beta) * l.moleFraction(i) * l.moleFraction(j);
                row[n + j] = -beta * v.moleFraction(i) * v.moleFraction(j);
            }
            row[i] += (1 - beta) * l.moleFraction(i);
            row[n + i] += beta * v.moleFraction(i);
            row[2 * n] = v.moleFraction(i) - l.moleFraction(i);
        }
        double liquidVolume = density() / liquidState.density();
        double vapourVolume = density() / vapourState.density();
        double[] row = jacobian[2 * n];
        residual[2 * n] = (1 - beta) * liquidVolume + beta * vapourVolume - 1;
        for (int j = 0; j < n; j++) {
            row[j] = -(1 - beta) * liquidVolume * l.moleFraction(j);
            row[n + j] = -beta * vapourVolume * v.moleFraction(j);
        }
        row[2 * n] = vapourVolume - liquidVolume;
        row[2 * n + 2] = (1 - beta) * liquidVolume + beta * vapourVolume;
    }

    private void given(int k, Given what, double value) {
        double[] row = jacobian[k];
        PartialDensityDerivatives v = vapourState;
        switch (what) {
            case TEMPERATURE -> {
                residual[k] = x[2 * n + 1] - value;
                row[2 * n + 1] = 1;
            }
            case PRESSURE -> {
                residual[k] = Math.log(pressure()) - value;
                for (int j = 0; j < n; j++) {
                    row[n + j] = v.moleFraction(j) * v.pressure(j) / v.z();
                }
                row[2 * n + 1] = v.thermalPressure() / v.z();
            }
            case DENSITY -> {
                residual[k] = x[2 * n + 2] - value;
                row[2 * n + 2] = 1;
            }
            case VAPOUR_FRACTION -> {
                double vapourMass = molarMassOf(v);
                residual[k] = vapourMassFraction() - value;
                row[2 * n] = vapourMass / meanMolarMass;
                for (int j = 0; j < n; j++) {
                    row[n + j] = vapourMoleFraction() * v.moleFraction(j) * (molarMass[j] - vapourMass) / meanMolarMass;
                }
            }
            case ENTHALPY, ENTROPY, ENERGY -> caloric(k, what, value);
        }
    }

    private void caloric(int k, Given what, double value) {
        double[] row = jacobian[k];
        double beta = vapourMoleFraction();
        double unit = what == Given.ENTROPY ? equation.gasConstant() : equation.gasConstant() * temperature();
        double given = value / unit;
        double ofLiquid = liquidHeat.value(what);
        double ofVapour = vapourHeat.value(what);
        residual[k] = (1 - beta) * ofLiquid + beta * ofVapour - given;
        for (int j = 0; j < n; j++) {
            row[j] = (1 - beta) * liquidHeat.slope(what, j);
            row[n + j] = beta * vapourHeat.slope(what, j);
        }
        row[2 * n] = ofVapour - ofLiquid;
        row[2 * n + 1] = (1 - beta) * liquidHeat.temperatureSlope(what)
                + beta * vapourHeat.temperatureSlope(what)
                - (what == Given.ENTROPY ? 0 : residual[k]);
    }

    /** Value of a quantity of the whole, molar, from the zero of the equations, at the state last evaluated with it. */
    double overall(Given what) {
        liquidHeat.evaluate(temperature(), liquid, liquidState);
        vapourHeat.evaluate(temperature(), vapour, vapourState);
        double unit = what == Given.ENTROPY ? equation.gasConstant() : equation.gasConstant() * temperature();
        double beta = vapourMoleFraction();
        return unit * ((1 - beta) * liquidHeat.value(what) + beta * vapourHeat.value(what));
    }
}
