package org.satline.transfer;

import java.util.List;
import org.satline.explanation.Finding;
import org.satline.quantity.Parts;

/** The answer to "may refrigerant go from here to there?". Made by {@link PermitOffice} alone. Immutable, thread-safe. */
public sealed interface Permit {
    /**
     * What was found, the heaviest first: what forbids it, what must be supplied, conditions and cautions.
     *
     * @return findings
     */
    List<Finding> findings();

    /**
     * It may go.
     *
     * @param flow from where to where, and as what
     * @param findings conditions and cautions
     */
    record Granted(Flow.OneWay flow, List<Finding> findings) implements Permit {
        /** {@inheritDoc} */
        public Granted {
            Parts.required("flow", flow);
            findings = Parts.list("findings", findings);
        }
    }

    /**
     * It may not go, as things are.
     *
     * @param findings why, the heaviest first; at least one
     */
    record Refused(List<Finding> findings) implements Permit {
        /** {@inheritDoc} */
        public Refused {
            findings = Parts.list("findings", findings);
            if (findings.isEmpty()) {
                throw new IllegalArgumentException("a refusal without a reason; give the reason");
            }
        }

        /**
         * The first reason.
         *
         * @return the heaviest finding
         */
        public Finding first() {
            return findings.get(0);
        }
    }
}
