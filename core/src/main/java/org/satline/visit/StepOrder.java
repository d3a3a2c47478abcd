package org.satline.visit;

import java.time.Duration;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.Medium;

/**
 * One step of refrigerant, with the readings of the scale at which it ends. Readings are what this scale will show: since it was zeroed
 * where it was zeroed, below zero for a source. Immutable, thread-safe.
 *
 * @param amount how much; above zero
 * @param stopReading the reading at which this step ends
 * @param neverPass the reading at which to stop whatever happens
 * @param port the port of the system
 * @param valve the valve of the cylinder
 * @param phase what flows
 * @param settling how long the system runs after the step before it is read again
 */
public record StepOrder(
        Mass amount,
        Reading<MassDifference> stopReading,
        MassDifference neverPass,
        PointKind port,
        PointKind valve,
        Medium phase,
        Duration settling) {
    /** {@inheritDoc} */
    public StepOrder {
        Parts.required("amount stopReading neverPass port", amount, stopReading, neverPass, port);
        Parts.required("valve phase settling", valve, phase, settling);
        if (!(amount.kilograms() > 0)) {
            throw new IllegalArgumentException("step of " + amount + " is not above zero; a step moves something");
        }
    }
}
