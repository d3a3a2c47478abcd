package org.satline.charge;

import org.satline.explanation.Coded;

/**
 * A quantity whose departure from the fault-free value speaks for or against a fault. Typical size of a departure and the size that still
 * counts as none are our own choices, of the order of the published tolerances.
 */
public enum Symptom implements Coded {
    /** Evaporating temperature. */
    EVAPORATING("evaporating", 4, 1.5),
    /** Suction superheat. */
    SUPERHEAT("superheat", 6, 2),
    /** Condensing temperature over the air entering the condenser. */
    CONDENSING("condensing", 5, 1.5),
    /** Liquid subcooling. */
    SUBCOOLING("subcooling", 4, 1.2),
    /** Discharge temperature. */
    DISCHARGE("discharge", 10, 3),
    /** Temperature rise of the air over the condenser. */
    CONDENSER_AIR_RISE("condenser_air_rise", 3, 1),
    /** Temperature drop of the air over the evaporator. */
    EVAPORATOR_AIR_DROP("evaporator_air_drop", 3, 1);

    private final String column;
    private final double typicalK;
    private final double noneK;

    Symptom(String column, double typicalK, double noneK) {
        this.column = column;
        this.typicalK = typicalK;
        this.noneK = noneK;
    }

    String column() {
        return column;
    }

    double typicalK() {
        return typicalK;
    }

    double noneK() {
        return noneK;
    }
}
