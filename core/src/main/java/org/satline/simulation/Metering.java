package org.satline.simulation;

import org.satline.charge.margin.MeteringDevice;

/**
 * Flow through expansion valve or orifice: {@code m = A sqrt(2 rho (p1 - pf))} with {@code A} the effective area. The jet flashes:
 * downstream it does not fall below {@code pf}, a share of the bubble pressure of the entering liquid, so that subcooling raises the flow
 * (form after the short-tube literature). Vapour at the inlet counts with the homogeneous density. The valve opens in
 * proportion to superheat above its static setting until it is wide open.
 *
 * @param device kind
 * @param area effective area wide open, m2
 * @param ratedSuperheatK superheat at the rating point, K
 * @param assumed figures that are assumed
 */
record Metering(MeteringDevice device, double area, double ratedSuperheatK, Assumptions assumed) {
    double opening(double superheatK) {
        if (device == MeteringDevice.FIXED_ORIFICE) {
            return 1;
        }
        double opening = (superheatK / ratedSuperheatK - assumed.staticShare) / assumed.spanShare;
        return Math.min(1, Math.max(0, opening));
    }

    double flow(double opening, double driving) {
        return area * opening * driving;
    }

    /** {@code sqrt(2 rho (p1 - pf))} of what arrives at the inlet, kg/(m2 s). */
    double driving(WorkingFluid fluid, double inletPa, double condensingPa, double enthalpy, double evaporatingPa) {
        if (!(inletPa > evaporatingPa)) {
            return 0;
        }
        double hl = fluid.liquidEnthalpy(inletPa);
        double density;
        double flashPa;
        if (enthalpy > hl) {
            double x = Math.min(1, (enthalpy - hl) / (fluid.vapourEnthalpy(inletPa, 0) - hl));
            density = 1 / (x / fluid.vapourDensity(inletPa, 0) + (1 - x) / fluid.liquidDensity(inletPa));
            flashPa = inletPa;
        } else {
            double subcooling = (hl - enthalpy) / fluid.liquidHeatCapacity(inletPa);
            double temperature = fluid.bubbleK(inletPa) - subcooling;
            density = fluid.liquidDensityAt(temperature);
            // Clausius-Clapeyron along the bubble line from the condensing pressure, near enough for some kelvins
            double step = 0.98;
            double slope = Math.log(1 / step) / (fluid.bubbleK(condensingPa) - fluid.bubbleK(condensingPa * step));
            flashPa = inletPa * Math.exp(-slope * subcooling);
        }
        double downstream = Math.max(evaporatingPa, assumed.flashShare * flashPa);
        return Math.sqrt(2 * density * Math.max(0, inletPa - downstream));
    }
}
