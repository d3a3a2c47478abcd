package org.satline.cylinder;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.satline.cylinder.FillRule.Basis;
import org.satline.cylinder.RuleOutcome.Forbidden;
import org.satline.cylinder.RuleOutcome.MassLimit;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;

/**
 * How much this cylinder may hold of this refrigerant, by every rule of the book side by side, and whether it may be filled at all.
 * Made by {@link FillAssessor}. Immutable, thread-safe.
 *
 * @param question what was asked
 * @param outcomes one outcome for each rule, and for each candidate refrigerant where there are several
 * @param refusals reasons why the cylinder must not be filled; empty where it may be
 * @param cautions what to know, the cautions of the governing limit first
 */
public record FillAssessment(
        FillQuestion question, List<CandidateOutcome> outcomes, List<Refusal> refusals, List<Caution> cautions) {
    /**
     * The outcome of a rule for one of the refrigerants that the cylinder may hold.
     *
     * @param designation the refrigerant
     * @param outcome what the rule says
     */
    public record CandidateOutcome(String designation, RuleOutcome outcome) {
        /** {@inheritDoc} */
        public CandidateOutcome {
            Parts.required("designation outcome", designation, outcome);
        }
    }

    /** {@inheritDoc} */
    public FillAssessment {
        Objects.requireNonNull(question, "question");
        outcomes = List.copyOf(outcomes);
        refusals = List.copyOf(refusals);
        cautions = List.copyOf(cautions);
    }

    /**
     * Tells whether the cylinder must not be filled.
     *
     * @return true where there is a reason
     */
    public boolean isRefused() {
        return !refusals.isEmpty();
    }

    /**
     * Whether every test that applies could be made. Where partial stamps are accepted, those left out leave tests open: then a limit is what the
     * rules say of the data given, and no leave to fill.
     *
     * @return false where a rule of the set could not be tested, or a stamp or the day of filling is not given; the cautions say which
     */
    public boolean everyTestMade() {
        return missing().isEmpty() && untestedRules().isEmpty();
    }

    /**
     * What to supply so that the tests that are open can be made.
     *
     * @return in the order of the constants, unmodifiable; empty where nothing is missing, or where partial stamps are refused anyway
     */
    public Set<FillDatum> missing() {
        Set<FillDatum> missing = StampCheck.missing(question);
        for (RuleOutcome.NotTested each : untestedRules()) {
            FillMethod method = each.rule().method();
            if (method == FillMethod.SERVICE_PRESSURE
                    && question.stamps().servicePressure().isEmpty()) {
                missing.add(FillDatum.SERVICE_PRESSURE);
            } else if ((method == FillMethod.TEST_PRESSURE || method == FillMethod.LEAST_TEST_PRESSURE)
                    && question.stamps().testPressure().isEmpty()) {
                missing.add(FillDatum.TEST_PRESSURE);
            }
        }
        return Collections.unmodifiableSet(missing);
    }

    /**
     * Rules of the set that could not be tested for want of data.
     *
     * @return outcomes with what is missing, in the order of the rules, unmodifiable
     */
    public List<RuleOutcome.NotTested> untestedRules() {
        return outcomes.stream()
                .map(CandidateOutcome::outcome)
                .filter(RuleOutcome.NotTested.class::isInstance)
                .map(RuleOutcome.NotTested.class::cast)
                .filter(outcome -> question.jurisdiction().rules().contains(outcome.rule()))
                .toList();
    }

    /**
     * Returns the limit to fill to: the strictest of the chosen set, law and practice together.
     *
     * @return the governing limit; nothing where the cylinder is refused or no rule of the set gives one
     */
    public Optional<MassLimit> governing() {
        return strictest(Set.of(Basis.LAW, Basis.PRACTICE));
    }

    /**
     * Returns the strictest limit of the chosen set that is law.
     *
     * @return the limit by law; nothing where the cylinder is refused or no rule gives one
     */
    public Optional<MassLimit> governingLaw() {
        return strictest(Set.of(Basis.LAW));
    }

    /**
     * Returns the strictest limit of the chosen set that is custom.
     *
     * @return the limit by practice; nothing where the cylinder is refused or no rule gives one
     */
    public Optional<MassLimit> governingPractice() {
        return strictest(Set.of(Basis.PRACTICE));
    }

    /**
     * Lists what the rules of the chosen set say of the volume, to be shown beside one another. They are listed for a refused cylinder too, and are no
     * leave to fill it: what may be filled in is {@link #governing()} alone.
     *
     * @return the limits, the strictest first, unmodifiable
     */
    public List<MassLimit> limits() {
        return limits(question, outcomes, Set.of(Basis.values()));
    }

    /**
     * Returns the strictest outcome of one rule, whether or not it is in the chosen set.
     *
     * @param rule the rule
     * @return the outcome; where the candidates differ, the one that allows least
     * @throws IllegalArgumentException if the rule was not applied
     */
    public RuleOutcome outcomeOf(FillRule rule) {
        return outcomes.stream()
                .map(CandidateOutcome::outcome)
                .filter(outcome -> outcome.rule().equals(rule))
                .min(Comparator.comparingDouble(FillAssessment::severity))
                .orElseThrow(() -> new IllegalArgumentException("rule " + rule.name() + " was not applied: "
                        + (outcomes.isEmpty() ? "the refrigerant is unknown" : "it is not in the book")));
    }

    /** Orders outcomes from the one that allows least. */
    private static double severity(RuleOutcome outcome) {
        if (outcome instanceof Forbidden) {
            return Double.NEGATIVE_INFINITY;
        }
        if (outcome instanceof RuleOutcome.PressureTest test) {
            return test.margin().pascals();
        }
        return outcome.maximumKilograms().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Returns how much more a limit would allow than given contents.
     *
     * @param limit a limit of this assessment
     * @param contents the contents
     * @return kilograms, below zero where the contents are over this limit
     */
    public static double marginKilograms(MassLimit limit, Mass contents) {
        return limit.maximumContents().kilograms() - contents.kilograms();
    }

    /**
     * Returns the derivation of the governing limit.
     *
     * @return the steps; empty where there is no limit to fill to
     */
    public List<Step> steps() {
        return governing().map(MassLimit::steps).orElse(List.of());
    }

    private Optional<MassLimit> strictest(Set<Basis> bases) {
        return isRefused()
                ? Optional.empty()
                : limits(question, outcomes, bases).stream().findFirst();
    }

    static List<MassLimit> limits(FillQuestion question, List<CandidateOutcome> outcomes, Set<Basis> bases) {
        Set<FillRule> chosen = new LinkedHashSet<>(question.jurisdiction().rules());
        return outcomes.stream()
                .map(CandidateOutcome::outcome)
                .filter(MassLimit.class::isInstance)
                .map(MassLimit.class::cast)
                .filter(limit -> chosen.contains(limit.rule())
                        && bases.contains(limit.rule().basis()))
                .sorted(Comparator.comparingDouble(
                        limit -> limit.maximumContents().kilograms()))
                .toList();
    }
}
