package org.satline.transfer;

import org.satline.explanation.Coded;
import org.satline.transfer.hookup.Medium;

/** The points between which refrigerant may flow once they are connected. */
public enum PointKind implements Coded {
    /** Service port on the liquid line of the running system. */
    HIGH_SIDE_LIQUID_PORT(Owner.SYSTEM, Medium.LIQUID),
    /** Service port on the discharge line of the running system. */
    HIGH_SIDE_VAPOUR_PORT(Owner.SYSTEM, Medium.VAPOUR),
    /** Service port on the suction side of the running system. */
    LOW_SIDE_PORT(Owner.SYSTEM, Medium.VAPOUR),
    /** Vapour valve of the cylinder that is to receive recovered refrigerant. */
    RECOVERY_CYLINDER_VAPOUR_VALVE(Owner.RECOVERY_CYLINDER, Medium.VAPOUR),
    /** Liquid valve of the cylinder that is to receive recovered refrigerant. */
    RECOVERY_CYLINDER_LIQUID_VALVE(Owner.RECOVERY_CYLINDER, Medium.LIQUID),
    /** Vapour valve of a cylinder of new or reclaimed refrigerant. */
    SOURCE_CYLINDER_VAPOUR_VALVE(Owner.SOURCE_CYLINDER, Medium.VAPOUR),
    /** Liquid valve of a cylinder of new or reclaimed refrigerant. */
    SOURCE_CYLINDER_LIQUID_VALVE(Owner.SOURCE_CYLINDER, Medium.LIQUID),
    /** Inlet of a vacuum pump. */
    VACUUM_PUMP(Owner.VACUUM_PUMP, Medium.VAPOUR),
    /** The air around, as at a loose joint. */
    ATMOSPHERE(Owner.ATMOSPHERE, Medium.AIR);

    /** What a point belongs to. */
    enum Owner {
        SYSTEM,
        RECOVERY_CYLINDER,
        SOURCE_CYLINDER,
        VACUUM_PUMP,
        ATMOSPHERE
    }

    private final Owner owner;
    private final Medium leaving;

    PointKind(Owner owner, Medium leaving) {
        this.owner = owner;
        this.leaving = leaving;
    }

    /**
     * Returns what leaves this point when it is the higher of the two.
     *
     * @return liquid, vapour or air
     */
    public Medium leaving() {
        return leaving;
    }

    Owner owner() {
        return owner;
    }

    boolean isCylinder() {
        return owner == Owner.RECOVERY_CYLINDER || owner == Owner.SOURCE_CYLINDER;
    }
}
