package org.satline.audit;

import java.util.List;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.cause.Mistake;
import org.satline.quantity.Parts;

/**
 * A row with what became of it. Immutable.
 *
 * @param outcome what became of it
 * @param mistakes the mistake that explains it, two where they were made at once; empty where there is none or none is needed
 */
public record AuditedRow(AuditOutcome outcome, List<Mistake> mistakes) {
    /** {@inheritDoc} */
    public AuditedRow {
        Parts.required("outcome", outcome);
        mistakes = Parts.list("mistakes", mistakes);
    }
}
