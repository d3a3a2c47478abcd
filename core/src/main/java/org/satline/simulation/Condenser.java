package org.satline.simulation;

/** What leaves the condenser and what it holds: vapour zone, two-phase zone, liquid zone, in this order along the tubes. */
record Condenser(
        double enthalpyOut, double temperatureOutK, double vapourShare, double twoPhaseShare, double meanDensity) {

    static Condenser of(
            WorkingFluid fluid, Coil coil, double airShare, double airK, double pa, double flow, double enthalpyIn) {
        double bubble = fluid.bubbleK(pa);
        double dew = fluid.dewK(pa);
        double hv = fluid.vapourEnthalpy(pa, 0);
        double hl = fluid.liquidEnthalpy(pa);
        double rhoV = fluid.vapourDensity(pa, 0);
        double rhoL = fluid.liquidDensity(pa);
        double vapour = 0;
        double hotDensity = rhoV;
        double x1 = Math.min(1, (enthalpyIn - hl) / (hv - hl));
        if (enthalpyIn > hv) {
            double superheat = fluid.superheatOfEnthalpy(pa, enthalpyIn);
            double heatCapacity = (enthalpyIn - hv) / superheat;
            vapour = flow
                    * heatCapacity
                    / coil.vapour(airShare, flow)
                    * Math.log((dew + superheat - airK) / (dew - airK));
            hotDensity = fluid.vapourDensity(pa, superheat / 2);
            if (vapour
                    >= 1) { // the coil only cools gas; far from any steady state of a sound search, so a bound will do
                return new Condenser(hv, dew, 1, 0, hotDensity);
            }
        }
        double cold = bubble - airK;
        double hot = cold + x1 * (dew - bubble);
        double glide = Math.max(hot - cold, 1e-6);
        double heatCapacity = Math.max(x1, 1e-9) * (hv - hl) / glide;
        double twoPhase = flow * heatCapacity / coil.twoPhase(airShare, flow) * Math.log1p(glide / cold);
        if (vapour + twoPhase >= 1) {
            double drop = hot * -Math.expm1(-(1 - vapour) * coil.twoPhase(airShare, flow) / (flow * heatCapacity));
            double out = Math.max(hl, hl + x1 * (hv - hl) - heatCapacity * drop);
            double x2 = (out - hl) / (hv - hl);
            double density = vapour * hotDensity + (1 - vapour) * VoidFraction.meanDensity(x1, x2, rhoL, rhoV);
            return new Condenser(out, bubble + x2 * (dew - bubble), vapour, 1 - vapour, density);
        }
        double liquid = 1 - vapour - twoPhase;
        double cl = fluid.liquidHeatCapacity(pa);
        double subcooling = cold * -Math.expm1(-liquid * coil.liquid(airShare, flow) / (flow * cl));
        double density = vapour * hotDensity
                + twoPhase * VoidFraction.meanDensity(x1, 0, rhoL, rhoV)
                + liquid * fluid.liquidDensityAt(bubble - subcooling / 2);
        return new Condenser(hl - cl * subcooling, bubble - subcooling, vapour, twoPhase, density);
    }
}
