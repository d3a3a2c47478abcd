package org.satline.audit.cause;

import java.util.Optional;
import java.util.function.Function;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.equilibrium.ConvergenceException;

/**
 * A mistake and what it makes of each row.
 *
 * @param mistake the mistake
 * @param besides the other one where two are made in the same rows
 * @param fitted whether its amount was taken from the rows themselves
 * @param effect what a calculator with this mistake answers; empty where the mistake does not apply
 */
record Hypothesis(
        Mistake mistake, Optional<Mistake> besides, boolean fitted, Function<AuditCase, Optional<Expected>> effect) {
    /** A mistake alone. */
    Hypothesis(Mistake mistake, boolean fitted, Function<AuditCase, Optional<Expected>> effect) {
        this(mistake, Optional.empty(), fitted, effect);
    }

    /** What the row should hold under this mistake; empty where it does not apply or leads to no state. */
    Optional<Expected> expected(AuditCase row) {
        try {
            return effect.apply(row);
        } catch (IllegalArgumentException | ConvergenceException e) {
            return Optional.empty(); // a mistake that leads out of every range cannot have been made here
        }
    }
}
