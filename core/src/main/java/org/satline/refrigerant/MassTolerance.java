package org.satline.refrigerant;

/**
 * Permitted deviation of a component's mass fraction from the nominal one, as the blend is formulated.
 *
 * @param below largest deviation below, mass fraction, in [0, 1]
 * @param above largest deviation above, mass fraction, in [0, 1]
 */
public record MassTolerance(double below, double above) {
    /** {@inheritDoc} */
    public MassTolerance {
        if (!(below >= 0 && below <= 1 && above >= 0 && above <= 1)) {
            throw new IllegalArgumentException("mass tolerance -" + below + " +" + above
                    + " is outside [0, 1]; give both as positive fractions of the whole blend");
        }
    }
}
