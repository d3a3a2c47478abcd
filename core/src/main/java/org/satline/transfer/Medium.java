package org.satline.transfer;

/** What flows. */
public enum Medium {
    /** Liquid refrigerant; it may flash on the way. */
    LIQUID,
    /** Refrigerant vapour. */
    VAPOUR,
    /** Air with its moisture. */
    AIR
}
