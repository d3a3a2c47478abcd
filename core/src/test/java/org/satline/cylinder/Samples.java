package org.satline.cylinder;

import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Cylinders and curves that several tests share. */
final class Samples {
    static final LocalDate TODAY = LocalDate.of(2030, 5, 1);
    static final LocalDate RETEST = LocalDate.of(2031, 4, 30);
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Map<String, SaturationCurve> CURVES = new ConcurrentHashMap<>();

    private Samples() {}

    static SaturationCurve curve(String designation) {
        return CURVES.computeIfAbsent(designation, name -> SaturationCurves.of(CATALOGUE.find(name)));
    }

    static CylinderContents known(String designation) {
        return new CylinderContents.Known(curve(designation));
    }

    /** The usual 50 lb recovery cylinder: water capacity 47.6 lb, tare 26 lb, DOT-4BA400. */
    static CylinderStamps.Builder recovery() {
        return CylinderStamps.builder()
                .tare(Mass.ofPounds(26))
                .waterCapacity(Mass.ofPounds(47.6))
                .specification(CylinderSpecification.parse("DOT-4BA400"))
                .flammableMark(false)
                .retestDue(RETEST);
    }

    /** A welded European receptacle: water capacity 26 kg, tare 13 kg. */
    static CylinderStamps.Builder european(double testPressureBar) {
        return CylinderStamps.builder()
                .tare(Mass.ofKilograms(13))
                .waterCapacity(Mass.ofKilograms(26))
                .specification(CylinderSpecification.parse("UN"))
                .testPressure(GaugePressure.ofBars(testPressureBar))
                .refillable(true)
                .flammableMark(true)
                .retestDue(RETEST);
    }

    static FillQuestion question(CylinderStamps stamps, String designation) {
        return FillQuestion.of(stamps, known(designation)).on(TODAY);
    }
}
