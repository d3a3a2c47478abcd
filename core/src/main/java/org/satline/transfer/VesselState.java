package org.satline.transfer;

/** The pressure in a vessel against the atmosphere, as far as a purge depends on it. */
public enum VesselState {
    /** Under vacuum. */
    EVACUATED,
    /** Refrigerant below the pressure of the atmosphere. */
    BELOW_ATMOSPHERE,
    /** Refrigerant above the pressure of the atmosphere. */
    PRESSURISED;

    /**
     * Tells whether gas would leave the vessel through a loose joint, and not air go in.
     *
     * @return true above the atmosphere
     */
    public boolean canPush() {
        return this == PRESSURISED;
    }
}
