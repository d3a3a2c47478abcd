package org.satline.duty;

import org.satline.explanation.FindingCode;

/** What a leak asks for. */
public enum LeakCode implements FindingCode {
    /** How a leak is looked for, and the tightness proved after its repair. */
    LEAK_TEST,
    /** The leak rate from which the law asks for repair and tests after it. */
    LEAK_RATE_LIMIT,
    /** How often the law asks for a leak check, and when after a repair. */
    LEAK_CHECK_DUE
}
