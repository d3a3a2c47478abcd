package org.satline.visit;

import org.satline.explanation.Coded;

/** What is done next; the constants stand in the order in which they take precedence. */
public enum ActionKind implements Coded {
    /** Something can hurt someone as it is: make it safe first. */
    MAKE_SAFE,
    /** Another fault than the charge comes first. */
    MEND_FIRST,
    /** These readings decide nothing, or a condition of judging by them is not met: read again. */
    READ_AGAIN,
    /** Something must be connected, evacuated, swept, weighed, swapped or supplied before refrigerant may move. */
    PREPARE,
    /** Take one step of refrigerant out of the system. */
    TAKE_OUT,
    /** Put one step of refrigerant into the system. */
    PUT_IN,
    /** The charge is right, or as good as these instruments can make it. */
    DONE
}
