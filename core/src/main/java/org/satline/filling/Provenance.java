package org.satline.filling;

import org.satline.explanation.Coded;

/** Where refrigerant comes from. */
public enum Provenance implements Coded {
    /** New from the maker. */
    NEW,
    /** Brought to the purity of AHRI 700 by a certified reclaimer. */
    RECLAIMED,
    /** Out of a system, as it came. */
    RECOVERED,
    /** Out of several systems, or of several refrigerants, in one cylinder. */
    MIXED_RECOVERED;

    /**
     * Tells whether it has been in a system and was not reclaimed since.
     *
     * @return true for recovered refrigerant, mixed or not
     */
    public boolean isUsed() {
        return this == RECOVERED || this == MIXED_RECOVERED;
    }
}
