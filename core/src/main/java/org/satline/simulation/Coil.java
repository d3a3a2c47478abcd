package org.satline.simulation;

/**
 * Heat transfer of a cross-flow coil. Air in parallel slices over the tubes, each entering at the same temperature; the refrigerant passes
 * them one after the other. With it the temperature difference decays exponentially along the tubes: the effectiveness of cross-flow with
 * one fluid mixed (Kays and London, Compact Heat Exchangers).
 *
 * <p>Inside the tubes the conductance goes with the 0.8th power of the refrigerant flow: Dittus and Boelter 1930, Heat transfer in
 * automobile radiators of the tubular type, University of California Publications in Engineering 2:443-461, for one phase; for two phases
 * the convective part of Shah's correlations (1979, 1982) follows the same power. Both from memory.
 *
 * @param conductance U A of the whole coil with two-phase refrigerant and rated flows, W/K
 * @param airFlow rated mass flow of dry air, kg/s
 * @param refrigerantFlow rated mass flow of refrigerant, kg/s
 */
record Coil(double conductance, double airFlow, double refrigerantFlow) {
    /**
     * Share of the resistance that lies on the air side with two-phase refrigerant. Usual coil, constants from memory (ranges as in Shah
     * and Sekulic 2003, Fundamentals of Heat Exchanger Design): fins with an efficiency of 0.85 at 50 W/(m2 K) on 20 times the inner
     * surface, inside 2500 W/(m2 K) in plain to 4500 W/(m2 K) in grooved tubes: 0.75 to 0.84.
     */
    private static final double AIR_SHARE = 0.8;
    /**
     * Resistance on the inside of vapour and of liquid over that of two phases, from {@code Nu = 0.023 Re^0.8 Pr^n} of Dittus and Boelter
     * with R-410A at 200 kg/(m2 s) in an 8 mm tube (transport properties from memory): 460 W/(m2 K) for vapour at 8 degC and 700 W/(m2 K)
     * for liquid at 40 degC, half as much again in grooved tubes, against the two-phase figures above: 5.4 to 6.5 and 3.6 to 4.3. Hot gas
     * in a condenser does some 20 % better than vapour at 8 degC; that is left out.
     */
    private static final double VAPOUR = 6;

    private static final double LIQUID = 4;
    /** Exponent of the refrigerant flow in its heat transfer. */
    private static final double FLOW_EXPONENT = 0.8;
    /** Least share of the rated flow that is counted, so that a search which tries none still has a coil. */
    private static final double LEAST_FLOW = 0.02;
    /** Exponent of the air velocity in its heat transfer; usual for plate fins. */
    private static final double AIR_EXPONENT = 0.6;

    double airFlow(double share) {
        return airFlow * share;
    }

    double outerConductance(double airShare) {
        return conductance / AIR_SHARE * Math.pow(airShare, AIR_EXPONENT);
    }

    /** Conductance on the inside of the whole coil if it held two phases, W/K. */
    double innerConductance(double flow) {
        double share = Math.max(LEAST_FLOW, flow / refrigerantFlow);
        return conductance / (1 - AIR_SHARE) * Math.pow(share, FLOW_EXPONENT);
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds two phases, W/K. */
    double twoPhase(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow));
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds vapour, W/K. */
    double vapour(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow) / VAPOUR);
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds liquid, W/K. */
    double liquid(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow) / LIQUID);
    }

    private double perKelvin(double airShare, double inner) {
        double capacity = airFlow(airShare) * MoistAir.HEAT_CAPACITY;
        double outer = outerConductance(airShare);
        double ua = inner * outer / (inner + outer);
        return capacity * -Math.expm1(-ua / capacity);
    }
}
