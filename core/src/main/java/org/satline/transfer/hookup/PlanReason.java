package org.satline.transfer.hookup;

import org.satline.explanation.FindingCode;

/** Why there is no plan. */
public enum PlanReason implements FindingCode {
    /** R-744 above its critical pressure. */
    TRANSCRITICAL,
    /** its liquid may not be shut in even for one act. */
    CARBON_DIOXIDE_LIQUID,
    /** Toxic: never vented; evacuated before, emptied by a machine after. */
    TOXIC_NEEDS_MACHINE,
    /** Class 3: never vented; evacuated before hooking up, ends that shut. */
    FLAMMABLE_NEEDS_EVACUATION,
    /** A hose or machine holds what nobody knows. */
    UNKNOWN_CONTENTS,
    /** The low side is below the atmosphere, or too little above it to sweep. */
    LOW_SIDE_BELOW_ATMOSPHERE,
    /** The receiving cylinder stands at or above the pressure that should feed it. */
    PRESSURE_NOT_BELOW,
    /** The source stands less than a certain difference above the suction. */
    SOURCE_NOT_ABOVE,
    /** The system is at rest: nothing pushes, and liquid is not drawn from the hose. */
    AT_REST,
    /** A plain end on a valve core with liquid behind it cannot come off without spraying. */
    PLAIN_END_ON_CORE,
    /** Both ends of the hose seal themselves: no joint lets its air out. */
    BOTH_ENDS_SELF_SEALING,
    /** The hose cannot be swept from where it hangs. */
    NO_SWEEP_PATH,
    /** A sweep would let out more than the least. */
    SWEEP_TOO_LARGE,
    /** The hose cannot be freed of mixed refrigerant. */
    HOSE_STAYS_MIXED,
    /** The cylinder may not take it or give it. */
    CYLINDER_NOT_SUITED,
    /** No hose leads to where it is needed. */
    NO_HOSE,
    /** The port that is needed is not there. */
    NO_PORT
}
