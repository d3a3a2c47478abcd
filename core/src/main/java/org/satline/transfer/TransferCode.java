package org.satline.transfer;

import org.satline.explanation.FindingCode;

/** What can be found about a transfer of refrigerant. */
public enum TransferCode implements FindingCode {
    /** Refrigerant would flow the wrong way: into the system from a recovery cylinder, or into a source. */
    BACKFLOW,
    /** The pressures are too close to tell which way it flows. */
    TOO_CLOSE_TO_CALL,
    /** Air would be drawn in. */
    VACUUM_AIR,
    /** Refrigerant would be released to the air. */
    RELEASE,
    /** Liquid would reach the suction side of a compressor. */
    LIQUID_TO_SUCTION,
    /** A large difference into an evacuated cylinder. */
    FAST_INTO_VACUUM,
    /** A recovery machine carries it, where the pressures alone would not. */
    BY_MACHINE,
    /** A vacuum pump would be opened to pressure. */
    PRESSURE_INTO_PUMP,
    /** Flow out of a pump's inlet contradicts what a pump does. */
    OUT_OF_PUMP,
    /** High and low side of the system would be joined through the hoses. */
    ACROSS_SYSTEM,
    /** One cylinder would fill another. */
    CYLINDER_TO_CYLINDER,
    /** The hose is at a port from which, or into which, it does not flow the wanted way. */
    WRONG_PORT,
    /** A blend would come as vapour. */
    WRONG_PHASE,
    /** The cylinder is there for the other direction: another one is needed. */
    OTHER_CYLINDER_NEEDED,
    /** No cylinder is at hand. */
    NO_CYLINDER,
    /** The hose holds air or another gas and has to be swept or evacuated first. */
    HOSE_NOT_PURGED,
    /** The hose cannot be swept as it hangs. */
    HOSE_CANNOT_BE_PURGED,
    /** Nothing is known of a hose. */
    HOSE_UNKNOWN,
    /** The hose holds so much liquid that a step cannot be metered through it, or shuts liquid in. */
    TRAPPED_LIQUID,
    /** The gas is toxic. */
    TOXIC
}
