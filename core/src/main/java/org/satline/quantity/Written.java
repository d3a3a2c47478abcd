package org.satline.quantity;

/**
 * A number with its unit, as written.
 *
 * @param value the number, finite
 * @param unit the unit
 */
record Written(double value, Unit unit) {}
