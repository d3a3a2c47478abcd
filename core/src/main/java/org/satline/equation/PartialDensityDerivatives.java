package org.satline.equation;

/**
 * The residual Helmholtz energy density {@code Psi = rho alphar} of a mixture as a function of the partial molar densities
 * {@code rho_i} and of temperature, with the derivatives from which fugacities, pressure and their derivatives follow. Only a mixture
 * fills it, so that solvers can be answered again and again without a new object: for one thread at a time. Programs ask
 * {@code org.satline.equilibrium.FluidModel} instead, whose states are immutable.
 *
 * <p>{@code ln f_i = ln(rho_i R T) + Psi_i}, {@code p = rho R T Z}. Arrays are indexed as the components of the mixture.
 */
public final class PartialDensityDerivatives {
    double density;
    double z;
    double thermalPressure;
    double residualHelmholtz;
    double residualEnergy;
    double residualHeat;
    final double[] first;
    final double[] second;
    final double[] temperature;
    final double[] pressure;
    final double[] moleFractions;
    final ReducedHelmholtz mixture = new ReducedHelmholtz();
    final ReducedHelmholtz departure = new ReducedHelmholtz();
    final ReducedHelmholtz[] pure;
    final ReducedHelmholtz[] explicit;
    final ResidualTerms.ReducedState state = new ResidualTerms.ReducedState();
    final double[] volumeGradient;
    final double[] volumeHessian;
    final double[] temperatureGradient;
    final double[] temperatureHessian;

    /**
     * Creates a workspace.
     *
     * @param size number of components
     */
    public PartialDensityDerivatives(int size) {
        first = new double[size];
        second = new double[size * size];
        temperature = new double[size];
        pressure = new double[size];
        moleFractions = new double[size];
        pure = new ReducedHelmholtz[size];
        explicit = new ReducedHelmholtz[size];
        for (int i = 0; i < size; i++) {
            pure[i] = new ReducedHelmholtz();
            explicit[i] = new ReducedHelmholtz();
        }
        volumeGradient = new double[size];
        volumeHessian = new double[size * size];
        temperatureGradient = new double[size];
        temperatureHessian = new double[size * size];
    }

    /**
     * Returns the total density rho, mol/m3.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double density() {
        return density;
    }

    /**
     * Returns the compressibility factor Z, dimensionless.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double z() {
        return z;
    }

    /**
     * Returns {@code T dZ/dT + Z}: the derivative of {@code p/(rho R)} by temperature, dimensionless.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double thermalPressure() {
        return thermalPressure;
    }

    /**
     * Returns the residual Helmholtz energy over RT: {@code alphar}, dimensionless.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double residualHelmholtz() {
        return residualHelmholtz;
    }

    /**
     * Returns the residual internal energy over RT: {@code tau alphar_tau}, dimensionless.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double residualEnergy() {
        return residualEnergy;
    }

    /**
     * Returns the residual isochoric heat capacity over R: {@code -tau^2 alphar_tautau}, dimensionless.
     *
     * @return value; 0 before a mixture has filled it
     */
    public double residualHeat() {
        return residualHeat;
    }

    /**
     * Returns {@code Psi_i = dPsi/drho_i}.
     *
     * @param i component, in [0, number of components - 1]
     * @return value, dimensionless
     */
    public double first(int i) {
        return first[i];
    }

    /**
     * Returns {@code rho Psi_ij}.
     *
     * @param ij row i times the number of components plus column j
     * @return value, dimensionless
     */
    public double second(int ij) {
        return second[ij];
    }

    /**
     * Returns {@code T dPsi_i/dT}.
     *
     * @param i component, in [0, number of components - 1]
     * @return value, dimensionless
     */
    public double temperature(int i) {
        return temperature[i];
    }

    /**
     * Returns {@code (1/(R T)) dp/drho_i}.
     *
     * @param i component, in [0, number of components - 1]
     * @return value, dimensionless
     */
    public double pressure(int i) {
        return pressure[i];
    }

    /**
     * Returns the mole fraction x_i.
     *
     * @param i component, in [0, number of components - 1]
     * @return value, dimensionless
     */
    public double moleFraction(int i) {
        return moleFractions[i];
    }

    /**
     * Returns all mole fractions.
     *
     * @return x_i, a new array
     */
    public double[] moleFractions() {
        return moleFractions.clone();
    }
}
