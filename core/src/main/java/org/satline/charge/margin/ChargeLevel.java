package org.satline.charge.margin;

import java.util.Locale;
import org.satline.explanation.Coded;

/** How the charge of a system stands to its target. */
public enum ChargeLevel implements Coded {
    /** Less refrigerant than the target asks for. */
    LOW,
    /** Within the tolerance of the target. */
    ON_TARGET,
    /** More refrigerant than the target asks for. */
    HIGH;

    /**
     * Name in files and texts.
     *
     * @return {@code low}, {@code on-target} or {@code high}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
