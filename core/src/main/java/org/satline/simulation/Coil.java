package org.satline.simulation;

/**
 * Heat transfer of a cross-flow coil. Air in parallel slices over the tubes, each entering at the same temperature; the refrigerant passes them one
 * after the other. With it the temperature difference decays exponentially along the tubes: the effectiveness of cross-flow with one fluid mixed
 * (Kays and London, Compact Heat Exchangers).
 *
 * @param conductance U A of the whole coil with two-phase refrigerant and rated airflow, W/K
 * @param airFlow rated mass flow of dry air, kg/s
 */
record Coil(double conductance, double airFlow) {
    /**
     * Share of the resistance that lies on the air side with two-phase refrigerant. Usual coil, constants from memory (ranges as in Shah and Sekulic 2003,
     * Fundamentals of Heat Exchanger Design): fins with an efficiency of 0.85 at 50 W/(m2 K) on 20 times the inner surface, inside 2500 W/(m2 K) in plain to
     * 4500 W/(m2 K) in grooved tubes: 0.75 to 0.84.
     */
    private static final double AIR_SHARE = 0.8;
    /** Resistance on the inside of single-phase refrigerant over that of two-phase; our choice, of the usual order. */
    private static final double SINGLE_PHASE = 3;
    /** Exponent of the air velocity in its heat transfer; usual for plate fins. */
    private static final double AIR_EXPONENT = 0.6;

    double airFlow(double share) {
        return airFlow * share;
    }

    double outerConductance(double airShare) {
        return conductance / AIR_SHARE * Math.pow(airShare, AIR_EXPONENT);
    }

    double innerConductance() {
        return conductance / (1 - AIR_SHARE);
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds two phases, W/K. */
    double twoPhase(double airShare) {
        return perKelvin(airShare, innerConductance());
    }

    /** Heat for each kelvin between refrigerant and entering air if the whole coil holds one phase, W/K. */
    double singlePhase(double airShare) {
        return perKelvin(airShare, innerConductance() / SINGLE_PHASE);
    }

    private double perKelvin(double airShare, double inner) {
        double capacity = airFlow(airShare) * MoistAir.HEAT_CAPACITY;
        double outer = outerConductance(airShare);
        double ua = inner * outer / (inner + outer);
        return capacity * -Math.expm1(-ua / capacity);
    }
}
