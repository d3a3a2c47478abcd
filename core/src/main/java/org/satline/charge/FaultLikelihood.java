package org.satline.charge;

import java.util.List;
import java.util.Objects;
import org.satline.quantity.Parts;

/**
 * How well one fault explains the readings. Immutable, thread-safe.
 *
 * @param fault the fault
 * @param probability share of the faults compared, given the readings; the shares of a ranking add up to 1
 * @param readingsFor readings that this fault explains better than a sound system does
 * @param readingsAgainst readings that a sound system explains better
 */
public record FaultLikelihood(
        Fault fault, double probability, List<Residual> readingsFor, List<Residual> readingsAgainst) {
    /** {@inheritDoc} */
    public FaultLikelihood {
        Parts.numbers("probability", probability);
        Objects.requireNonNull(fault, "fault");
        readingsFor = Parts.list("readingsFor", readingsFor);
        readingsAgainst = Parts.list("readingsAgainst", readingsAgainst);
    }
}
