package org.satline.cylinder;

import org.satline.explanation.FindingCode;

/** What can be found about a cylinder, by its weight, pressure, temperature and label. */
public enum CylinderCode implements FindingCode {
    /** By weight it holds more than its limit, or liquid fills it before it is as warm as it may get. */
    OVERFILLED,
    /** By weight liquid fills it, or fills it within a few kelvin. */
    LIQUID_FULL,
    /** Its pressure is above 5/4 of the service pressure, or above the test pressure. */
    OVER_PRESSURE,
    /** What is inside is not what it is said to be. Another finding tells why. */
    WRONG_CONTENTS,
    /** The pressure at rest does not fit the label. */
    PRESSURE_MISFITS_LABEL,
    /** It is said to be empty, and air or another gas is in it. */
    AIR_IN_EMPTY,
    /** It is said to be empty, and by its weight or pressure it is not. */
    NOT_EMPTY,
    /** By weight it holds vapour alone, and its pressure is higher than that gives. */
    WEIGHT_MISFITS_PRESSURE,
    /** By weight liquid fills it, and its pressure is that of vapour above liquid. */
    WEIGHT_MISFITS_GAUGE,
    /** Gross weight below the tare. */
    BELOW_TARE,
    /** Since its scale was zeroed one that receives became lighter, or one that gives heavier. */
    SCALE_AGAINST_ROLE,
    /** It stands on its head, and its valves are made to be used upright. */
    INVERTED,
    /** It was not at rest, so that its pressure says nothing. */
    NOT_AT_REST,
    /** It is warmer than the warmest temperature stated for it. */
    WARMER_THAN_WARMEST,
    /** It is warmer than the end of the saturation line of what it holds. */
    ABOVE_CRITICAL,
    /** By weight nothing more may go in. */
    FULL,
    /** By weight nothing is left to give, or no liquid of a blend. */
    NOTHING_TO_GIVE,
    /** Recovered refrigerant in a cylinder that may be filled only once. */
    RECOVERED_IN_NON_REFILLABLE,
    /** Liquid nearly fills it. */
    NEARLY_FULL,
    /** Hoses must hang as they did when the scale was zeroed. */
    HOSES_AS_ZEROED,
    /** The scale carries part of the hoses. */
    HOSES_ON_SCALE,
    /** The scale decides, not a level switch. */
    SCALE_DECIDES,
    /** These instruments do not resolve the limit of non-condensable gas. */
    AIR_NOT_RESOLVED,
    /** The pressure fits other refrigerants as well. */
    FITS_OTHERS,
    /** A check by pressure cannot find an overfill. */
    WEIGH_TOO,
    /** The pressure fits another refrigerant than the label's. */
    ANOTHER_LIKELIER,
    /** Gas that does not condense would raise the pressure too. */
    AIR_POSSIBLE,
    /** Gas that does not condense is suspected. */
    AIR_SUSPECTED,
    /** No liquid is left, so that the pressure proves nothing. */
    LIQUID_GONE,
    /** By weight there is liquid, and the pressure is below that of any candidate. */
    COLDER_THAN_READ
}
