package org.satline.audit;

import java.util.List;
import java.util.Objects;
import org.satline.audit.answer.AuditOutcome;
import org.satline.quantity.Parts;

/**
 * What an audit found. Immutable.
 *
 * @param outcomes one for each row, in the order of the rows
 * @param summary counts, worst rows, bias and likely causes
 */
public record AuditReport(List<AuditOutcome> outcomes, AuditSummary summary) {
    /** {@inheritDoc} */
    public AuditReport {
        outcomes = Parts.list("outcomes", outcomes);
        Objects.requireNonNull(summary, "summary");
    }
}
