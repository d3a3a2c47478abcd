package org.satline.charge;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/** The target of a charge check, or why there is none for these conditions. */
public sealed interface ChargeTarget {
    /**
     * Steps that led here.
     *
     * @return steps in order, unmodifiable
     */
    List<Step> steps();

    /** Where a target comes from. */
    enum Basis {
        /** The maker's figure on the plate or in the manual. */
        MAKER,
        /** A published chart. */
        PUBLISHED_CHART,
        /** Common practice without a source. */
        RULE_OF_THUMB
    }

    /**
     * A target.
     *
     * @param criterion quantity that it is for
     * @param value the target
     * @param budget its uncertainty from the air temperatures it was found with, K
     * @param basis where it comes from
     * @param steps steps that led here
     */
    record Found(
            Criterion criterion, TemperatureDifference value, UncertaintyBudget budget, Basis basis, List<Step> steps)
            implements ChargeTarget {
        /** {@inheritDoc} */
        public Found {
            Parts.required("criterion value budget basis", criterion, value, budget, basis);
            steps = List.copyOf(steps);
        }
    }

    /**
     * No target: the charge cannot be judged by this method here.
     *
     * @param reason why
     * @param advice what to do
     * @param steps steps that led here
     */
    record Missing(String reason, String advice, List<Step> steps) implements ChargeTarget {
        /** {@inheritDoc} */
        public Missing {
            Parts.required("reason advice", reason, advice);
            steps = List.copyOf(steps);
        }
    }
}
