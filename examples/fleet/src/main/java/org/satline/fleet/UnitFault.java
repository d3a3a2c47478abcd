package org.satline.fleet;

import java.util.List;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.simulation.ImposedFault;

/** Faults that come and go in the simulated fleet, at severity 1. */
public enum UnitFault {
    /** Nothing is wrong. */
    NONE,
    /** Half of the air of the condenser lost. */
    FOULED_CONDENSER,
    /** Two fifths of the air of the evaporator lost. */
    LOW_AIRFLOW,
    /** Clogged filter drier, 0.8 MPa at rated flow. */
    RESTRICTION,
    /** Three tenths of the pumped gas leak back. */
    LEAKING_VALVES,
    /** Air in the system, 0.15 MPa in the condenser. */
    FOREIGN_GAS;

    private static final List<UnitFault> ALL = List.of(values());

    @SuppressWarnings("EnumOrdinal") // an array that lives no longer than the process
    int index() {
        return ordinal();
    }

    /** One of those that are faults. */
    static UnitFault drawn(int number) {
        return ALL.get(1 + Math.floorMod(number, ALL.size() - 1));
    }

    ImposedFault imposed() {
        return switch (this) {
            case NONE -> ImposedFault.none();
            case FOULED_CONDENSER -> ImposedFault.condenserFouling(0.5);
            case LOW_AIRFLOW -> ImposedFault.lowEvaporatorAirflow(0.4);
            case RESTRICTION -> ImposedFault.liquidLineRestriction(PressureDifference.ofPascals(8e5));
            case LEAKING_VALVES -> ImposedFault.compressorValveLeakage(0.3);
            case FOREIGN_GAS -> ImposedFault.nonCondensableGas(Pressure.ofPascals(1.5e5));
        };
    }
}
