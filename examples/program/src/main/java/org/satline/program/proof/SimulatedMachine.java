package org.satline.program.proof;

import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;

/** A machine of the library's own simulation. */
record SimulatedMachine(SimulatedSystem system) implements Machine {
    @Override
    public MeteringDevice metering() {
        return system.design().metering();
    }

    @Override
    public Refrigerant refrigerant() {
        return system.design().refrigerant();
    }

    @Override
    public Mass ratedCharge() {
        return system.ratedCharge();
    }

    @Override
    public double ratedSubcoolingK() {
        return system.design().subcooling().kelvins();
    }

    @Override
    public Ports settled(double chargeError, AirConditions air, ImposedFault fault) {
        SteadyState state = system.steadyState(charge(chargeError), air, fault);
        return new Ports(
                state.suctionPressure(),
                state.suctionLine(),
                state.liquidPressure(),
                state.liquidLine(),
                state.dischargeLine(),
                state.supplyDryBulb());
    }

    @Override
    public Pressure atRest(double chargeError, AirConditions air, ImposedFault fault) {
        return system.standingPressure(charge(chargeError), air.outdoor(), air, fault);
    }

    private Mass charge(double error) {
        return Mass.ofKilograms(ratedCharge().kilograms() * (1 + error));
    }
}
