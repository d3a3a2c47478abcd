package org.satline.cylinder;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillRule.Basis;
import org.satline.filling.Provenance;
import org.satline.filling.RuleOutcome;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;

/** Whether a cylinder holds more than it may, beyond the doubt of the scale, whether or not it may be filled. */
final class OverfillCheck {
    private OverfillCheck() {}

    /** Against the limits of what it holds: all rules for what was filled on site, the law alone for what a maker filled. */
    static Optional<Finding> of(Cylinder cylinder, CylinderFacts facts, FillAssessment.Answers answers) {
        if (facts.weight().isEmpty() || !facts.mayHoldLiquid()) {
            return Optional.empty();
        }
        boolean filledOnSite = cylinder.role() == Role.RECEIVER
                || cylinder.provenance().filter(Provenance::isUsed).isPresent();
        Reading<MassDifference> inside = facts.weight().get();
        double least = inside.value().kilograms() - inside.expandedUncertainty();
        Optional<Mass> limit =
                answers.limits(filledOnSite ? EnumSet.allOf(Basis.class) : EnumSet.of(Basis.LAW)).stream()
                        .findFirst()
                        .map(RuleOutcome.MassLimit::maximumContents);
        boolean over = limit.filter(most -> least > most.kilograms()).isPresent();
        if (!over && !facts.liquidFullOf(least).isBy(cylinder.warmest())) {
            return Optional.empty();
        }
        List<Figure> figures = new ArrayList<>(List.of(facts.contentsFigure()));
        limit.ifPresent(most -> {
            figures.add(Figure.of("limit", most));
            figures.add(Figure.of("excess", inside.value().minus(most.differenceFrom(Mass.ZERO))));
        });
        return Optional.of(new Finding(
                Severity.DANGER_NOW,
                CylinderCode.OVERFILLED,
                cylinder.subject(),
                figures,
                "49 CFR 173.304(b); common practice"));
    }
}
