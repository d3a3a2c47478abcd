package org.satline.equation;

import org.satline.explanation.FindingCode;

/** What a mixture model is known to miss. */
public enum ModelCode implements FindingCode {
    /** Bubble and dew point at 101.325 kPa are farther from the published ones than they should be. */
    SATURATION_POINTS_DIFFER,
    /** The one boiling point that is published is missed. */
    BOILING_POINT_DIFFERS,
    /** Pairs stand at the default rule, and no published point tells how far they are off. */
    PAIRS_DEFAULTED,
    /** Pairs are of undocumented origin, and no published point tells how far they are off. */
    PAIRS_ESTIMATED
}
