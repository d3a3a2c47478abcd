package org.satline.refrigerant;

/**
 * Safety group of ISO 817 and ANSI/ASHRAE 34: toxicity A (lower) or B (higher), flammability 1 (none), 2L, 2 or 3.
 */
public enum SafetyGroup {
    /** Lower toxicity, no flame propagation. */
    A1,
    /** Lower toxicity, lower flammability, slow burning. */
    A2L,
    /** Lower toxicity, lower flammability. */
    A2,
    /** Lower toxicity, higher flammability. */
    A3,
    /** Higher toxicity, no flame propagation. */
    B1,
    /** Higher toxicity, lower flammability, slow burning. */
    B2L,
    /** Higher toxicity, lower flammability. */
    B2,
    /** Higher toxicity, higher flammability. */
    B3;

    /**
     * Tells whether the group burns.
     *
     * @return true for 2L, 2 and 3
     */
    public boolean isFlammable() {
        return this != A1 && this != B1;
    }

    /**
     * Tells whether the group is of higher toxicity.
     *
     * @return true for B
     */
    public boolean isToxic() {
        return name().charAt(0) == 'B';
    }
}
