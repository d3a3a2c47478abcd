package org.satline.transfer;

import org.satline.explanation.Coded;

/** Which way refrigerant is to go. */
public enum Direction implements Coded {
    /** Out of the system into a recovery cylinder. */
    OUT,
    /** Out of a source cylinder into the system. */
    IN
}
