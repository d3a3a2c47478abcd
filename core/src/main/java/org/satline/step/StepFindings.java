package org.satline.step;

import org.satline.charge.margin.Criterion;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.TemperatureDifference;

/** The reasons of an advice. */
final class StepFindings {
    private static final String BASIS =
            "Bayesian linear regression over the steps so far; prior: how typical systems answer, our choice";

    private StepFindings() {}

    /** How far the judged quantity itself, not the charge, is from its target. */
    static Finding standing(Criterion criterion, StepReading now, double toleranceK) {
        double actual = criterion.directionWithCharge() * now.deviationK();
        return of(
                Severity.CAUTION,
                StepCode.OFF_TARGET,
                Figure.of("off", TemperatureDifference.ofKelvins(actual)),
                Figure.of("band", TemperatureDifference.ofKelvins(toleranceK)));
    }

    static Finding chance(StepCode code, double probability) {
        return of(Severity.CAUTION, code, Figure.of("probability", probability, "1"));
    }

    static Finding of(Severity severity, StepCode code, Figure... figures) {
        return Finding.of(severity, code, Subject.reading("moved"), figures).citing(BASIS);
    }
}
