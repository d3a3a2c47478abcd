package org.satline.charge.margin;

import java.util.Locale;
import org.satline.explanation.Coded;
import org.satline.quantity.TemperatureDifference;

/** The quantity by which a charge is judged. */
public enum Criterion implements Coded {
    /** Suction superheat: more charge lowers it. */
    SUPERHEAT(-1),
    /** Liquid subcooling: more charge raises it. */
    SUBCOOLING(1);

    private final int directionWithCharge;

    Criterion(int directionWithCharge) {
        this.directionWithCharge = directionWithCharge;
    }

    /**
     * Name in files and texts.
     *
     * @return {@code superheat} or {@code subcooling}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Which way the quantity moves when refrigerant is added.
     *
     * @return +1 if it rises, -1 if it falls
     */
    public int directionWithCharge() {
        return directionWithCharge;
    }

    /**
     * Returns the published half-width of the band around the target for the installer: 5 degF of superheat, 3 degF of subcooling
     * (California Energy Code, RA3.2, 2008).
     *
     * @return the tolerance
     */
    public TemperatureDifference publishedTolerance() {
        return PublishedLimits.tolerance(this);
    }
}
