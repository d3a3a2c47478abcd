package org.satline.cylinder;

/** Applies the book of fill rules. */
public final class FillAssessor {}
