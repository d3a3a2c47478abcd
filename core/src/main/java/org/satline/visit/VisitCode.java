package org.satline.visit;

import org.satline.explanation.FindingCode;

/** What can be found about a visit as a whole. */
public enum VisitCode implements FindingCode {
    /** The system runs in heating: no charge is judged by these rules. */
    HEATING_MODE,
    /** The refrigerant pressure of the running system is far beyond what its controls allow. */
    SYSTEM_OVER_PRESSURE,
    /** The person's own removal made the charge low: it is given back by weight, and is no leak. */
    OWN_REMOVAL,
    /** The charge is low and nobody took any out on this visit: a leak is likely. */
    LEAK_LIKELY,
    /** The full charge of the plate is not known, so no step can be told. */
    FULL_CHARGE_NOT_KNOWN,
    /** The last step was moved the other way than these readings ask for. */
    ADVICE_TURNS,
    /** What was moved does not agree with what the scale shows. */
    MOVED_AGAINST_SCALE,
    /** The suction line is warmer than the return air. */
    SUCTION_LINE_WARM
}
