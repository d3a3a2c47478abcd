package org.satline.transfer.hookup;

/** How far a valve is open. */
public enum Opening {
    /** Shut; a stem: back-seated. */
    SHUT,
    /** By a crack. */
    CRACKED,
    /** Wide open. */
    OPEN
}
