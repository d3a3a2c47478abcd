package org.satline.transfer.simulator;

/** What no act of a plan may do. */
public enum Invariant {
    /** Air into the system. */
    AIR_INTO_SYSTEM("airIntoSystem"),
    /** Air into a cylinder. */
    AIR_INTO_CYLINDER("airIntoCylinder"),
    /** Recovered or unknown refrigerant into the system. */
    FOREIGN_GAS_INTO_SYSTEM("foreignGasIntoSystem"),
    /** Anything but its own into a source, or mixed or unknown refrigerant into a cylinder that holds this system's alone. */
    FOREIGN_GAS_INTO_CYLINDER("foreignGasIntoCylinder"),
    /** Recovered or unknown refrigerant into a hose that holds clean refrigerant, but for one without a manifold, shut at the port. */
    FOREIGN_GAS_INTO_HOSE("foreignGasIntoHose"),
    /** A shut volume that would be full of liquid below 65 degC, beyond the one act allowed. */
    LIQUID_SHUT_IN("liquidShutIn"),
    /** Liquid into a running suction other than metered, or into the suction of a system at rest. */
    UNMETERED_LIQUID_INTO_SUCTION("unmeteredLiquidIntoSuction"),
    /** A joint loosened with liquid behind it. */
    JOINT_LOOSENED_ON_LIQUID("jointLoosenedOnLiquid"),
    /** High and low side joined on open ports of a running system. */
    HIGH_AND_LOW_JOINED("highAndLowJoined"),
    /** More vented than the least that sweeps, liquid vented, or unknown gas vented. */
    VENTED_ABOVE_LEAST("ventedAboveLeast"),
    /** A refrigerant of group B or class 3 vented, or a bare core of it opened by a hose end. */
    VENTED_FORBIDDEN_GROUP("ventedForbiddenGroup"),
    /** A source of R-744 opened without a regulator, which is not among the parts of a hook-up. */
    UNREGULATED_CARBON_DIOXIDE("unregulatedCarbonDioxide"),
    /** A recovery machine started against a shut outlet, or a vacuum pump opened to a system or cylinder with refrigerant. */
    MACHINE_MISUSED("machineMisused");

    private final String code;

    Invariant(String code) {
        this.code = code;
    }

    /**
     * Returns the code word.
     *
     * @return stable, for files
     */
    public String code() {
        return code;
    }
}
