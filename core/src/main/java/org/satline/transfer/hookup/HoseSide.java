package org.satline.transfer.hookup;

/** The two ends of a hose, by what they are joined to. */
enum HoseSide {
    /** The end at the system: service port or manifold. */
    SYSTEM,
    /** The end at the cylinder. */
    CYLINDER;

    HoseSide other() {
        return this == SYSTEM ? CYLINDER : SYSTEM;
    }

    @Override
    public String toString() {
        return this == SYSTEM ? "system" : "cylinder";
    }
}
