package org.satline.audit.cause;

import java.util.Optional;
import java.util.function.Function;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.equilibrium.ConvergenceException;

/** A mistake by where it is made: with the question, with the value, or with the number that is printed. Immutable. */
sealed interface Slip {
    /** The mistake. */
    Mistake mistake();

    /** What the row should hold under this mistake alone. */
    Optional<Expected> alone(AuditCase row);

    /**
     * A mistake that changes what is asked, or the value before it is printed.
     *
     * @param mistake the mistake
     * @param effect the row as a calculator with this mistake sees it; empty where the mistake does not apply
     */
    record OfCase(Mistake mistake, Function<AuditCase, Optional<AuditCase>> effect) implements Slip {
        @Override
        public Optional<Expected> alone(AuditCase row) {
            return effect.apply(row).map(AuditCase::plain);
        }

        /** The row under this mistake; empty also where it leads to no state. */
        Optional<AuditCase> seen(AuditCase row) {
            try {
                return effect.apply(row);
            } catch (IllegalArgumentException | ConvergenceException e) {
                return Optional.empty(); // a mistake that leads out of every range cannot have been made here
            }
        }
    }

    /**
     * A mistake with the number that is printed.
     *
     * @param mistake the mistake
     * @param effect what is printed; empty where the mistake does not apply
     */
    record OfNumber(Mistake mistake, Function<AuditCase, Optional<Expected>> effect) implements Slip {
        @Override
        public Optional<Expected> alone(AuditCase row) {
            return effect.apply(row);
        }
    }
}
