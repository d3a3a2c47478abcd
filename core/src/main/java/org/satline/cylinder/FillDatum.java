package org.satline.cylinder;

/** What a question about filling may leave out, so that a test stays open. */
public enum FillDatum {
    /** The mark for flammable gas. */
    FLAMMABLE_MARK,
    /** Whether the cylinder may be refilled, by its specification mark or said so. */
    REFILLABLE,
    /** The date of the next retest. */
    RETEST_DUE,
    /** The day of filling. */
    FILL_DATE,
    /** The service pressure. */
    SERVICE_PRESSURE,
    /** The test pressure. */
    TEST_PRESSURE
}
