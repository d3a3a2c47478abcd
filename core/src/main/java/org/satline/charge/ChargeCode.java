package org.satline.charge;

import org.satline.explanation.FindingCode;

/** What can be found about a charge. */
public enum ChargeCode implements FindingCode {
    /** The judged quantity against its target. */
    AGAINST_TARGET,
    /** How likely each level is with these instruments. */
    PROBABILITIES,
    /** How likely each level of the charge itself is, by all readings together. */
    BELIEF,
    /** The consumer's risk of JCGM 106: a wrong charge is left as it is. */
    CONSUMERS_RISK,
    /** The producer's risk of JCGM 106: a sound charge is touched. */
    PRODUCERS_RISK,
    /** No level reaches the wanted probability; a better instrument would decide it. */
    NOT_DECIDED,
    /** No level reaches the wanted probability, so near to the edge of the band that no instrument decides it. */
    EDGE_OF_BAND,
    /** Inside the band as read, and more certain only with a better instrument: good enough. */
    GOOD_ENOUGH,
    /** Return wet bulb and condenser air reach a dash of the target-superheat chart. */
    TARGET_AT_DASH,
    /** Return wet bulb and condenser air lie outside the target-superheat chart. */
    TARGET_OUTSIDE_CHART,
    /** Neither outdoor nor return air was read, so it is not known whether the system cools at all. */
    MODE_NOT_KNOWN,
    /** An expansion valve floods. */
    VALVE_FLOODS,
    /** An evaporator starves although the liquid line is well filled. */
    EVAPORATOR_STARVES,
    /** Superheat says short of charge, subcooling says plenty. */
    AMPLE_SUBCOOLING,
    /** Superheat says too much charge, subcooling says little. */
    SCANT_SUBCOOLING,
    /** Likely, not sure: a small step is expected to cost least, and its answer decides. */
    SMALL_STEP_DECIDES,
    /** No charge error with or without another fault explains the readings. */
    UNEXPLAINED,
    /** What would be done if not this. */
    NEXT_BEST,
    /** The reading that was not taken and would change the belief most. */
    WOULD_CHANGE,
    /** A fault beside the charge that the readings do not rule out. */
    FAULT_NOT_RULED_OUT,
    /** A fault beside the charge explains the readings better. */
    FAULT_LIKELIER,
    /** A condition of judging is not met. */
    GATE_NOT_MET
}
