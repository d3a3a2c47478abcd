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
    /** Short by a likely leak while the suction stands below the atmosphere: it has drawn air in. */
    AIR_DRAWN_IN
}
