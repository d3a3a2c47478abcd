package org.satline.equilibrium;

/** Tells the caller within this package that the state asked for lies beyond an end of the isotherm or isobar. Carries no stack. */
final class BeyondRangeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    final double low;
    final double high;

    /** Values at both ends of the line, in the form of {@link Given}. */
    BeyondRangeException(double low, double high) {
        super("beyond the range of the line", null, false, false);
        this.low = low;
        this.high = high;
    }
}
