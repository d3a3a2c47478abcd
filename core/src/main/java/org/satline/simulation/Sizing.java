package org.satline.simulation;

import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.simulation.Compressor.Suction;
import org.satline.simulation.Cycle.Parts;
import org.satline.simulation.Evaporator.ReturnAir;

/** Sizes the parts of a system so that it runs at its rating point. */
final class Sizing {
    private Sizing() {}

    static Parts of(SystemDesign design, WorkingFluid fluid, Assumptions assumed) {
        AirConditions rated = AirConditions.rated();
        double evaporatingPa = fluid.dewPressure(design.evaporating().kelvins());
        double outdoorK = rated.outdoor().kelvins();
        double condensingPa =
                fluid.bubblePressure(outdoorK + design.condensingApproach().kelvins());
        double superheat = design.superheat().kelvins();
        Suction suction = Suction.of(fluid, evaporatingPa, superheat);
        double subcooling = design.subcooling().kelvins();
        double liquidEnthalpy =
                fluid.liquidEnthalpy(condensingPa) - fluid.liquidHeatCapacity(condensingPa) * subcooling;
        double watts = design.capacity().watts();
        double flow = watts / (suction.enthalpy() - liquidEnthalpy);
        double swept = flow / suction.density() / Compressor.volumetricEfficiency(evaporatingPa, condensingPa, assumed);
        Compressor compressor = new Compressor(swept, design.isentropicEfficiency(), assumed);
        double hot = compressor.dischargeEnthalpy(fluid, suction, condensingPa, 0);
        double condenserAir = watts * assumed.condenserAir * assumed.usualAir * assumed.air.density();
        Coil condenser = size(
                condenserAir,
                flow,
                assumed,
                coil -> Condenser.of(fluid, coil, 1, outdoorK, condensingPa, flow, hot)
                                .enthalpyOut()
                        - liquidEnthalpy,
                "condenser");
        // tons are those that reach the room: cooling of the refrigerant less the heat of the blower
        double evaporatorAir =
                watts * assumed.usualAir / (1 + assumed.usualAir * assumed.blowerWork) * assumed.air.density();
        ReturnAir air = ReturnAir.of(rated, assumed.air);
        Coil evaporator = size(
                evaporatorAir,
                flow,
                assumed,
                coil -> suction.enthalpy()
                        - Evaporator.of(fluid, coil, 1, air, evaporatingPa, flow, liquidEnthalpy)
                                .enthalpyOut(),
                "evaporator");
        Metering unit = new Metering(design.metering(), 1, superheat, assumed);
        double driving = unit.driving(fluid, condensingPa, condensingPa, liquidEnthalpy, evaporatingPa);
        double opening = unit.opening(superheat);
        double litre = 1e-3 * watts / 1000;
        SystemDesign.CoilVolumes volumes = design.coilVolumes();
        return new Parts(
                fluid,
                compressor,
                condenser,
                evaporator,
                new Metering(design.metering(), flow / (opening * driving), superheat, assumed),
                flow,
                fluid.liquidDensityAt(fluid.bubbleK(condensingPa) - subcooling),
                volumes.condenser() * litre,
                volumes.evaporator() * litre,
                volumes.liquidLine() * litre,
                volumes.vapourSide() * litre,
                Oil.of(watts, assumed));
    }

    /** A larger coil brings the excess down; one that air and approach cannot serve at any size is refused. */
    private static Coil size(
            double airFlow, double flow, Assumptions assumed, ToDoubleFunction<Coil> excess, String what) {
        DoubleUnaryOperator excessOf = ua -> excess.applyAsDouble(new Coil(ua, airFlow, flow, assumed));
        double low = 0.05 * airFlow * assumed.air.heatCapacity();
        double high = 400 * low;
        if (!(excessOf.applyAsDouble(low) > 0 && excessOf.applyAsDouble(high) < 0)) {
            throw new IllegalArgumentException(
                    "no " + what
                            + " coil reaches the rating point with the usual airflow; choose a larger approach or a smaller margin");
        }
        double ua = new BrentSolver(1e-10, 1e-7).solve(200, excessOf::applyAsDouble, low, high);
        return new Coil(ua, airFlow, flow, assumed);
    }
}
