package org.satline.equilibrium;

import java.util.Locale;
import org.satline.SatlineException;

/** A state was asked for at which the substance is solid: its pressure lies above the published melting line. */
public final class SolidStateException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Melting pressure at the temperature of the state, Pa. */
    private final double meltingPressurePa;

    SolidStateException(
            String designation, double temperatureK, double pressurePa, double meltingPressurePa, String source) {
        super(String.format(
                Locale.ROOT,
                "%s at %s K and %s Pa is solid: the pressure is outside [0, %.6g] Pa, which ends at its melting line"
                        + " (%s);"
                        + " give a lower pressure or a higher temperature",
                designation,
                temperatureK,
                pressurePa,
                meltingPressurePa,
                source));
        this.meltingPressurePa = meltingPressurePa;
    }

    /**
     * Returns the melting pressure at the temperature of the state.
     *
     * @return Pa
     */
    public double meltingPressurePa() {
        return meltingPressurePa;
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
