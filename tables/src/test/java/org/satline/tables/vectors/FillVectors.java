package org.satline.tables.vectors;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Stamp;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Largest contents of one cylinder by each rule that gives a mass, and what governs. */
final class FillVectors {
    static final String HEADER =
            "id,refrigerant,jurisdiction,rule,citation,water_capacity_kg,tare_kg,maximum_temperature_K,maximum_contents_kg,governs";

    private static final List<String> REFRIGERANTS =
            List.of("R-22", "R-32", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-454B", "R-1234yf");
    private static final List<Double> WARMEST_K = List.of(327.594444444444, 338.15);
    private static final double WATER_CAPACITY_KG = 21.6;
    private static final double TARE_KG = 11.8;

    private FillVectors() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String name : REFRIGERANTS) {
            for (String set : List.of("us", "adr")) {
                for (double warmest : WARMEST_K) {
                    add(lines, name, set, warmest);
                }
            }
        }
        return lines;
    }

    private static void add(List<String> lines, String name, String set, double warmest) {
        FillAssessor assessor = FillAssessor.standard();
        SaturationCurve curve = SaturationCurves.solving(Catalogue.standard().find(name));
        CylinderStamps stamps = CylinderStamps.of(Mass.ofKilograms(TARE_KG), Mass.ofKilograms(WATER_CAPACITY_KG))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
                .with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(400))
                .with(Stamp.TEST_PRESSURE, GaugePressure.ofPsig(800))
                .with(Stamp.REFILLABLE, true)
                .with(Stamp.RETEST_DUE, LocalDate.of(2029, 4, 30));
        FillAssessment assessment = assessor.assess(FillQuestion.of(stamps, curve)
                .under(assessor.rules().jurisdiction(set))
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofKelvins(warmest)));
        String governing = assessment instanceof FillAssessment.Allowed allowed
                ? allowed.governing().rule().name()
                : "";
        for (FillRule rule : assessor.rules().jurisdiction(set).rules()) {
            if (assessment.answers().outcomeOf(rule) instanceof MassLimit limit) {
                lines.add(String.join(
                        ",",
                        "f" + (lines.size() + 1),
                        name,
                        set,
                        rule.name(),
                        '"' + rule.citation().replace("\"", "\"\"") + '"',
                        Double.toString(WATER_CAPACITY_KG),
                        Double.toString(TARE_KG),
                        Double.toString(warmest),
                        PropertyVectors.digits(limit.maximumContents().kilograms()),
                        Boolean.toString(rule.name().equals(governing))));
            }
        }
    }
}
