package org.satline.charge.belief;

import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * A choice with what it is expected to cost. Immutable, thread-safe.
 *
 * @param choice what is done
 * @param fault which fault is mended; empty for every other choice
 * @param expectedLoss in call-backs, not negative
 */
public record WeighedChoice(Choice choice, Optional<Fault> fault, double expectedLoss) {
    /** {@inheritDoc} */
    public WeighedChoice {
        Parts.required("choice fault", choice, fault);
        if (!(expectedLoss >= 0 && expectedLoss < 1e6)) {
            throw new IllegalArgumentException("expected loss " + expectedLoss + " is not usable; give 0 or more");
        }
    }
}
