package org.satline.audit;

import java.util.List;
import org.satline.quantity.Parts;

/**
 * The summary of an audit; it does not depend on the order of the rows. Immutable.
 *
 * @param within rows within tolerance
 * @param outside rows outside
 * @param notComparable rows that could not be compared
 * @param worst rows outside, farthest first in multiples of their tolerance, at most {@link #MOST_WORST}
 * @param biases mean differences by refrigerant and quantity
 * @param causes what probably went wrong, that which explains most rows first
 * @param unexplained rows outside that no cause explains
 */
public record AuditSummary(
        int within,
        int outside,
        int notComparable,
        List<AuditOutcome.Compared> worst,
        List<Bias> biases,
        List<LikelyCause> causes,
        int unexplained) {
    /** How many of the worst rows are listed. */
    public static final int MOST_WORST = 10;

    /**
     * The mean difference of the comparable rows of one refrigerant and quantity.
     *
     * @param refrigerant designation
     * @param quantity the quantity
     * @param rows how many rows
     * @param meanDifference mean of answer less ours, SI
     * @param unit that SI unit
     * @param meanInTolerances mean of the difference over the tolerance, tolerances of 0 left out; below -1 or above 1 the bias alone is
     *     outside
     */
    public record Bias(
            String refrigerant,
            AuditedQuantity quantity,
            int rows,
            double meanDifference,
            String unit,
            double meanInTolerances) {
        /** {@inheritDoc} */
        public Bias {
            Parts.required("refrigerant quantity unit", refrigerant, quantity, unit);
            Parts.numbers("meanDifference meanInTolerances", meanDifference, meanInTolerances);
        }
    }

    /** {@inheritDoc} */
    public AuditSummary {
        worst = Parts.list("worst", worst);
        biases = Parts.list("biases", biases);
        causes = Parts.list("causes", causes);
    }
}
