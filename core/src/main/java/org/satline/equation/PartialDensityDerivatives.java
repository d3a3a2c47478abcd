package org.satline.equation;

/**
 * Scratch values: the residual Helmholtz energy density {@code Psi = rho alphar} of a mixture as a function of the partial molar densities
 * {@code rho_i} and of temperature, with the derivatives from which fugacities, pressure and their derivatives follow. Mutable, one thread
 * at a time.
 *
 * <p>{@code ln f_i = ln(rho_i R T) + Psi_i}, {@code p = rho R T Z}. Arrays are indexed as the components of the mixture.
 */
public final class PartialDensityDerivatives {
    /** Total density rho, mol/m3. */
    public double density;

    /** Compressibility factor Z, dimensionless. */
    public double z;

    /** {@code T dZ/dT + Z}: the derivative of {@code p/(rho R)} by temperature, dimensionless. */
    public double thermalPressure;

    /** Residual Helmholtz energy over RT: {@code alphar}, dimensionless. */
    public double residualHelmholtz;

    /** Residual internal energy over RT: {@code tau alphar_tau}, dimensionless. */
    public double residualEnergy;

    /** Residual isochoric heat capacity over R: {@code -tau^2 alphar_tautau}, dimensionless. */
    public double residualHeat;

    /** {@code Psi_i = dPsi/drho_i}, dimensionless. */
    public final double[] first;

    /** {@code rho Psi_ij}, row-major, dimensionless. */
    public final double[] second;

    /** {@code T dPsi_i/dT}, dimensionless. */
    public final double[] temperature;

    /** {@code (1/(R T)) dp/drho_j}, dimensionless. */
    public final double[] pressure;

    /** Mole fractions x_i. */
    public final double[] moleFractions;

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
}
