package org.satline.charge.margin;

import java.util.Locale;
import org.satline.explanation.Coded;

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
}
