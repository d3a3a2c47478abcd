package org.satline.audit.answer;

import java.util.List;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;

/** What became of one row. Immutable. */
public sealed interface AuditOutcome {
    /**
     * Returns the row.
     *
     * @return the row as it came in
     */
    AuditRow row();

    /**
     * A row that could be compared.
     *
     * @param row the row
     * @param designation the refrigerant that its name stands for
     * @param comparison answer, our value, difference and tolerance
     * @param steps how it was found, in order
     */
    record Compared(AuditRow row, String designation, Comparison comparison, List<Step> steps) implements AuditOutcome {
        /** {@inheritDoc} */
        public Compared {
            Parts.required("row designation comparison", row, designation, comparison);
            steps = Parts.list("steps", steps);
        }

        /**
         * Tells whether the answer agrees.
         *
         * @return true within the tolerance, false outside
         */
        public boolean within() {
            return comparison.agrees();
        }
    }

    /**
     * There is nothing to compare with, or the row cannot be read.
     *
     * @param row the row
     * @param reason what kind of obstacle
     * @param explanation one line that names value and limit
     */
    record NotComparable(AuditRow row, Reason reason, String explanation) implements AuditOutcome {
        /** {@inheritDoc} */
        public NotComparable {
            Parts.required("row reason explanation", row, reason, explanation);
        }
    }

    /** Why a row cannot be compared. */
    enum Reason {
        /** A cell of the row could not be read at all; only who read the row can tell. */
        ROW_UNREADABLE,
        /** The name of the refrigerant is not known. */
        REFRIGERANT_UNKNOWN,
        /** The refrigerant is listed without an equation. */
        NO_EQUATION,
        /** The name of the quantity is not known. */
        QUANTITY_UNKNOWN,
        /** Temperature or pressure is missing, there is one too many, or it is not a number that can be. */
        QUESTION_UNCLEAR,
        /** The answer is not a decimal number. */
        ANSWER_UNREADABLE,
        /** The unit does not belong to the quantity. */
        UNIT_UNKNOWN,
        /** The tolerance is not a finite number of at least 0, or the altitude is outside the standard atmosphere. */
        CONDITION_UNUSABLE,
        /** The state is outside the range of the source, or no such state exists. */
        OUTSIDE_RANGE
    }
}
