package org.satline.transfer;

/** What may be wrong with a direction of flow. */
public enum FlowWarning {
    /** The recovery cylinder would push its contents into the system. */
    BACKFLOW_INTO_SYSTEM(
            "BACKFLOW: the recovery cylinder would push its contents into the system; keep the valve closed, cool the cylinder, choose a "
                    + "port of higher pressure or use a recovery machine"),
    /** Recovered refrigerant would get into the clean source cylinder, or the system into it. */
    BACKFLOW_INTO_SOURCE(
            "BACKFLOW: refrigerant would flow into the source cylinder, overfill and contaminate it; keep its valve closed and do not warm it "
                    + "with a flame, use the low side or a warmer cylinder"),
    /** Air would be drawn in. */
    AIR_DRAWN_IN("air and moisture would be drawn in; keep the joint tight and the valves closed"),
    /** Refrigerant would be let out. */
    RELEASE("refrigerant would be released to the air; knowing release is forbidden, keep the joint tight"),
    /** Liquid would reach the suction side of a compressor. */
    LIQUID_TO_SUCTION(
            "liquid would reach the compressor's suction; meter it so that it flashes on the way, or the compressor is damaged"),
    /** A large difference into an evacuated cylinder. */
    FAST_INTO_VACUUM(
            "the cylinder is under vacuum: transfer will be fast and uncontrolled; open the valve a crack, watch the scale, stop in steps"),
    /** A vacuum pump would be opened to pressure. */
    PRESSURE_INTO_VACUUM_PUMP(
            "the vacuum pump would take refrigerant at pressure and blow it out; recover to the required level first, never open the pump "
                    + "to a system above the atmosphere"),
    /** Flow out of a pump's inlet contradicts what a pump does. */
    OUT_OF_VACUUM_PUMP(
            "the pressure at the pump is the higher one: air or oil would be sucked out of it; check the reading, close the valve"),
    /** The manifold would join both sides of one system. */
    ACROSS_THE_SYSTEM(
            "high and low side of the system would be joined through the hoses; close one of the manifold valves"),
    /** Contents of the recovery cylinder would reach the source, or the other way. */
    CYLINDER_TO_CYLINDER(
            "one cylinder would fill the other; keep new, reclaimed and recovered refrigerant apart and weigh both");

    private final String advice;

    FlowWarning(String advice) {
        this.advice = advice;
    }

    /**
     * Returns what is wrong and what to do.
     *
     * @return the words of the caution
     */
    public String advice() {
        return advice;
    }
}
