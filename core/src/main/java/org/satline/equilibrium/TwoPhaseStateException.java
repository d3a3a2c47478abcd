package org.satline.equilibrium;

import java.util.Locale;
import org.satline.SatlineException;

/** A one-phase state was asked for where liquid and vapour are both present. */
public final class TwoPhaseStateException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Dew pressure at the temperature asked for, Pa. */
    private final double dewPressurePa;

    /** Bubble pressure at the temperature asked for, Pa. */
    private final double bubblePressurePa;

    TwoPhaseStateException(
            String designation, double temperatureK, double pressurePa, double dewPressurePa, double bubblePressurePa) {
        super(String.format(
                Locale.ROOT,
                "%s at %s K and %s Pa is a mixture of liquid and vapour, which are present in [%.9g, %.9g] Pa at"
                        + " that temperature;"
                        + " ask for a saturation quantity, or give another pressure",
                designation,
                temperatureK,
                pressurePa,
                dewPressurePa,
                bubblePressurePa));
        this.dewPressurePa = dewPressurePa;
        this.bubblePressurePa = bubblePressurePa;
    }

    /**
     * Returns the dew pressure at the temperature asked for.
     *
     * @return Pa
     */
    public double dewPressurePa() {
        return dewPressurePa;
    }

    /**
     * Returns the bubble pressure at the temperature asked for.
     *
     * @return Pa
     */
    public double bubblePressurePa() {
        return bubblePressurePa;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
