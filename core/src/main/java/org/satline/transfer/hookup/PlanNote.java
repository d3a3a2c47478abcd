package org.satline.transfer.hookup;

import org.satline.explanation.FindingCode;

/** What to heed while a phase of a plan is done. */
public enum PlanNote implements FindingCode {
    /** Vapour leaves at the joint that is loose: one to two seconds, and no ignition source near a flammable. */
    VENTS_VAPOUR,
    /** The hose holds what was in the recovery cylinder: the low valve stays shut until it is clean. */
    HOSE_IS_MIXED,
    /** Liquid stands shut in after an act: the next act at once. */
    NEXT_ACT_AT_ONCE,
    /** A coupling spills a little liquid as it parts: goggles and gloves. */
    COUPLING_SPILLS,
    /** Liquid goes into the suction: short openings. */
    LIQUID_INTO_SUCTION
}
