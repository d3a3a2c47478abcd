package org.satline.equilibrium;

import org.satline.equation.FixedComposition;
import org.satline.equation.ReducedHelmholtz;

/** Newton's method in ln T and ln rho for a homogeneous state of two given quantities. One thread at a time. */
final class HomogeneousNewton {
    private static final int MOST_ITERATIONS = 40;
    private static final double STEP_LIMIT = 1e-13;
    private static final double GOOD_STEP = 1e-10;
    private static final double LARGEST_TEMPERATURE_STEP = 0.1;
    private static final double LARGEST_DENSITY_STEP = 0.3;

    private final FixedComposition equation;
    private final ReducedHelmholtz ideal = new ReducedHelmholtz();
    private final ReducedHelmholtz residual = new ReducedHelmholtz();
    private double logT;
    private double logRho;
    private double stiffness;
    /** Residual of the quantity last set up, and its derivatives by ln T and ln rho. */
    private double miss;

    private double byT;
    private double byRho;

    HomogeneousNewton(FixedComposition equation) {
        this.equation = equation;
    }

    double temperature() {
        return Math.exp(logT);
    }

    double molarDensity() {
        return Math.exp(logRho);
    }

    /** Iterates from a state; true if a mechanically stable one was met. */
    boolean solve(double temperature, double rho, Given first, double firstValue, Given second, double secondValue) {
        logT = Math.log(temperature);
        logRho = Math.log(rho);
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            evaluate();
            set(first, firstValue);
            double f = miss;
            double ft = byT;
            double fr = byRho;
            set(second, secondValue);
            double determinant = ft * byRho - fr * byT;
            double stepT = (f * byRho - fr * miss) / determinant;
            double stepRho = (ft * miss - f * byT) / determinant;
            double size = Math.max(Math.abs(stepT), Math.abs(stepRho));
            if (!(size < Double.POSITIVE_INFINITY)) {
                return false;
            }
            double damping = Math.min(
                    1, Math.min(LARGEST_TEMPERATURE_STEP / Math.abs(stepT), LARGEST_DENSITY_STEP / Math.abs(stepRho)));
            logT -= damping * stepT;
            logRho -= damping * stepRho;
            if (size < STEP_LIMIT || (size < GOOD_STEP && size >= before)) {
                return stiffness > 0;
            }
            before = size;
        }
        return false;
    }

    /** Value of a quantity at a state, in the form of {@link Given}. */
    double value(double temperature, double rho, Given what) {
        logT = Math.log(temperature);
        logRho = Math.log(rho);
        evaluate();
        if (what == Given.TEMPERATURE) {
            return logT;
        }
        if (what == Given.DENSITY) {
            return logRho;
        }
        if (what == Given.PRESSURE) {
            return Math.log(rho * equation.gasConstant() * temperature * (1 + residual.ad()));
        }
        set(what, 0);
        return miss * (what == Given.ENTROPY ? equation.gasConstant() : equation.gasConstant() * temperature);
    }

    /** Derivative by ln rho at constant T of what {@link #value} computed last, over R or RT. */
    double densitySlope() {
        return byRho;
    }

    private void evaluate() {
        double temperature = Math.exp(logT);
        double rho = Math.exp(logRho);
        equation.ideal(temperature, rho, ideal);
        equation.residual(temperature, rho, residual);
        stiffness = 1 + 2 * residual.ad() + residual.add();
    }

    private void set(Given what, double value) {
        double heat = -(ideal.att() + residual.att());
        double energy = ideal.at() + residual.at();
        double z = 1 + residual.ad();
        double thermal = z - residual.adt();
        double rt = equation.gasConstant() * Math.exp(logT);
        switch (what) {
            case TEMPERATURE -> {
                miss = logT - value;
                byT = 1;
                byRho = 0;
            }
            case DENSITY -> {
                miss = logRho - value;
                byT = 0;
                byRho = 1;
            }
            case PRESSURE -> {
                double wanted = Math.exp(value - logRho) / rt;
                miss = z - wanted;
                byT = thermal - z + wanted;
                byRho = stiffness - z + wanted;
            }
            case ENTHALPY -> {
                miss = energy + z - value / rt;
                byT = heat + thermal - miss;
                byRho = residual.adt() + residual.ad() + residual.add();
            }
            case ENTROPY -> {
                miss = energy - ideal.a() - residual.a() - value / equation.gasConstant();
                byT = heat;
                byRho = -thermal;
            }
            case ENERGY -> {
                miss = energy - value / rt;
                byT = heat - miss;
                byRho = residual.adt();
            }
            case VAPOUR_FRACTION -> throw new IllegalArgumentException("one phase has no vapour fraction to solve for");
        }
    }
}
