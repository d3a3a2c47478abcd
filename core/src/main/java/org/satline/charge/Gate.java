package org.satline.charge;

import org.satline.quantity.Parts;

/**
 * One condition that must hold before a charge is judged. Immutable, thread-safe.
 *
 * @param kind which condition
 * @param state whether it holds
 * @param finding what was found, with numbers
 * @param advice what to do; empty where the gate is open
 */
public record Gate(Kind kind, State state, String finding, String advice) {
    /** Conditions, in the order of work. */
    public enum Kind {
        /** The readings have settled. */
        SETTLED,
        /** The system has cooled long enough. */
        RUNNING_TIME,
        /** Outdoor air is warm enough for a judgement by temperatures. */
        OUTDOOR_AIR,
        /** The evaporator has its airflow. */
        AIRFLOW,
        /** The refrigerant is the one of the nameplate, without foreign gas. */
        NAMEPLATE,
        /** The suction line carries vapour only. */
        DRY_SUCTION
    }

    /** Whether a condition holds. */
    public enum State {
        /** It holds. */
        OPEN,
        /** It does not hold: no charge advice. */
        CLOSED,
        /** It was not checked: something was not read. */
        NOT_CHECKED
    }

    /** {@inheritDoc} */
    public Gate {
        Parts.required("kind state finding advice", kind, state, finding, advice);
    }

    static Gate open(Kind kind, String finding) {
        return new Gate(kind, State.OPEN, finding, "");
    }

    static Gate closed(Kind kind, String finding, String advice) {
        return new Gate(kind, State.CLOSED, finding, advice);
    }

    static Gate notChecked(Kind kind, String finding, String advice) {
        return new Gate(kind, State.NOT_CHECKED, finding, advice);
    }
}
