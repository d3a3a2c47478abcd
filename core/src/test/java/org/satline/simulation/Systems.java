package org.satline.simulation;

import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.refrigerant.Catalogue;

/** Systems for tests. */
final class Systems {
    private Systems() {}

    static SimulatedSystem typical(String refrigerant, MeteringDevice metering) {
        return SimulatedSystem.of(
                SystemDesign.typical(Catalogue.standard().find(refrigerant), metering, Power.ofTonsOfRefrigeration(3)));
    }

    static SteadyState at(SimulatedSystem system, double chargeShare, ImposedFault fault) {
        return at(system, chargeShare, AirConditions.rated(), fault);
    }

    static SteadyState at(SimulatedSystem system, double chargeShare, AirConditions air, ImposedFault fault) {
        return system.steadyState(
                Mass.ofKilograms(chargeShare * system.ratedCharge().kilograms()), air, fault);
    }
}
