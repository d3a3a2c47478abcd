package org.satline.program.proof;

import java.util.Optional;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.OperatingConditions;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.SystemReadings;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;

/**
 * One simulated visit with what is true of it.
 *
 * @param kind what is wrong
 * @param system the system, with what is in it
 * @param curve saturation of the refrigerant on its plate
 * @param air the weather
 * @param fault the fault besides the charge, or none
 * @param named the same by name
 * @param chargeError charge less rated charge, over rated charge
 * @param instruments what they are off by on this visit
 * @param question metering device, target and tolerance
 * @param readings what the instruments show
 * @param conditions what is known about how the system ran and stood
 * @param truth the level that exact instruments would find by the published check; empty where what they show is
 *     another refrigerant's
 * @param chargeAlone the same with every fault mended: what is true of the charge; empty where the refrigerant is
 *     another
 * @param target target of the quantity that is judged, K
 */
record Visit(
        Kind kind,
        Machine system,
        SaturationCurve curve,
        AirConditions air,
        ImposedFault fault,
        Optional<Fault> named,
        double chargeError,
        Instruments instruments,
        ChargeQuestion question,
        SystemReadings readings,
        OperatingConditions conditions,
        Optional<ChargeLevel> truth,
        Optional<ChargeLevel> chargeAlone,
        double target) {
    /** What is wrong on a visit. */
    enum Kind {
        NOTHING("nothing"),
        CHARGE("the charge alone"),
        FAULT("another fault alone"),
        BOTH("another fault and the charge"),
        REFRIGERANT("another refrigerant");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    MeteringDevice metering() {
        return question.metering();
    }

    /** Whether anything but the mass of the charge is wrong. */
    boolean faulty() {
        return kind == Kind.FAULT || kind == Kind.BOTH || kind == Kind.REFRIGERANT;
    }
}
