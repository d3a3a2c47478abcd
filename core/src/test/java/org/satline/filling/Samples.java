package org.satline.filling;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Cylinders and curves that several tests share. */
public final class Samples {
    public static final LocalDate TODAY = LocalDate.of(2030, 5, 1);
    public static final LocalDate RETEST = LocalDate.of(2031, 4, 30);
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Map<String, SaturationCurve> CURVES = new ConcurrentHashMap<>();

    private Samples() {}

    public static SaturationCurve curve(String designation) {
        return CURVES.computeIfAbsent(designation, name -> SaturationCurves.of(CATALOGUE.find(name)));
    }

    /** The usual 50 lb recovery cylinder: water capacity 47.6 lb, tare 26 lb, DOT-4BA400. */
    public static CylinderStamps recovery() {
        return CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
                .with(Stamp.FLAMMABLE_MARK, false)
                .with(Stamp.RETEST_DUE, RETEST);
    }

    /** A welded European receptacle: water capacity 26 kg, tare 13 kg. */
    public static CylinderStamps european(double testPressureBar) {
        return CylinderStamps.of(Mass.ofKilograms(13), Mass.ofKilograms(26))
                .with(Stamp.SPECIFICATION, CylinderSpecification.parse("UN"))
                .with(Stamp.TEST_PRESSURE, GaugePressure.ofBars(testPressureBar))
                .with(Stamp.REFILLABLE, true)
                .with(Stamp.FLAMMABLE_MARK, true)
                .with(Stamp.RETEST_DUE, RETEST);
    }

    /** The limit of a fill that is allowed. */
    public static MassLimit governing(FillAssessment assessment) {
        return ((FillAssessment.Allowed) assessment).governing();
    }

    /** What stands against a fill. */
    public static List<FindingCode> against(FillAssessment assessment) {
        return assessment.objections().stream().map(Finding::code).toList();
    }

    /** What a rule allows, kg. */
    public static OptionalDouble kilograms(RuleOutcome outcome) {
        return outcome instanceof MassLimit limit
                ? OptionalDouble.of(limit.maximumContents().kilograms())
                : OptionalDouble.empty();
    }

    public static FillQuestion question(CylinderStamps stamps, String designation) {
        return FillQuestion.of(stamps, curve(designation)).on(TODAY);
    }
}
