package org.satline.equilibrium;

/** Tells the caller within this package that the state asked for lies beyond an end of the isotherm or isobar. Carries no stack. */
final class BeyondRangeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    final double low;
    final double high;
    /** True if the entropy lies beyond every isentrope; the values are entropies then. */
    final boolean ofEntropy;

    /** Values at both ends of the line, in the form of {@link Given}. */
    BeyondRangeException(double low, double high) {
        this(low, high, false);
    }

    private BeyondRangeException(double low, double high, boolean ofEntropy) {
        super("beyond the range of the line", null, false, false);
        this.low = low;
        this.high = high;
        this.ofEntropy = ofEntropy;
    }

    static BeyondRangeException ofEntropy(double low, double high) {
        return new BeyondRangeException(low, high, true);
    }
}
