package org.satline.examples;

import java.time.LocalDate;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.Stamp;
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
        CylinderStamps stamps = CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
                .with(Stamp.RETEST_DUE, LocalDate.of(2029, 4, 30));
        FillQuestion question = FillQuestion.of(stamps, SaturationCurves.of(r134a))
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofCelsius(56));
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.SI);
        FillAssessment fill = FillAssessor.standard().assess(question);
        if (fill instanceof FillAssessment.Allowed allowed) { // only there a limit is found
            System.out.println("contents at most " + words.numbers().down(allowed.limit()) + ", by "
                    + allowed.governing().rule().name());
            System.out.println(
                    "gross at most " + words.numbers().down(stamps.tare().plus(allowed.limit())));
            allowed.steps()
                    .forEach(step -> System.out.println("  " + words.of(step).lines()));
        } else {
            fill.objections().forEach(finding -> System.out.println("do not fill: " + words.of(finding)));
        }
        Cautions.forHandling(r134a, Task.CYLINDER_FILLING)
                .forEach(caution -> System.out.println("  beware: " + words.of(caution)));
    }
}
