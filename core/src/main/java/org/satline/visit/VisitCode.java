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
    AIR_DRAWN_IN,
    /** What the system has leaves superheat or subcooling to judge by, with something to heed. */
    JUDGED_WITH_CARE,
    /** What the system has is judged in the maker's test mode alone. */
    JUDGED_IN_TEST_MODE,
    /** What the system has is judged by its sight glass alone. */
    CHARGE_BY_SIGHT_GLASS,
    /** What the system has is judged by the maker's method alone. */
    CHARGE_BY_MAKERS_METHOD,
    /** What the system has is not judged: its charge is weighed in. */
    CHARGE_BY_WEIGHT,
    /** The superheat at the evaporator that is usual for the application. */
    USUAL_SUPERHEAT,
    /** The system is evacuated: its charge is weighed in. */
    FIRST_FILLING,
    /** The source cylinder holds less than the filling takes. */
    SOURCE_TOO_SMALL
}
