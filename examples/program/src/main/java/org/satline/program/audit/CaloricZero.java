package org.satline.program.audit;

import org.satline.equilibrium.ReferenceState;

/** Where enthalpy and entropy of another calculator's answers count from, by the words of the program and of the page. */
public enum CaloricZero {
    /** The IIR reference state. */
    IIR,
    /** Saturated liquid at -40 degC. */
    MINUS_40,
    /** Saturated liquid at its normal boiling point. */
    BOILING;

    /** {@return the reference state} */
    public ReferenceState state() {
        return switch (this) {
            case IIR -> ReferenceState.IIR;
            case MINUS_40 -> ReferenceState.MINUS_40_CELSIUS;
            case BOILING -> ReferenceState.NORMAL_BOILING_POINT;
        };
    }
}
