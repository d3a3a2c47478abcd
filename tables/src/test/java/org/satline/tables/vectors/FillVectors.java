package org.satline.tables.vectors;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
            "id,refrigerant,jurisdiction,rule,citation,specification,service_pressure_psig,water_capacity_kg,tare_kg,"
                    + "maximum_temperature_K,maximum_contents_kg,governs";

    /** A fill that is not allowed, or on which nothing can be said. */
    static final String REFUSALS =
            "id,refrigerant,jurisdiction,specification,service_pressure_psig,water_capacity_kg,tare_kg,retest_due,maximum_temperature_K,error";

    private static final List<String> REFRIGERANTS =
            List.of("R-22", "R-32", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-454B", "R-1234yf");
    private static final List<Double> WARMEST_K = List.of(327.594444444444, 338.15);

    /** A cylinder by its stamps: specification, service pressure, water capacity and tare, and when its retest is due. */
    private record Cylinder(String specification, double psig, double waterKg, double tareKg, LocalDate retest) {
        String cells() {
            return String.join(
                    ",",
                    specification,
                    String.format(Locale.ROOT, "%.0f", psig),
                    Double.toString(waterKg),
                    Double.toString(tareKg));
        }
    }

    private static final LocalDate VALID = LocalDate.of(2029, 4, 30);
    private static final LocalDate OVERDUE = LocalDate.of(2025, 4, 30);
    private static final List<Cylinder> CYLINDERS = List.of(
            new Cylinder("DOT-4BA400", 400, 21.6, 11.8, VALID), new Cylinder("DOT-4BA400", 400, 56.2, 24.9, VALID));

    private FillVectors() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Cylinder cylinder : CYLINDERS) {
            for (String name : REFRIGERANTS) {
                for (String set : List.of("us", "adr")) {
                    for (double warmest : WARMEST_K) {
                        add(lines, name, set, warmest, cylinder);
                    }
                }
            }
        }
        return lines;
    }

    /** Fills that are refused: the retest is overdue, or the cylinder is too weak. */
    static List<String> refusals() {
        List<String> lines = new ArrayList<>();
        for (String name : REFRIGERANTS) {
            for (String set : List.of("us", "adr")) {
                for (Cylinder cylinder : List.of(
                        new Cylinder("DOT-4BA400", 400, 21.6, 11.8, OVERDUE),
                        new Cylinder("DOT-4BA240", 240, 21.6, 11.8, VALID))) {
                    FillAssessment assessment = assessed(name, set, WARMEST_K.get(0), cylinder);
                    if (!(assessment instanceof FillAssessment.Allowed)) {
                        lines.add(String.join(
                                ",",
                                "n" + (lines.size() + 1),
                                name,
                                set,
                                cylinder.cells(),
                                cylinder.retest.toString(),
                                Double.toString(WARMEST_K.get(0)),
                                assessment.getClass().getSimpleName().toLowerCase(Locale.ROOT)));
                    }
                }
            }
        }
        return lines;
    }

    private static FillAssessment assessed(String name, String set, double warmest, Cylinder cylinder) {
        FillAssessor assessor = FillAssessor.standard();
        SaturationCurve curve = SaturationCurves.solving(Catalogue.standard().find(name));
        CylinderStamps stamps = CylinderStamps.of(Mass.ofKilograms(cylinder.tareKg), Mass.ofKilograms(cylinder.waterKg))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse(cylinder.specification))
                .with(Stamp.SERVICE_PRESSURE, GaugePressure.ofPsig(cylinder.psig))
                .with(Stamp.TEST_PRESSURE, GaugePressure.ofPsig(2 * cylinder.psig))
                .with(Stamp.REFILLABLE, true)
                .with(Stamp.RETEST_DUE, cylinder.retest);
        return assessor.assess(FillQuestion.of(stamps, curve)
                .under(assessor.rules().jurisdiction(set))
                .on(LocalDate.of(2026, 7, 14))
                .warmestAt(Temperature.ofKelvins(warmest)));
    }

    private static void add(List<String> lines, String name, String set, double warmest, Cylinder cylinder) {
        FillAssessor assessor = FillAssessor.standard();
        FillAssessment assessment = assessed(name, set, warmest, cylinder);
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
                        cylinder.cells(),
                        Double.toString(warmest),
                        PropertyVectors.digits(limit.maximumContents().kilograms()),
                        Boolean.toString(rule.name().equals(governing))));
            }
        }
    }
}
