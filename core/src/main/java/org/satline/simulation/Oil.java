package org.satline.simulation;

/**
 * Oil in a compressor whose shell stands at the suction pressure; it holds refrigerant in solution: the more, the higher the pressure and
 * the colder the oil. Figures from memory, of the order of published charts of hydrofluorocarbons in ester oil and of R-22 in mineral oil
 * (9 % of R-410A at 60 degC and 1 MPa), and taken for every refrigerant, though some, ammonia and water among them, hardly dissolve.
 *
 * @param kilograms oil, kg
 */
record Oil(double kilograms) {
    /** Oil of a hermetic compressor: 0.1 kg for each kilowatt of cooling; common practice, no source. */
    private static final double KILOGRAMS_PER_WATT = 1e-4;
    /** Mass fraction of refrigerant in the solution for each unit of pressure over saturation pressure at the temperature of the oil. */
    private static final double SOLUBILITY = 0.35;
    /**
     * Oil over dew point at the suction pressure, K, while saturated vapour returns: heat of motor and discharge. Our choice, of the usual
     * order.
     */
    private static final double RISE_K = 20;
    /** The least that is left of it, K, when liquid returns. Our choice. */
    private static final double LEAST_RISE_K = 5;

    static Oil of(double coolingWatts) {
        return new Oil(KILOGRAMS_PER_WATT * coolingWatts);
    }

    /** Refrigerant in solution, kg. */
    double dissolved(WorkingFluid fluid, double suctionPa, double superheatK) {
        double oilK = fluid.dewK(suctionPa) + Math.max(LEAST_RISE_K, RISE_K + superheatK);
        double fraction = SOLUBILITY * suctionPa / fluid.dewPressure(Math.min(oilK, fluid.dewK(fluid.highPa()) - 1));
        return kilograms * fraction / (1 - fraction);
    }
}
