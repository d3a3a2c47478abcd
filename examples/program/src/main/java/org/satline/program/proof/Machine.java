package org.satline.program.proof;

import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;

/** A machine of known truth, of whatever build. */
interface Machine {
    MeteringDevice metering();

    /** What the plate says. */
    Refrigerant refrigerant();

    Mass ratedCharge();

    double ratedSubcoolingK();

    /**
     * What it settles to.
     *
     * @param chargeError charge less the right charge, over the right charge
     * @throws NoSteadyStateException if nothing balances
     */
    Ports settled(double chargeError, AirConditions air, ImposedFault fault);

    /** Pressure at rest at the temperature of the outdoor air. */
    Pressure atRest(double chargeError, AirConditions air, ImposedFault fault);
}
