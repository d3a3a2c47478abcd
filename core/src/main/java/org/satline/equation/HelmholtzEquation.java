package org.satline.equation;

/**
 * An equation of state at fixed composition: the reduced molar Helmholtz energy {@code alpha(delta, tau)} in its ideal-gas and residual parts.
 * Implementations are immutable and thread-safe.
 */
public interface HelmholtzEquation {
    /**
     * Returns the molar mass {@code M}.
     *
     * @return molar mass, kg/mol
     */
    double molarMass();

    /**
     * Returns the gas constant {@code R} that belongs to the equation.
     *
     * @return gas constant, J/(mol K)
     */
    double gasConstant();

    /**
     * Returns the reducing temperature {@code Tr}; it need not be a critical temperature.
     *
     * @return reducing temperature, K
     */
    double reducingTemperature();

    /**
     * Returns the reducing density {@code rhor}; it need not be a critical density.
     *
     * @return reducing density, mol/m3
     */
    double reducingDensity();

    /**
     * Computes the residual part and its derivatives.
     *
     * @param temperature T, K, above 0
     * @param density rho, mol/m3, above 0
     * @param out receives the values
     */
    void residual(double temperature, double density, ReducedHelmholtz out);

    /**
     * Computes the ideal-gas part and its derivatives. The zero of energy and entropy is arbitrary.
     *
     * @param temperature T, K, above 0
     * @param density rho, mol/m3, above 0
     * @param out receives the values
     */
    void ideal(double temperature, double density, ReducedHelmholtz out);
}
