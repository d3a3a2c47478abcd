package org.satline.visit;

import org.satline.explanation.Coded;

/** How the system ran while it was read. */
public enum SystemMode implements Coded {
    /** In cooling: the readings can be judged. */
    COOLING,
    /** In heating: no charge is judged by these rules; weigh in, or use the maker's chart. */
    HEATING
}
