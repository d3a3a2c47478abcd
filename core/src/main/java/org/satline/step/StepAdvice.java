package org.satline.step;

import java.time.Duration;
import java.util.List;
import org.satline.explanation.Finding;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/** What to do next with the charge. */
public sealed interface StepAdvice {
    /**
     * Why.
     *
     * @return reasons in order, unmodifiable
     */
    List<Finding> reasons();

    /** Which way refrigerant moves. */
    enum Direction {
        /** From a clean source cylinder into the system. */
        ADD,
        /** From the system into the recovery cylinder. */
        REMOVE
    }

    /**
     * Move refrigerant, then wait and read again.
     *
     * @param direction which way
     * @param amount how much
     * @param passing probability that the next reading lies past the far edge of the band
     * @param settlingTime how long to let the system settle before reading
     * @param changesDirection whether it turns round: another cylinder and another purge
     * @param reasons why
     */
    record Move(
            Direction direction,
            Mass amount,
            double passing,
            Duration settlingTime,
            boolean changesDirection,
            List<Finding> reasons)
            implements StepAdvice {
        /** {@inheritDoc} */
        public Move {
            Parts.numbers("passing", passing);
            Parts.required("direction amount settlingTime", direction, amount, settlingTime);
            reasons = Parts.list("reasons", reasons);
        }
    }

    /**
     * Stop: the charge is as good as it gets.
     *
     * @param probabilityOnTarget probability that it is on target
     * @param reasons why
     */
    record Done(double probabilityOnTarget, List<Finding> reasons) implements StepAdvice {
        /** {@inheritDoc} */
        public Done {
            Parts.numbers("probabilityOnTarget", probabilityOnTarget);
            reasons = Parts.list("reasons", reasons);
        }
    }

    /**
     * Stop: the answer to the steps contradicts an error of the charge.
     *
     * @param reasons why
     */
    record NotCharge(List<Finding> reasons) implements StepAdvice {
        /** {@inheritDoc} */
        public NotCharge {
            reasons = Parts.list("reasons", reasons);
        }
    }

    /**
     * Stop for now: the next step is not possible.
     *
     * @param reasons why, and what to do
     */
    record Blocked(List<Finding> reasons) implements StepAdvice {
        /** {@inheritDoc} */
        public Blocked {
            reasons = Parts.list("reasons", reasons);
        }
    }
}
