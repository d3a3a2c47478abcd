package org.satline.transfer;

import org.satline.explanation.Coded;

/** Whether the hose to a cylinder is ready for refrigerant to go through it. */
public enum HoseState implements Coded {
    /** Free of air and of foreign gas. */
    READY,
    /** To be swept or evacuated first, and it can be. */
    NOT_PURGED,
    /** It cannot be swept or evacuated as it hangs, with what is at hand. */
    CANNOT_BE_PURGED,
    /** Nothing is known of it. */
    UNKNOWN
}
