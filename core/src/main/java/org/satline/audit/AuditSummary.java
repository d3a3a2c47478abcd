package org.satline.audit;

import java.util.List;
import java.util.Optional;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.cause.LikelyCause;
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
 * @param unproven mistakes that fit all rows outside of a refrigerant for which no cause is named, in so few digits or rows that it may be
 *     chance
 * @param constants differences or ratios that are the same in all rows of a column, of refrigerants for which no mistake was found
 * @param unexplained rows outside that no cause explains
 */
public record AuditSummary(
        int within,
        int outside,
        int notComparable,
        List<AuditOutcome.Compared> worst,
        List<Bias> biases,
        List<LikelyCause> causes,
        List<LikelyCause> unproven,
        List<Constant> constants,
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
     * @param uncertainty expanded uncertainty (coverage factor 2) of the mean difference, SI, from the scatter of the rows and the
     *     rounding of
     *     their answers; it falls with the root of their number
     * @param ratio mean of answer over ours; empty where the unit has no true zero
     */
    public record Bias(
            String refrigerant,
            AuditedQuantity quantity,
            int rows,
            double meanDifference,
            String unit,
            double meanInTolerances,
            double uncertainty,
            Optional<Ratio> ratio) {
        /** {@inheritDoc} */
        public Bias {
            Parts.required("refrigerant quantity unit ratio", refrigerant, quantity, unit, ratio);
            Parts.numbers("meanDifference meanInTolerances uncertainty", meanDifference, meanInTolerances, uncertainty);
        }
    }

    /**
     * A mean ratio.
     *
     * @param mean mean of answer over ours
     * @param uncertainty its expanded uncertainty (coverage factor 2), from the scatter of the rows and the rounding of their answers
     */
    public record Ratio(double mean, double uncertainty) {
        /** {@inheritDoc} */
        public Ratio {
            Parts.numbers("mean uncertainty", mean, uncertainty);
        }
    }

    /**
     * Answers that all lie the same amount off, or by the same factor: no mistake that has a name, yet hardly a coincidence.
     *
     * @param refrigerant designation
     * @param quantity the quantity
     * @param unit unit of the answers
     * @param kind what is the same
     * @param value answer less ours in that unit, or answer over ours; the middle of least and largest
     * @param rows how many rows: of a ratio those outside, of a difference all of the column
     */
    public record Constant(
            String refrigerant, AuditedQuantity quantity, String unit, Kind kind, double value, int rows) {
        /** What can be the same in all rows. */
        public enum Kind {
            /** Answer less ours. */
            DIFFERENCE,
            /** Answer over ours. */
            RATIO
        }

        /** {@inheritDoc} */
        public Constant {
            Parts.required("refrigerant quantity unit kind", refrigerant, quantity, unit, kind);
            Parts.numbers("value", value);
        }
    }

    /** {@inheritDoc} */
    public AuditSummary {
        worst = Parts.list("worst", worst);
        biases = Parts.list("biases", biases);
        causes = Parts.list("causes", causes);
        unproven = Parts.list("unproven", unproven);
        constants = Parts.list("constants", constants);
    }
}
