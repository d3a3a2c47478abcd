package org.satline.certificate;

import org.satline.equation.FixedComposition;
import org.satline.equation.ReducedHelmholtz;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;

/** The least Gibbs energy of one phase at a temperature and pressure, found without the library's solvers: every density of a fine grid. */
public final class OnePhaseGibbs {
    private static final int GRID = 4000;
    private static final int HALVINGS = 50;

    private final FluidModel model;
    private final double temperature;
    private final double pressure;
    private final FixedComposition equation;
    private final ReducedHelmholtz values = new ReducedHelmholtz();

    private OnePhaseGibbs(FluidModel model, double temperature, double pressure) {
        this.model = model;
        this.temperature = temperature;
        this.pressure = pressure;
        this.equation = model.equation();
    }

    /**
     * Returns the least specific Gibbs energy, J/kg, counted from the model's reference state.
     *
     * @param model the refrigerant
     * @param temperature T, K
     * @param pressure p, Pa
     */
    public static double least(FluidModel model, double temperature, double pressure) {
        return new OnePhaseGibbs(model, temperature, pressure).least();
    }

    private double least() {
        double most = 3 * equation.reducingDensity();
        double least = Double.POSITIVE_INFINITY;
        double before = excess(most / GRID / 10);
        double at = most / GRID / 10;
        for (int k = 1; k <= GRID; k++) {
            double next = most * k / GRID;
            double there = excess(next);
            if (before * there <= 0) {
                least = Math.min(least, gibbs(root(at, next)));
            }
            before = there;
            at = next;
        }
        return least + shift();
    }

    private double root(double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (excess(low) * excess(middle) <= 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    private double excess(double rho) {
        equation.residual(temperature, rho, values);
        return rho * equation.gasConstant() * temperature * (1 + values.ad()) - pressure;
    }

    /** J/kg from the zero of the equation. */
    private double gibbs(double rho) {
        equation.residual(temperature, rho, values);
        double residual = 1 + values.ad() + values.a();
        equation.ideal(temperature, rho, values);
        return equation.gasConstant() * temperature / equation.molarMass() * (residual + values.a());
    }

    /** From the zero of the equation to the reference state, read off one thin gas that nothing has to be solved for. */
    private double shift() {
        PhaseSplit thin = model.states().atTemperatureAndDensity(temperature, 1e-6);
        return thin.vapour().orElseThrow().specificGibbsEnergy() - gibbs(1e-6 / equation.molarMass());
    }
}
