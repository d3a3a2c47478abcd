/**
 * Equations of state: published Helmholtz-energy equations of pure substances and the multi-fluid mixture model built on them, with
 * analytic derivatives. Coefficients are resources beside this package, each with its citation. Nothing here iterates: solvers live in the
 * equilibrium room.
 *
 * <p>Read {@link org.satline.equation.HelmholtzEquation} first, then {@link org.satline.equation.MixtureEquation}. Symbols of the formulas:
 * {@code tau = Tr/T}, {@code delta = rho/rhor}, {@code alpha = a/(R T) = alpha0 + alphar}; all quantities molar and in SI units (K, Pa,
 * mol/m3, J/mol).
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.equation;

import org.jspecify.annotations.NullMarked;
