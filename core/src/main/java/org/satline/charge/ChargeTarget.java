package org.satline.charge;

import java.util.List;
import org.satline.explanation.Coded;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/** The target of a charge check, or why there is none for these conditions. */
sealed interface ChargeTarget {
    /** Where a target comes from. */
    enum Basis implements Coded {
        /** The maker's figure on the plate or in the manual. */
        MAKER,
        /** A published chart. */
        PUBLISHED_CHART
    }

    /**
     * A target.
     *
     * @param criterion the quantity
     * @param value the target
     * @param budget its uncertainty from readings that it depends on, K
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
     * No target for these conditions.
     *
     * @param why what is missing or out of range; never empty
     */
    record Missing(List<Finding> why) implements ChargeTarget {
        /** {@inheritDoc} */
        public Missing {
            why = List.copyOf(why);
        }
    }
}
