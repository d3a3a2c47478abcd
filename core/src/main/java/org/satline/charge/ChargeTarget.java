package org.satline.charge;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/** The target of a charge check, or why there is none for these conditions. */
sealed interface ChargeTarget {
    /**
     * A target.
     *
     * @param value the target
     * @param budget its uncertainty from readings that it depends on, K
     * @param steps steps that led here
     */
    record Found(TemperatureDifference value, UncertaintyBudget budget, List<Step> steps) implements ChargeTarget {
        /** {@inheritDoc} */
        public Found {
            Parts.required("value budget", value, budget);
            steps = Parts.list("steps", steps);
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
            why = Parts.list("why", why);
        }
    }
}
