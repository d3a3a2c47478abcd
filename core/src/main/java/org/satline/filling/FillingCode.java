package org.satline.filling;

import org.satline.explanation.FindingCode;

/** What can be found about filling a cylinder, by its stamps and the fill rules. */
public enum FillingCode implements FindingCode {
    /** The refrigerants that would meet differ, or are mixed already. */
    MIXING,
    /** A flammable refrigerant and a cylinder that is not marked for it. */
    FLAMMABLE,
    /** The cylinder may be filled only once, by its maker. */
    NOT_REFILLABLE,
    /** It is stated to be refillable, or not, against its mark. */
    REFILLABLE_AGAINST_MARK,
    /** The retest date has passed. */
    RETEST_PAST,
    /** Whether the retest date has passed could not be told. */
    RETEST_NOT_CHECKED,
    /** The marked service or test pressure is too low for the refrigerant. */
    PRESSURE_TOO_LOW,
    /** The test pressure is below the least one that the table prints. */
    TEST_PRESSURE_TOO_LOW,
    /** The law names the cylinders for this gas, and this is none of them. */
    NOT_LISTED,
    /** The mark is that of a vessel for something else. */
    NOT_FOR_REFRIGERANT,
    /** The service pressure within the mark is none that its specification knows. */
    MARK_IMPOSSIBLE,
    /** Tare and water capacity do not belong together. */
    TARE_MISFITS_CAPACITY,
    /** The service pressure stated is not the one within the mark. */
    SERVICE_PRESSURE_MISFITS_MARK,
    /** The test pressure is below the service pressure. */
    TEST_BELOW_SERVICE,
    /** What is or will be inside is not known. */
    CONTENTS_UNKNOWN,
    /** No rule of the chosen set gives a largest contents. */
    NO_LIMIT,
    /** A rule of the chosen set could not be tested. */
    RULE_NOT_TESTED,
    /** A stamp that a test needs was left out of a mere calculation. */
    STAMP_NOT_TESTED,
    /** The figure of a printed table lets liquid fill the cylinder below the temperature of the rule. */
    TABLE_FILLS_WITH_LIQUID,
    /** The specification is not given, so the smallest figure of the table was taken. */
    SMALLEST_DENSITY_TAKEN,
    /** The test pressure is not given, so the smallest filling ratio was taken. */
    SMALLEST_RATIO_TAKEN,
    /** The warmest temperature was set below the usual one. */
    WARMEST_BELOW_USUAL,
    /** A share of the water capacity is no share of the volume for a liquid lighter than water. */
    LIGHTER_THAN_WATER
}
