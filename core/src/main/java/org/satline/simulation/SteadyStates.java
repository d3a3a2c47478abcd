package org.satline.simulation;

import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** Reads a balanced cycle as gauges and thermometers would. */
final class SteadyStates {
    private SteadyStates() {}

    static SteadyState of(Cycle.Parts parts, Cycle.Surroundings around, Balance.Point point) {
        WorkingFluid fluid = parts.fluid();
        Cycle cycle = point.cycle();
        ImposedFault fault = around.fault();
        double dischargePa = point.condensingPa() + fault.nonCondensable().pascals();
        double hot = cycle.dischargeEnthalpy();
        double dischargeK = fluid.dewK(dischargePa) + fluid.superheatOfEnthalpy(dischargePa, hot);
        double suctionK = cycle.suction().temperatureK();
        double liquidK = cycle.condenser().temperatureOutK();
        double condenserWatts = cycle.flow() * (hot - cycle.condenser().enthalpyOut());
        double condenserAir = parts.condenserCoil().airFlow(1 - fault.condenserAirLost())
                * parts.condenserCoil().assumed().air.heatCapacity();
        double airShare = 1 - fault.evaporatorAirLost();
        double supply = cycle.evaporator()
                .supplyCelsius(
                        fluid,
                        parts.evaporatorCoil(),
                        airShare,
                        around.returnAir(),
                        cycle.flow(),
                        point.evaporatingPa());
        return new SteadyState(
                Pressure.ofPascals(point.evaporatingPa()),
                Pressure.ofPascals(dischargePa),
                Temperature.ofKelvins(suctionK),
                Temperature.ofKelvins(liquidK),
                Temperature.ofKelvins(dischargeK),
                TemperatureDifference.ofKelvins(suctionK - fluid.dewK(point.evaporatingPa())),
                TemperatureDifference.ofKelvins(fluid.bubbleK(dischargePa) - liquidK),
                Temperature.ofCelsius(supply),
                Temperature.ofKelvins(around.outdoorK() + condenserWatts / condenserAir),
                Power.ofWatts(cycle.flow()
                        * (cycle.suction().enthalpy() - cycle.condenser().enthalpyOut())),
                Power.ofWatts(cycle.flow() * (hot - cycle.suction().enthalpy())),
                cycle.flow(),
                cycle.suction().vapourFraction(),
                parts.metering().opening(point.superheatK()));
    }
}
