package org.satline.simulation;

import org.satline.simulation.Compressor.Suction;

/**
 * The system at trial pressures and superheat: once around, from the suction to the metering device, with what does not yet balance.
 *
 * @param suction what the compressor draws
 * @param flow mass flow of the compressor, kg/s
 * @param dischargeEnthalpy enthalpy behind the compressor, J/kg
 * @param condenser condenser
 * @param evaporator evaporator
 * @param meteredFlow mass flow that the metering device would pass, kg/s
 * @param charge refrigerant held, kg
 */
record Cycle(
        Suction suction,
        double flow,
        double dischargeEnthalpy,
        Condenser condenser,
        Evaporator evaporator,
        double meteredFlow,
        double charge) {

    /** Sized parts and volumes in m3. */
    record Parts(
            WorkingFluid fluid,
            Compressor compressor,
            Coil condenserCoil,
            Coil evaporatorCoil,
            Metering metering,
            double ratedFlow,
            double ratedLiquidDensity,
            double condenserVolume,
            double evaporatorVolume,
            double liquidVolume,
            double vapourVolume,
            Oil oil) {
        Parts filledWith(WorkingFluid other) {
            return new Parts(
                    other,
                    compressor,
                    condenserCoil,
                    evaporatorCoil,
                    metering,
                    ratedFlow,
                    ratedLiquidDensity,
                    condenserVolume,
                    evaporatorVolume,
                    liquidVolume,
                    vapourVolume,
                    oil);
        }
    }

    /** What the system works in. */
    record Surroundings(Evaporator.ReturnAir returnAir, double outdoorK, ImposedFault fault) {}

    static Cycle at(Parts parts, Surroundings around, double evaporatingPa, double condensingPa, double superheatK) {
        WorkingFluid fluid = parts.fluid();
        ImposedFault fault = around.fault();
        double dischargePa = condensingPa + fault.nonCondensable().pascals();
        Suction suction = Suction.of(fluid, evaporatingPa, superheatK);
        double flow = parts.compressor().flow(evaporatingPa, dischargePa, suction.density(), fault.valveLeakage());
        double hot = parts.compressor().dischargeEnthalpy(fluid, suction, dischargePa, fault.valveLeakage());
        Condenser condenser = Condenser.of(
                fluid, parts.condenserCoil(), 1 - fault.condenserAirLost(), around.outdoorK(), condensingPa, flow, hot);
        Evaporator evaporator = Evaporator.of(
                fluid,
                parts.evaporatorCoil(),
                1 - fault.evaporatorAirLost(),
                around.returnAir(),
                evaporatingPa,
                flow,
                condenser.enthalpyOut());
        double liquidDensity = liquidLineDensity(fluid, condensingPa, condenser);
        double share = flow / parts.ratedFlow();
        double inletPa = dischargePa
                - fault.restriction().pascals() * share * share * parts.ratedLiquidDensity() / liquidDensity;
        double driving = parts.metering().driving(fluid, inletPa, condensingPa, condenser.enthalpyOut(), evaporatingPa);
        double metered = parts.metering().flow(parts.metering().opening(superheatK), driving);
        double charge = parts.condenserVolume() * condenser.meanDensity()
                + parts.evaporatorVolume() * evaporator.meanDensity()
                + parts.liquidVolume() * liquidDensity
                + parts.vapourVolume() * suction.density()
                + parts.oil().dissolved(fluid, evaporatingPa, superheatK);
        return new Cycle(suction, flow, hot, condenser, evaporator, metered, charge);
    }

    private static double liquidLineDensity(WorkingFluid fluid, double pa, Condenser condenser) {
        double hl = fluid.liquidEnthalpy(pa);
        if (condenser.enthalpyOut() <= hl) {
            return fluid.liquidDensityAt(condenser.temperatureOutK());
        }
        double x = Math.min(1, (condenser.enthalpyOut() - hl) / (fluid.vapourEnthalpy(pa, 0) - hl));
        return VoidFraction.meanDensity(x, x, fluid.liquidDensity(pa), fluid.vapourDensity(pa, 0));
    }

    /** Enthalpy that leaves the evaporator less that assumed at the suction, J/kg. */
    double suctionExcess() {
        return evaporator.enthalpyOut() - suction.enthalpy();
    }
}
