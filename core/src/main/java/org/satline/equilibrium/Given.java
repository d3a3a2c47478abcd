package org.satline.equilibrium;

/** A quantity of the whole that a state is asked by, in the form that the iterations take. */
enum Given {
    /** ln of T in K. */
    TEMPERATURE,
    /** ln of p in Pa. */
    PRESSURE,
    /** ln of the molar density in mol/m3. */
    DENSITY,
    /** Vapour mass fraction. */
    VAPOUR_FRACTION,
    /** Molar, J/mol, from the zero of the equations. */
    ENTHALPY,
    /** Molar, J/(mol K), from the zero of the equations. */
    ENTROPY,
    /** Molar internal energy, J/mol, from the zero of the equations. */
    ENERGY;

    boolean isCaloric() {
        return this == ENTHALPY || this == ENTROPY || this == ENERGY;
    }
}
