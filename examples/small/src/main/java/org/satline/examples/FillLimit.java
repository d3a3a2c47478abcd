package org.satline.examples;

import java.time.LocalDate;
import java.util.Locale;
import org.satline.cylinder.CylinderContents;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Cautions;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** How much may a cylinder hold, by which rule, and may it be filled at all? */
public final class FillLimit {
    private FillLimit() {}

    /**
     * Prints the governing limit and its derivation for a cylinder of 47.6 lb water capacity and R-134a that may become 56 degC warm.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Refrigerant r134a = Catalogue.standard().find("R-134a");
        CylinderStamps stamps = CylinderStamps.builder()
                .tare(Mass.ofPounds(26))
                .waterCapacity(Mass.ofPounds(47.6))
                .specification(CylinderSpecification.parse("DOT-4BA400"))
                .servicePressure(GaugePressure.ofPsig(400))
                .refillable(true)
                .retestDue(LocalDate.of(2029, 4, 30))
                .build();
        FillQuestion question = FillQuestion.of(stamps, new CylinderContents.Known(SaturationCurves.of(r134a)))
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofCelsius(56));
        FillAssessment assessment = FillAssessor.standard().assess(question);
        assessment.refusals().forEach(refusal -> System.out.println("do not fill: " + refusal.text()));
        MassLimit limit = assessment.governing().orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "at most %.2f kg, gross %.2f kg, by %s (%s)%n",
                limit.maximumContents().kilograms(),
                limit.maximumGross().kilograms(),
                limit.rule().name(),
                limit.rule().citation());
        limit.steps().forEach(step -> System.out.println("  " + step.name() + ": " + step.result()));
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.US);
        Cautions.forHandling(r134a, Task.CYLINDER_FILLING)
                .forEach(caution -> System.out.println("  beware: " + words.of(caution)));
    }
}
