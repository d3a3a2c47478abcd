package org.satline.equation;

import org.satline.quantity.OutOfValidityException;

/**
 * An equation of state at fixed composition: the reduced molar Helmholtz energy {@code alpha(delta, tau)} in its ideal-gas and residual
 * parts. Implementations are immutable and thread-safe.
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
     * @param temperature T, K, 0.001 to 1e5
     * @param density rho, mol/m3, 1e-100 to 1e7
     * @param out receives the values
     * @throws OutOfValidityException if one of them is not a number or absurd; within these limits an equation computes what it is asked,
     *     also where the paper says nothing
     */
    void residual(double temperature, double density, ReducedHelmholtz out);

    /**
     * Computes the ideal-gas part and its derivatives. The zero of energy and entropy is arbitrary.
     *
     * @param temperature T, K, 0.001 to 1e5
     * @param density rho, mol/m3, 1e-100 to 1e7
     * @param out receives the values
     * @throws OutOfValidityException if one of them is not a number or absurd; within these limits an equation computes what it is asked,
     *     also where the paper says nothing
     */
    void ideal(double temperature, double density, ReducedHelmholtz out);

    /**
     * Tells whether a temperature and a density are some state at all, valid or not: not NaN, not negative, not absurd.
     *
     * @param temperature T, K
     * @param density rho, mol/m3
     * @return true if {@link #residual} and {@link #ideal} would compute it
     */
    static boolean isState(double temperature, double density) {
        return StateLimits.TEMPERATURE.contains(temperature) && StateLimits.DENSITY.contains(density);
    }
}
