package org.satline.program.proof;

import org.satline.charge.margin.MeteringDevice;
import org.satline.program.mapped.Air;
import org.satline.program.mapped.MappedMachine;
import org.satline.program.mapped.Running;
import org.satline.program.mapped.Trouble;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;

/** A machine of another build. */
record MappedOne(MappedMachine machine, Refrigerant refrigerant) implements Machine {
    @Override
    public MeteringDevice metering() {
        return machine.valve() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE;
    }

    @Override
    public Mass ratedCharge() {
        return Mass.ofKilograms(machine.ratedChargeKg());
    }

    @Override
    public double ratedSubcoolingK() {
        return machine.ratedSubcoolingK();
    }

    @Override
    public Ports settled(double chargeError, AirConditions air, ImposedFault fault) {
        Air around = new Air(
                air.outdoor().celsius(),
                air.returnDryBulb().celsius(),
                air.returnWetBulb().celsius());
        Running running = machine.at(1 + chargeError, around, trouble(fault))
                .orElseThrow(() -> new NoSteadyStateException("nothing balances; draw another machine"));
        return new Ports(
                Pressure.ofPascals(running.suctionPa()),
                Temperature.ofKelvins(running.suctionLineK()),
                Pressure.ofPascals(running.liquidPa()),
                Temperature.ofKelvins(running.liquidLineK()),
                Temperature.ofKelvins(running.dischargeK()),
                Temperature.ofKelvins(running.supplyK()));
    }

    @Override
    public Pressure atRest(double chargeError, AirConditions air, ImposedFault fault) {
        return Pressure.ofPascals(machine.standingPa(air.outdoor().kelvins(), trouble(fault)));
    }

    private static Trouble trouble(ImposedFault fault) {
        return new Trouble(
                fault.condenserAirLost(),
                fault.evaporatorAirLost(),
                fault.restriction().pascals(),
                fault.valveLeakage(),
                fault.nonCondensable().pascals());
    }
}
