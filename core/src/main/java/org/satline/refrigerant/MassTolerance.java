package org.satline.refrigerant;

/**
 * Permitted deviation of a component's mass fraction from the nominal one.
 *
 * @param below largest deviation below, mass fraction, at least 0
 * @param above largest deviation above, mass fraction, at least 0
 */
public record MassTolerance(double below, double above) {}
