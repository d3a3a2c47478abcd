package org.satline.transfer.hookup;

import org.satline.explanation.Coded;

/** What flows. */
public enum Medium implements Coded {
    /** Liquid refrigerant; it may flash on the way. */
    LIQUID,
    /** Refrigerant vapour. */
    VAPOUR,
    /** Air with its moisture. */
    AIR
}
