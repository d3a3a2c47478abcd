package org.satline.program.visit;

/** How much of a visit a page shows. */
public enum Detail {
    /** What matters beside the running unit. */
    SHORT,
    /** Everything but derivations and rules that do not apply. */
    FULL,
    /** Everything. */
    EXPLAINED
}
