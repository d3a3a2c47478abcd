package org.satline.charge.belief;

import org.satline.explanation.Coded;

/** What can be done about a charge. */
public enum Choice implements Coded {
    /** A step of refrigerant in. */
    STEP_IN,
    /** A step of refrigerant out. */
    STEP_OUT,
    /** Leave the charge as it is: on target, or good enough. */
    DONE,
    /** Read again or better before anything is moved. */
    READ_BETTER,
    /** Mend another fault first. */
    MEND_FIRST
}
