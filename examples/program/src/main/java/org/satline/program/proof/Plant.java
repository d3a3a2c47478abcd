package org.satline.program.proof;

import org.satline.charge.belief.ChargeEstimate.Constants;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.step.StepReading;

/** A system of known truth that refrigerant can be moved into and out of, and that is read once it has settled. */
interface Plant {
    MeteringDevice metering();

    Mass fullCharge();

    /** Typical constants, as the plate of this system gives them. */
    Constants constants();

    double toleranceK();

    /** Charge less the right charge, over the right charge. */
    double chargeError();

    /** Towards more charge, K, as it stands, without noise. */
    double deviationK();

    /** Whether what is judged follows the charge here. */
    boolean follows();

    /** Moves refrigerant, adding positive, and lets the system settle. */
    void move(double kg);

    StepReading read();

    /** What the charge estimate makes of the readings: charge error as a fraction of the full charge. */
    double estimatedError();
}
