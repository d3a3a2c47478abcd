package org.satline.examples.proof;

import org.satline.charge.ChargeLevel;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.MeteringDevice;
import org.satline.charge.SystemReadings;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.SimulatedSystem;

/**
 * One simulated visit with what is true of it.
 *
 * @param system the system
 * @param air the weather
 * @param fault the fault besides the charge, or none
 * @param faulty whether there is one
 * @param chargeError charge less rated charge, over rated charge
 * @param instruments what they are off by on this visit
 * @param question metering device, target and tolerance
 * @param readings what the instruments show
 * @param truth the level that exact instruments would find by the published check
 * @param target target of the quantity that is judged, K
 */
record Visit(
        SimulatedSystem system,
        AirConditions air,
        ImposedFault fault,
        boolean faulty,
        double chargeError,
        Instruments instruments,
        ChargeQuestion question,
        SystemReadings readings,
        ChargeLevel truth,
        double target) {
    MeteringDevice metering() {
        return question.metering();
    }
}
