package org.satline.cylinder;

import org.satline.explanation.Coded;

/** What a cylinder is on site for. */
public enum Role implements Coded {
    /** Refrigerant goes into it: a recovery cylinder. */
    RECEIVER,
    /** Refrigerant comes out of it. */
    SOURCE
}
