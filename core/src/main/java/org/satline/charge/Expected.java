package org.satline.charge;

/**
 * What a quantity of one unit is while nothing is wrong with it.
 *
 * @param kelvins fault-free value, K; discharge: degC
 * @param standardUncertaintyK its standard uncertainty, K
 */
record Expected(double kelvins, double standardUncertaintyK) {}
