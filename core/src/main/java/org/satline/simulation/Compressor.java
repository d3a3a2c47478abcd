package org.satline.simulation;

/**
 * Positive-displacement compressor with clearance. Volumetric efficiency {@code 1 - c ((p2/p1)^(1/n) - 1)}, usual text-book form;
 * isentropic efficiency constant; the shell loses no heat.
 *
 * @param displacement swept volume flow, m3/s
 * @param isentropicEfficiency isentropic efficiency
 * @param assumed figures that are assumed
 */
record Compressor(double displacement, double isentropicEfficiency, Assumptions assumed) {
    static double volumetricEfficiency(double suctionPa, double dischargePa, Assumptions assumed) {
        return Math.max(
                0.05, 1 - assumed.clearance * (Math.pow(dischargePa / suctionPa, 1 / assumed.clearanceExponent) - 1));
    }

    double flow(double suctionPa, double dischargePa, double suctionDensity, double leakage) {
        return displacement * volumetricEfficiency(suctionPa, dischargePa, assumed) * suctionDensity * (1 - leakage);
    }

    /** Enthalpy of the gas that leaves, J/kg. */
    double dischargeEnthalpy(WorkingFluid fluid, Suction suction, double dischargePa, double leakage) {
        double dewEntropy = fluid.vapourEntropy(dischargePa, 0);
        double ideal;
        if (suction.entropy() >= dewEntropy) {
            double superheat = fluid.superheatOfEntropy(dischargePa, suction.entropy());
            ideal = fluid.vapourEnthalpy(dischargePa, superheat);
        } else {
            ideal = fluid.vapourEnthalpy(dischargePa, 0) - fluid.dewK(dischargePa) * (dewEntropy - suction.entropy());
        }
        double work = (ideal - suction.enthalpy()) / isentropicEfficiency;
        return suction.enthalpy() + work * (1 + assumed.leakedWorkKept * leakage / (1 - leakage));
    }

    /** What the compressor draws. */
    record Suction(double enthalpy, double entropy, double density, double temperatureK, double vapourFraction) {
        /** Steepness with which a negative superheat counts liquid, J/(kg K): near that of vapour, so that the search has no kink. */
        private static final double WET_STEP = 1000;

        static Suction of(WorkingFluid fluid, double pa, double superheatK) {
            double dew = fluid.dewK(pa);
            double hv = fluid.vapourEnthalpy(pa, 0);
            if (superheatK >= 0) {
                return new Suction(
                        fluid.vapourEnthalpy(pa, superheatK),
                        fluid.vapourEntropy(pa, superheatK),
                        fluid.vapourDensity(pa, superheatK),
                        dew + superheatK,
                        1);
            }
            double latent = hv - fluid.liquidEnthalpy(pa);
            double x = Math.max(0, 1 + superheatK * WET_STEP / latent);
            double specificVolume = x / fluid.vapourDensity(pa, 0) + (1 - x) / fluid.liquidDensity(pa);
            double bubble = fluid.bubbleK(pa);
            double temperature = bubble + x * (dew - bubble);
            return new Suction(
                    hv - (1 - x) * latent,
                    fluid.vapourEntropy(pa, 0) - (1 - x) * latent / ((dew + temperature) / 2),
                    1 / specificVolume,
                    temperature,
                    x);
        }
    }
}
