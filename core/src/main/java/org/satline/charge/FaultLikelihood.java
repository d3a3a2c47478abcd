package org.satline.charge;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * How well one fault explains the readings. Immutable, thread-safe.
 *
 * @param fault the fault
 * @param probability share of the faults compared, given the readings; the shares of a ranking add up to 1
 * @param readingsFor readings that this fault explains better than a sound system does
 * @param readingsAgainst readings that a sound system explains better
 */
public record FaultLikelihood(Fault fault, double probability, List<String> readingsFor, List<String> readingsAgainst) {
    /** {@inheritDoc} */
    public FaultLikelihood {
        Objects.requireNonNull(fault, "fault");
        readingsFor = List.copyOf(readingsFor);
        readingsAgainst = List.copyOf(readingsAgainst);
    }

    /** Such as {@code undercharge 87 % (for: ...; against: ...)}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.0f %%", fault.label(), 100 * probability)
                + (readingsFor.isEmpty() ? "" : ", for: " + String.join(", ", readingsFor))
                + (readingsAgainst.isEmpty() ? "" : ", against: " + String.join(", ", readingsAgainst));
    }
}
