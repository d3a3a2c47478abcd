/**
 * A steady-state model of an air conditioner on our own properties, for proofs, tests and teaching: what pressures and temperatures a
 * system shows at a given charge, weather and fault.
 *
 * <p>Read {@link org.satline.simulation.SimulatedSystem} first. It is a model: it shows directions and orders of magnitude, not any
 * machine.
 *
 * <p>Experimental: a model for proof and teaching, free to change in any release.
 */
@NullMarked
package org.satline.simulation;

import org.jspecify.annotations.NullMarked;
