package org.satline.explanation;

/** How much a finding weighs; the constants stand in the order in which they are dealt with. */
public enum Severity implements Coded {
    /** It can hurt someone as things are: made safe before anything else. */
    DANGER_NOW,
    /** It forbids what is asked, whatever else is supplied. */
    FORBIDS,
    /** It is not known and must be supplied before refrigerant moves. */
    MUST_BE_SUPPLIED,
    /** To know; it forbids nothing by itself. */
    CAUTION
}
