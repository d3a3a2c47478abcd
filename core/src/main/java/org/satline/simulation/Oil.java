package org.satline.simulation;

/**
 * Oil in a compressor whose shell stands at the suction pressure; it holds refrigerant in solution: the more, the higher the pressure and
 * the colder the oil. Taken alike for every refrigerant, though some, ammonia and water among them, hardly dissolve.
 *
 * @param kilograms oil, kg
 * @param assumed figures that are assumed
 */
record Oil(double kilograms, Assumptions assumed) {
    static Oil of(double coolingWatts, Assumptions assumed) {
        return new Oil(assumed.oilForEachWatt * coolingWatts, assumed);
    }

    /** Refrigerant in solution, kg. */
    double dissolved(WorkingFluid fluid, double suctionPa, double superheatK) {
        double oilK = fluid.dewK(suctionPa) + Math.max(assumed.oilLeastRiseK, assumed.oilRiseK + superheatK);
        double fraction =
                assumed.oilSolubility * suctionPa / fluid.dewPressure(Math.min(oilK, fluid.dewK(fluid.highPa()) - 1));
        return kilograms * fraction / (1 - fraction);
    }
}
