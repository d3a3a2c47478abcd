package org.satline.fleet;

import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.simulation.ImposedFault;

/** Faults that come and go in the simulated fleet, at severity 1. */
public enum UnitFault {
    /** Nothing is wrong. */
    NONE(ImposedFault.none()),
    /** Half of the air of the condenser lost. */
    FOULED_CONDENSER(ImposedFault.condenserFouling(0.5)),
    /** Two fifths of the air of the evaporator lost. */
    LOW_AIRFLOW(ImposedFault.lowEvaporatorAirflow(0.4)),
    /** Clogged filter drier, 0.8 MPa at rated flow. */
    RESTRICTION(ImposedFault.liquidLineRestriction(PressureDifference.ofPascals(8e5))),
    /** Three tenths of the pumped gas leak back. */
    LEAKING_VALVES(ImposedFault.compressorValveLeakage(0.3)),
    /** Air in the system, 0.15 MPa in the condenser. */
    FOREIGN_GAS(ImposedFault.nonCondensableGas(Pressure.ofPascals(1.5e5)));

    private final ImposedFault imposed;

    UnitFault(ImposedFault imposed) {
        this.imposed = imposed;
    }

    ImposedFault imposed() {
        return imposed;
    }
}
