package org.satline.explanation;

/** Findings that every room can make. */
public enum CommonCode implements FindingCode {
    /** A fact that is needed was not given; the subject names its field. */
    NOT_GIVEN
}
