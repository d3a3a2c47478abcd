package org.satline.program.audit;

import org.satline.equilibrium.ReferenceState;

/** Where enthalpy and entropy of another calculator's answers count from, by the words of the program and of the page. */
public enum CaloricZero {
    /** The IIR reference state. */
    IIR(ReferenceState.IIR),
    /** Saturated liquid at -40 degC. */
    MINUS_40(ReferenceState.MINUS_40_CELSIUS),
    /** Saturated liquid at its normal boiling point. */
    BOILING(ReferenceState.NORMAL_BOILING_POINT);

    private final ReferenceState state;

    CaloricZero(ReferenceState state) {
        this.state = state;
    }

    /** {@return the reference state} */
    public ReferenceState state() {
        return state;
    }
}
