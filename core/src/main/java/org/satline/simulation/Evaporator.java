package org.satline.simulation;

/**
 * What leaves the evaporator and what it holds: two-phase zone, then vapour zone. The two-phase zone is taken as wholly wet or wholly dry,
 * whichever moves more heat; wet by the enthalpy effectiveness of Braun, Klein and Mitchell 1989, Effectiveness models for cooling towers
 * and cooling coils, ASHRAE Transactions 95(2). The vapour zone is dry. Behind the coil the blower warms the air.
 */
record Evaporator(
        double enthalpyOut, double twoPhaseShare, double meanDensity, double meanK, boolean wet, double heatPerShare) {

    /** Return air, prepared. */
    record ReturnAir(double dryBulbK, double celsius, double wetBulb, double humidity, double enthalpy) {
        static ReturnAir of(AirConditions air, MoistAir moist) {
            double t = air.returnDryBulb().celsius();
            double wb = air.returnWetBulb().celsius();
            double w = moist.humidity(t, wb);
            return new ReturnAir(air.returnDryBulb().kelvins(), t, wb, w, moist.enthalpy(t, w));
        }
    }

    static Evaporator of(
            WorkingFluid fluid, Coil coil, double airShare, ReturnAir air, double pa, double flow, double enthalpyIn) {
        double bubble = fluid.bubbleK(pa);
        double dew = fluid.dewK(pa);
        double hv = fluid.vapourEnthalpy(pa, 0);
        double hl = fluid.liquidEnthalpy(pa);
        double rhoV = fluid.vapourDensity(pa, 0);
        double rhoL = fluid.liquidDensity(pa);
        double x1 = Math.min(1, Math.max(0, (enthalpyIn - hl) / (hv - hl)));
        double mean = (bubble + x1 * (dew - bubble) + dew) / 2;
        double dry = coil.twoPhase(airShare, flow) * (air.dryBulbK - mean);
        double wet = wetHeat(coil, airShare, air, flow, air.celsius - (air.dryBulbK - mean));
        double heat = Math.max(1e-6, Math.max(dry, wet));
        double twoPhase = flow * (hv - enthalpyIn) / heat;
        if (twoPhase >= 1) {
            double out = enthalpyIn + heat / flow;
            double x2 = Math.max(x1, (out - hl) / (hv - hl));
            double density = VoidFraction.meanDensity(x1, x2, rhoL, rhoV);
            return new Evaporator(out, 1, density, mean, wet > dry, heat);
        }
        twoPhase = Math.max(0, twoPhase);
        double heatCapacity = (fluid.vapourEnthalpy(pa, 10) - hv) / 10;
        double most = Math.max(0, air.dryBulbK - dew);
        double superheat = most * -Math.expm1(-(1 - twoPhase) * coil.vapour(airShare, flow) / (flow * heatCapacity));
        double density = twoPhase * VoidFraction.meanDensity(x1, 1, rhoL, rhoV)
                + (1 - twoPhase) * fluid.vapourDensity(pa, superheat / 2);
        return new Evaporator(fluid.vapourEnthalpy(pa, superheat), twoPhase, density, mean, wet > dry, heat);
    }

    /** Heat of the whole coil if it were wet and two-phase all over, W. */
    private static double wetHeat(Coil coil, double airShare, ReturnAir air, double flow, double meanCelsius) {
        if (!(air.wetBulb > meanCelsius + 0.05)) {
            return 0;
        }
        MoistAir moist = coil.assumed().air;
        double saturated = moist.saturatedEnthalpy(meanCelsius);
        double slope = (moist.saturatedEnthalpy(air.wetBulb) - saturated) / (air.wetBulb - meanCelsius);
        double outer = coil.outerConductance(airShare) / moist.heatCapacity();
        double overall = outer / (1 + slope * outer / coil.innerConductance(flow));
        double airFlow = coil.airFlow(airShare);
        return airFlow * -Math.expm1(-overall / airFlow) * (air.enthalpy - saturated);
    }

    /** Dry bulb of the air behind coil and blower, degC. */
    double supplyCelsius(WorkingFluid fluid, Coil coil, double airShare, ReturnAir air, double flow, double pa) {
        MoistAir moist = coil.assumed().air;
        double rise = coil.assumed().blowerWork / (moist.density() * moist.heatCapacity());
        return leavingCelsius(fluid, coil, airShare, air, flow, pa) + rise;
    }

    private double leavingCelsius(
            WorkingFluid fluid, Coil coil, double airShare, ReturnAir air, double flow, double pa) {
        double airFlow = coil.airFlow(airShare);
        MoistAir moist = coil.assumed().air;
        double capacity = airFlow * moist.heatCapacity();
        double cold;
        if (wet) {
            double passing = Math.exp(-coil.outerConductance(airShare) / capacity);
            double surface = moist.saturationTemperature(air.enthalpy - heatPerShare / airFlow / (1 - passing));
            cold = surface + (air.celsius - surface) * passing;
        } else {
            cold = air.celsius - heatPerShare / capacity;
        }
        if (twoPhaseShare >= 1) {
            return cold;
        }
        double superheating = flow * (enthalpyOut - fluid.vapourEnthalpy(pa, 0));
        return twoPhaseShare * cold + (1 - twoPhaseShare) * air.celsius - superheating / capacity;
    }
}
