package org.satline.audit.cause;

import java.util.List;
import java.util.Optional;
import org.satline.audit.answer.AuditCase;

/** What was found of one refrigerant. Immutable, thread-safe. */
public final class Findings {
    private final List<Finding> causes;
    private final List<Finding> unproven;

    Findings(List<Finding> causes, List<Finding> unproven) {
        this.causes = List.copyOf(causes);
        this.unproven = List.copyOf(unproven);
    }

    /** {@return causes in the order in which they are taken} */
    public List<Finding> causes() {
        return causes;
    }

    /** {@return mistakes that fit but may be chance} */
    public List<Finding> unproven() {
        return unproven;
    }

    /** A mistake that was found, and what it makes of any row. Immutable, thread-safe. */
    public static final class Finding {
        private final Hypothesis hypothesis;
        private final boolean allWithin;
        private final int speaking;
        private final double coincidence;
        private final List<Mistake> alternatives;

        Finding(
                Hypothesis hypothesis,
                boolean allWithin,
                int speaking,
                double coincidence,
                List<Mistake> alternatives) {
            this.hypothesis = hypothesis;
            this.allWithin = allWithin;
            this.speaking = speaking;
            this.coincidence = coincidence;
            this.alternatives = List.copyOf(alternatives);
        }

        /** {@return the mistake} */
        public Mistake mistake() {
            return hypothesis.mistake();
        }

        /** {@return the other one where two are made in the same rows} */
        public Optional<Mistake> besides() {
            return hypothesis.besides();
        }

        /** {@return whether no row is outside} */
        public boolean allWithin() {
            return allWithin;
        }

        /** {@return rows of the sample that speak for it} */
        public int speaking() {
            return speaking;
        }

        /** {@return chance that any mistake fits so well by chance} */
        public double coincidence() {
            return coincidence;
        }

        /** {@return other mistakes that fit the same rows of the sample} */
        public List<Mistake> alternatives() {
            return alternatives;
        }

        /**
         * Tells what a row should hold under this mistake.
         *
         * @param row the row
         * @return the number; empty where the mistake does not apply or leads to no state
         */
        public Optional<AuditCase.Expected> expected(AuditCase row) {
            return hypothesis.expected(row);
        }
    }
}
