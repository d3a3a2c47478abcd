package org.satline.transfer.hookup;

import org.satline.explanation.Coded;

/** What would make a plan possible. */
public enum PlanPart implements Coded {
    /** A vacuum pump with a connection of its own. */
    VACUUM_PUMP,
    /** A core tool on the port. */
    CORE_TOOL,
    /** A hose with a hand valve or self-sealing end at the port. */
    SHUT_OFF_AT_PORT,
    /** Another hose to the cylinder: plain or with a hand valve. */
    OTHER_HOSE,
    /** A manifold. */
    MANIFOLD,
    /** A recovery machine. */
    RECOVERY_MACHINE,
    /** A colder or evacuated receiving cylinder. */
    COLD_CYLINDER,
    /** A source that is warmer: in water of at most 40 degC. */
    WARM_SOURCE,
    /** The running system. */
    RUNNING_SYSTEM,
    /** Another cylinder. */
    OTHER_CYLINDER,
    /** A regulator at the source. */
    REGULATOR,
    /** A service port, fitted by who may open the circuit. */
    SERVICE_PORT
}
