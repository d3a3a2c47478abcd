package org.satline.simulation;

import org.satline.charge.margin.MeteringDevice;

/**
 * A system at rest, all of it at one temperature: liquid and vapour in the volume of the whole system. Foreign gas, which ran in the
 * condenser, stays there behind a closed expansion valve, or spreads through a fixed orifice over all vapour; it is taken as ideal.
 */
final class Rest {
    private Rest() {}

    /** Pressure, Pa, at the port of the liquid side. */
    static double pressure(Cycle.Parts parts, double charge, double temperatureK) {
        WorkingFluid fluid = parts.fluid();
        double bubble = fluid.bubblePressure(temperatureK);
        return bubble - vapourFraction(parts, charge, temperatureK) * (bubble - fluid.dewPressure(temperatureK));
    }

    /** Partial pressure at rest of the gas that has the given one in the running condenser, Pa. */
    static double gas(Cycle.Parts parts, double charge, double temperatureK, Balance.Point running, double partialPa) {
        WorkingFluid fluid = parts.fluid();
        double runningK = fluid.dewK(running.condensingPa());
        if (parts.metering().device() == MeteringDevice.EXPANSION_VALVE) {
            return partialPa * temperatureK / runningK;
        }
        double liquid = fluid.liquidDensity(running.condensingPa());
        double vapour = fluid.vapourDensity(running.condensingPa(), 0);
        double space = parts.condenserVolume()
                * Math.max(0, (liquid - running.cycle().condenser().meanDensity()) / (liquid - vapour));
        double fraction = vapourFraction(parts, charge, temperatureK);
        double vapourAtRest = charge * fraction / fluid.vapourDensity(fluid.dewPressure(temperatureK), 0);
        return partialPa * temperatureK / runningK * Math.min(1, space / vapourAtRest);
    }

    /**
     * From the density of the whole, between saturated liquid and vapour; a blend's pressure goes evenly from its bubble to its dew point
     * with it.
     */
    private static double vapourFraction(Cycle.Parts parts, double charge, double temperatureK) {
        WorkingFluid fluid = parts.fluid();
        double liquid = 1 / fluid.liquidDensityAt(temperatureK);
        double vapour = 1 / fluid.vapourDensity(fluid.dewPressure(temperatureK), 0);
        double volume =
                parts.condenserVolume() + parts.evaporatorVolume() + parts.liquidVolume() + parts.vapourVolume();
        double fraction = (volume / charge - liquid) / (vapour - liquid);
        if (!(fraction > 0 && fraction < 1)) {
            throw new NoSteadyStateException(
                    "at rest the system holds one phase only; simulate a charge nearer to the rated one");
        }
        return fraction;
    }
}
