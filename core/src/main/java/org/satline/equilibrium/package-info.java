/**
 * Phase equilibrium: saturation of pure substances, bubble and dew points of blends, single-phase and two-phase states, reference states.
 * Solvers live here and nowhere else; every answer meets the convergence criterion that {@link org.satline.equilibrium.IncipientPhase}
 * states.
 *
 * <p>Read {@link org.satline.equilibrium.FluidModel} first.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.equilibrium;

import org.jspecify.annotations.NullMarked;
