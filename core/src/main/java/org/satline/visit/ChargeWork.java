package org.satline.visit;

import java.util.Optional;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.StepAdvice;
import org.satline.quantity.Parts;

/**
 * How far the charge is off, and how much to move next. Immutable, thread-safe.
 *
 * @param estimate the charge error as a fraction of the full charge; nothing unless a level was decided and both margins were read
 * @param advice the next step; nothing unless the level is low or high, the full charge is known, and nothing bars the cylinder
 */
public record ChargeWork(Optional<ChargeEstimate> estimate, Optional<StepAdvice> advice) {
    /** {@inheritDoc} */
    public ChargeWork {
        Parts.required("estimate advice", estimate, advice);
    }
}
