package org.satline.charge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;

/** Outcome of a charge check: a level, or the reason why these readings allow none. */
public sealed interface Verdict {
    /**
     * Why the outcome is what it is.
     *
     * @return reasons in order, unmodifiable
     */
    List<String> reasons();

    /**
     * What the outcome asks for.
     *
     * @return one sentence
     */
    String advice();

    /**
     * How the numbers were found.
     *
     * @return steps in order, unmodifiable
     */
    List<Step> steps();

    /**
     * A level.
     *
     * @param level low, on target or high
     * @param deviation the quantity judged, its target and the doubt about their difference
     * @param reasons why
     * @param advice what to do
     * @param steps derivation
     */
    record Judged(ChargeLevel level, Deviation deviation, List<String> reasons, String advice, List<Step> steps)
            implements Verdict {
        /** {@inheritDoc} */
        public Judged {
            Parts.required("level deviation", level, deviation);
            reasons = List.copyOf(reasons);
            Objects.requireNonNull(advice, "advice");
            steps = List.copyOf(steps);
        }
    }

    /**
     * No level: the readings lack something, contradict each other or lie outside the method.
     *
     * @param deviation measured less target, where both are known and only other readings contradict it
     * @param reasons why
     * @param advice what would decide it
     * @param steps derivation as far as it went
     */
    record CannotTell(Optional<Deviation> deviation, List<String> reasons, String advice, List<Step> steps)
            implements Verdict {
        /** {@inheritDoc} */
        public CannotTell {
            Objects.requireNonNull(deviation, "deviation");
            reasons = List.copyOf(reasons);
            Objects.requireNonNull(advice, "advice");
            steps = List.copyOf(steps);
        }
    }
}
