package org.satline.simulation;

/**
 * Heat transfer of a cross-flow coil. Air in parallel slices over the tubes, each entering at the same temperature; the refrigerant passes
 * them one after the other. With it the temperature difference decays exponentially along the tubes: the effectiveness of cross-flow with
 * one fluid mixed (Kays and London, Compact Heat Exchangers).
 *
 * <p>Inside the tubes the conductance goes with the 0.8th power of the refrigerant flow: Dittus and Boelter 1930, Heat transfer in
 * automobile radiators of the tubular type, University of California Publications in Engineering 2:443-461, for one phase; for two phases
 * the convective part of Shah's correlations (1979, 1982) follows the same power.
 *
 * @param conductance U A of the whole coil with two-phase refrigerant and rated flows, W/K
 * @param airFlow rated mass flow of dry air, kg/s
 * @param refrigerantFlow rated mass flow of refrigerant, kg/s
 * @param assumed figures that are assumed
 */
record Coil(double conductance, double airFlow, double refrigerantFlow, Assumptions assumed) {
    /** Least share of the rated flow that is counted, so that a search which tries none still has a coil. */
    private static final double LEAST_FLOW = 0.02;

    double airFlow(double share) {
        return airFlow * share;
    }

    double outerConductance(double airShare) {
        return conductance / assumed.coilAirShare * Math.pow(airShare, assumed.coilAirExponent);
    }

    /** Conductance on the inside of the whole coil if it held two phases, W/K. */
    double innerConductance(double flow) {
        double share = Math.max(LEAST_FLOW, flow / refrigerantFlow);
        return conductance / (1 - assumed.coilAirShare) * Math.pow(share, assumed.coilFlowExponent);
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds two phases, W/K. */
    double twoPhase(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow));
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds vapour, W/K. */
    double vapour(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow) / assumed.coilVapourResistance);
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds liquid, W/K. */
    double liquid(double airShare, double flow) {
        return perKelvin(airShare, innerConductance(flow) / assumed.coilLiquidResistance);
    }

    private double perKelvin(double airShare, double inner) {
        double capacity = airFlow(airShare) * assumed.air.heatCapacity();
        double outer = outerConductance(airShare);
        double ua = inner * outer / (inner + outer);
        return capacity * -Math.expm1(-ua / capacity);
    }
}
