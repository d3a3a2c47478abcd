package org.satline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.quantity.Mass;
import org.satline.simulation.AirConditions;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;

/** Makes responses.csv from the simulated systems of the library. */
final class ResponseMaker {
    static final String HEAD = "model,fault,charge,outdoor_c,wet_bulb_c,suction_kpa,liquid_kpa,"
            + "suction_line_c,liquid_line_c,discharge_line_c,supply_c";

    private ResponseMaker() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("# Steady states of org.satline.simulation, return air " + ResponseTable.RETURN_C
                + " degC; made by org.satline.fleet.Main responses");
        lines.add(HEAD);
        for (UnitModel model : UnitModel.values()) {
            SimulatedSystem system = SimulatedSystem.of(model.design());
            for (double outdoor : ResponseTable.OUTDOOR) {
                for (double charge : ResponseTable.CHARGES) {
                    for (double wetBulb : ResponseTable.WET_BULBS) {
                        lines.add(line(model, system, UnitFault.NONE, charge, outdoor, wetBulb));
                    }
                }
                for (UnitFault fault : UnitFault.values()) {
                    if (fault != UnitFault.NONE) {
                        lines.add(line(
                                model,
                                system,
                                fault,
                                1,
                                outdoor,
                                ResponseTable.WET_BULBS.get(ResponseTable.WET_BULBS.size() / 2)));
                    }
                }
            }
        }
        return lines;
    }

    static String line(
            UnitModel model, SimulatedSystem system, UnitFault fault, double charge, double outdoor, double wetBulb) {
        SteadyState state = system.steadyState(
                Mass.ofKilograms(charge * system.ratedCharge().kilograms()),
                AirConditions.ofCelsius(outdoor, ResponseTable.RETURN_C, wetBulb),
                fault.imposed());
        return String.format(
                Locale.ROOT,
                "%s,%s,%s,%s,%s,%.3f,%.3f,%.4f,%.4f,%.3f,%.3f",
                model,
                fault,
                charge,
                outdoor,
                wetBulb,
                state.suctionPressure().pascals() / 1000,
                state.liquidPressure().pascals() / 1000,
                state.suctionLine().celsius(),
                state.liquidLine().celsius(),
                state.dischargeLine().celsius(),
                state.supplyDryBulb().celsius());
    }
}
