package org.satline.charge;

import org.satline.explanation.Coded;

/** How the charge of a system stands to its target. */
public enum ChargeLevel implements Coded {
    /** Less refrigerant than the target asks for. */
    LOW("low"),
    /** Within the tolerance of the target. */
    ON_TARGET("on-target"),
    /** More refrigerant than the target asks for. */
    HIGH("high");

    private final String label;

    ChargeLevel(String label) {
        this.label = label;
    }

    /**
     * Name in files and texts.
     *
     * @return {@code low}, {@code on-target} or {@code high}
     */
    public String label() {
        return label;
    }
}
