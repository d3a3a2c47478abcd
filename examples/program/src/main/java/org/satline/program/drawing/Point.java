package org.satline.program.drawing;

/**
 * A place in a drawing, in its units; y counts downwards.
 *
 * @param x to the right
 * @param y down
 */
public record Point(double x, double y) {}
