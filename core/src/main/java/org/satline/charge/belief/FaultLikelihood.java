package org.satline.charge.belief;

import java.util.Objects;
import org.satline.quantity.Parts;

/**
 * How likely a fault is, given all readings together. Immutable, thread-safe.
 *
 * @param fault the fault
 * @param probability that it is there, whatever else is wrong too; in [0, 1]
 */
public record FaultLikelihood(Fault fault, double probability) {
    /** {@inheritDoc} */
    public FaultLikelihood {
        Parts.numbers("probability", probability);
        Objects.requireNonNull(fault, "fault");
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability " + probability + " is outside [0, 1]");
        }
    }
}
