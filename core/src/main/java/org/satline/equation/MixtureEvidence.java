package org.satline.equation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * How well the mixture model of a refrigerant is founded: each pair of its components with the standing of its interaction, and what the
 * model is known to miss. {@code MixtureEvidence.of(refrigerant)} is the one call from a refrigerant to its pairs; {@link Refrigerant}
 * itself knows no equations. Immutable and thread-safe.
 *
 * @param refrigerant the refrigerant
 * @param model which pair parameters are meant
 * @param pairs interactions of all pairs; none for a pure substance
 * @param knownDifference difference from the published bubble or dew point, where it exceeds 0.5 K under the default model
 */
public record MixtureEvidence(
        Refrigerant refrigerant,
        InteractionModel model,
        List<PairInteraction> pairs,
        Optional<KnownDifference> knownDifference) {
    /** {@inheritDoc} */
    public MixtureEvidence {
        Parts.required("refrigerant model knownDifference", refrigerant, model, knownDifference);
        pairs = Parts.list("pairs", pairs);
    }

    /**
     * Returns the evidence behind a refrigerant under the default model.
     *
     * @param refrigerant substance or blend
     * @return the evidence
     * @throws MissingEquationException if a component has no equation
     */
    public static MixtureEvidence of(Refrigerant refrigerant) {
        return of(refrigerant, InteractionModel.ADJUSTED_OVER_PUBLISHED);
    }

    /**
     * Returns the evidence behind a refrigerant.
     *
     * @param refrigerant substance or blend
     * @param model which pair parameters to use
     * @return the evidence; the known difference belongs to the default model and is empty under any other
     * @throws MissingEquationException if a component has no equation
     */
    public static MixtureEvidence of(Refrigerant refrigerant, InteractionModel model) {
        Parts.required("refrigerant model", refrigerant, model);
        return of(
                refrigerant,
                model,
                EquationLibrary.standard().of(refrigerant, model).mixture().pairs());
    }

    /**
     * Returns the evidence of a mixture at hand. A blend with the composition of a listed one has the evidence of that, whatever it is
     * called.
     *
     * @param refrigerant substance or blend
     * @param model which pair parameters are used
     * @param pairs the pairs of its components
     * @return the evidence
     */
    public static MixtureEvidence of(Refrigerant refrigerant, InteractionModel model, List<PairInteraction> pairs) {
        return new MixtureEvidence(
                refrigerant,
                model,
                pairs,
                model == InteractionModel.ADJUSTED_OVER_PUBLISHED
                        ? KnownDifference.of(refrigerant.asListed().designation())
                        : Optional.empty());
    }

    /**
     * Returns the weakest standing among the pairs: {@link PairStatus} counts from fitted to defaulted.
     *
     * @return the weakest; empty for a pure substance
     */
    public Optional<PairStatus> weakest() {
        return pairs.stream().map(PairInteraction::status).max(Comparator.naturalOrder());
    }

    /**
     * Returns what every result of this refrigerant should say: the known difference; for a blend without published points to be held
     * against, the pairs that no paper fitted.
     *
     * @return cautions with a {@link ModelCode}; none if there is nothing to warn of
     */
    public List<Finding> warnings() {
        List<Finding> warnings = new ArrayList<>();
        knownDifference.ifPresent(difference ->
                warnings.add(difference.warning(refrigerant.asListed().designation())));
        boolean checked = refrigerant.asListed().published().bubblePoint().isPresent();
        if (!checked) {
            unfounded(PairStatus.DEFAULTED, ModelCode.PAIRS_DEFAULTED).ifPresent(warnings::add);
            unfounded(PairStatus.ESTIMATED, ModelCode.PAIRS_ESTIMATED).ifPresent(warnings::add);
        }
        return List.copyOf(warnings);
    }

    private Optional<Finding> unfounded(PairStatus status, ModelCode code) {
        String names = pairs.stream()
                .filter(p -> p.status() == status)
                .map(p -> p.first() + " + " + p.second())
                .collect(Collectors.joining(", "));
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.CAUTION,
                        code,
                        new Subject(Subject.Kind.REFRIGERANT, refrigerant.designation()),
                        Figure.of("pairs", names)));
    }
}
