package org.satline.explanation;

/**
 * What a finding is about. Each room has its own codes, mostly constants of an enum; no word stands in two rooms for two things.
 * Implementations are immutable.
 */
public interface FindingCode extends Coded {}
