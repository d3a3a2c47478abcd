package org.satline.equilibrium;

/**
 * A closed interval in the SI unit of its quantity.
 *
 * @param low lower limit
 * @param high upper limit
 */
public record Range(double low, double high) {}
