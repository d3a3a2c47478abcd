package org.satline.filling;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.filling.FillRule.Basis;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.refrigerant.DataVersion;

/**
 * How much a cylinder may hold: allowed up to a limit, refused, or open until something is supplied. Made by {@link FillAssessor}.
 * Immutable, thread-safe.
 */
public sealed interface FillAssessment {
    /**
     * What the rules say, side by side, whatever came out; for showing it.
     *
     * @return the answers of all rules
     */
    Answers answers();

    /**
     * The answers of all rules. Its limits are for showing: only {@link Allowed} gives one to fill to.
     *
     * @param question what was asked
     * @param outcomes what each rule says about each refrigerant that may be inside
     * @param cautions what to know
     * @param data which figures of the library they were found with
     */
    record Answers(FillQuestion question, List<CandidateOutcome> outcomes, List<Finding> cautions, DataVersion data) {
        /** {@inheritDoc} */
        public Answers {
            Parts.required("question data", question, data);
            outcomes = Parts.list("outcomes", outcomes);
            cautions = Parts.list("cautions", cautions);
        }

        /**
         * The largest contents by the rules of the chosen set.
         *
         * @param bases whether law, practice or both are asked
         * @return limits, the strictest first
         */
        public List<MassLimit> limits(Set<Basis> bases) {
            return outcomes.stream()
                    .map(CandidateOutcome::outcome)
                    .filter(MassLimit.class::isInstance)
                    .map(MassLimit.class::cast)
                    .filter(limit -> question.rules().contains(limit.rule())
                            && bases.contains(limit.rule().basis()))
                    .sorted(Comparator.comparing(MassLimit::maximumContents))
                    .toList();
        }

        /**
         * The outcome of a rule, of the refrigerant for which it allows least.
         *
         * @param rule the rule
         * @return its outcome
         * @throws IllegalArgumentException if the rule was not applied
         */
        public RuleOutcome outcomeOf(FillRule rule) {
            return outcomes.stream()
                    .map(CandidateOutcome::outcome)
                    .filter(outcome -> outcome.rule().equals(rule))
                    .min(Comparator.comparingDouble(RuleOutcome::allows))
                    .orElseThrow(() -> new IllegalArgumentException("rule " + rule.name() + " was not applied: "
                            + (outcomes.isEmpty() ? "the refrigerant is unknown" : "it is not in the book")));
        }
    }

    /**
     * The outcome of one rule for one refrigerant.
     *
     * @param designation the refrigerant
     * @param outcome what the rule says
     */
    record CandidateOutcome(String designation, RuleOutcome outcome) {
        /** {@inheritDoc} */
        public CandidateOutcome {
            Parts.required("designation outcome", designation, outcome);
        }
    }

    /**
     * It may be filled up to a limit.
     *
     * @param governing the strictest limit of the chosen set
     * @param answers the answers of all rules
     */
    record Allowed(MassLimit governing, Answers answers) implements FillAssessment {
        /** {@inheritDoc} */
        public Allowed {
            Parts.required("governing answers", governing, answers);
        }

        /**
         * The largest contents.
         *
         * @return the limit
         */
        public Mass limit() {
            return governing.maximumContents();
        }

        /**
         * The derivation of the limit.
         *
         * @return steps, in order
         */
        public List<Step> steps() {
            return governing.steps();
        }
    }

    /**
     * It must not be filled.
     *
     * @param why what forbids it, then what is missing as well; at least one
     * @param answers the answers of all rules
     */
    record Refused(List<Finding> why, Answers answers) implements FillAssessment {
        /** {@inheritDoc} */
        public Refused {
            why = Parts.list("why", why);
            Parts.required("answers", answers);
        }
    }

    /**
     * Whether it may be filled depends on what is missing.
     *
     * @param missing what must be supplied, at least one
     * @param answers the answers of all rules
     */
    record Open(List<Finding> missing, Answers answers) implements FillAssessment {
        /** {@inheritDoc} */
        public Open {
            missing = Parts.list("missing", missing);
            Parts.required("answers", answers);
        }
    }

    /**
     * What stands against filling it.
     *
     * @return findings; empty where it is allowed
     */
    default List<Finding> objections() {
        if (this instanceof Refused refused) {
            return refused.why();
        }
        return this instanceof Open open ? open.missing() : List.of();
    }
}
