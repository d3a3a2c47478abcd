package org.satline.charge;

import org.satline.explanation.Coded;

/**
 * A quantity whose departure from the fault-free value speaks for or against a fault. Typical size of a departure and the size that still
 * counts as none are our own choices, of the order of the published tolerances.
 */
public enum Symptom implements Coded {
    /** Evaporating temperature. */
    EVAPORATING("evaporating temperature", "evaporating", 4, 1.5),
    /** Suction superheat. */
    SUPERHEAT("superheat", "superheat", 6, 2),
    /** Condensing temperature over the air entering the condenser. */
    CONDENSING("condensing temperature over ambient", "condensing", 5, 1.5),
    /** Liquid subcooling. */
    SUBCOOLING("subcooling", "subcooling", 4, 1.2),
    /** Discharge temperature. */
    DISCHARGE("discharge temperature", "discharge", 10, 3),
    /** Temperature rise of the air over the condenser. */
    CONDENSER_AIR_RISE("air temperature rise over the condenser", "condenser_air_rise", 3, 1),
    /** Temperature drop of the air over the evaporator. */
    EVAPORATOR_AIR_DROP("air temperature drop over the evaporator", "evaporator_air_drop", 3, 1);

    private final String label;
    private final String column;
    private final double typicalK;
    private final double noneK;

    Symptom(String label, String column, double typicalK, double noneK) {
        this.label = label;
        this.column = column;
        this.typicalK = typicalK;
        this.noneK = noneK;
    }

    /**
     * Name in texts.
     *
     * @return for example {@code superheat}
     */
    public String label() {
        return label;
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
