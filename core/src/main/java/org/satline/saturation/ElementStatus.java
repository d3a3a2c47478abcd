package org.satline.saturation;

/** How one element of a bulk answer came out. */
public enum ElementStatus {
    /** It has a value. */
    ANSWERED,
    /** The input was NaN, which stands for not read. */
    NOT_GIVEN,
    /** The input lies outside the line, or is not finite. */
    OUTSIDE,
    /** The input lies within the line, but its equation was not solved. */
    NOT_CONVERGED
}
