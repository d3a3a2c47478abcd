package org.satline.step;

import org.satline.explanation.FindingCode;

/** What can be found about a step of refrigerant. */
public enum StepCode implements FindingCode {
    /** How far the judged quantity is from its target. */
    OFF_TARGET,
    /** What one kilogram does to it, as learned so far. */
    RESPONSE,
    /** The quantity shows nothing, so the true error may be larger than it looks. */
    NO_SIGNAL,
    /** Inside the band as read; a further step would cost more than it gains. */
    WITHIN_BAND,
    /** The chance that the charge is on target. */
    CHANCE_ON_TARGET,
    /** The chance that the step passes the far edge of the band. */
    CHANCE_OF_PASSING,
    /** The source holds less than the smallest step. */
    SOURCE_SPENT,
    /** The receiver takes less than the smallest step. */
    NO_ROOM_FOR_STEP,
    /** The smallest step that scale and hose resolve would be too coarse. */
    TOO_COARSE,
    /** The step turns round the direction: another cylinder, another hose sweep. */
    TURNS_ROUND,
    /** The system does not answer as it would to an error of the charge. */
    NO_ANSWER,
    /** The readings so far do not belong together. */
    READINGS_APART,
    /** For a longer line set the maker's figure goes first. */
    MAKERS_FIGURE_FIRST
}
