package org.satline.examples;

import java.time.LocalDate;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.CylinderCheck;
import org.satline.cylinder.Role;
import org.satline.cylinder.Room;
import org.satline.cylinder.Valve;
import org.satline.cylinder.Weighing;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillRules;
import org.satline.filling.Provenance;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** How much may still go into this cylinder, at which reading of the scale is to be stopped, and is it a danger already? */
public final class CylinderOnTheScale {
    private CylinderOnTheScale() {}

    /**
     * Checks a recovery cylinder with R-134a at three gross weights: with room, full, overfilled.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.SI);
        for (double gross : new double[] {25, 30.3, 34}) {
            CheckedCylinder checked = CylinderCheck.of(
                    cylinder(Mass.ofKilograms(gross)),
                    SaturationCurves.of(Catalogue.standard().find("R-134a")),
                    Atmosphere.standard(),
                    Optional.of(LocalDate.of(2026, 7, 14)));
            System.out.println(gross + " kg on the scale: " + (checked.isDangerous() ? "DANGER" : "no danger"));
            if (checked.room().orElse(null)
                    instanceof Room.Left left) { // there is none in a cylinder that is forbidden
                System.out.println("  room for " + words.numbers().down(left.room()) + ", never past "
                        + words.numbers().down(left.neverPass()));
            }
            checked.findings()
                    .forEach(finding -> System.out.println(
                            "  " + words.name(finding.severity()) + " " + finding.code() + ": " + words.of(finding)));
        }
    }

    private static Cylinder cylinder(Mass gross) {
        Refrigerant r134a = Catalogue.standard().find("R-134a");
        return new Cylinder(
                "grey one",
                "cylinder",
                Role.RECEIVER,
                Valve.VAPOUR,
                false,
                CylinderStamps.of(Mass.ofPounds(26), Mass.ofPounds(47.6))
                        .with(Stamp.SPECIFICATION, CylinderSpecification.parse("DOT-4BA400"))
                        .with(Stamp.RETEST_DUE, LocalDate.of(2029, 4, 30)),
                Optional.of(r134a),
                Optional.of(Provenance.RECOVERED),
                Optional.of("the school"),
                Reading.exact(Temperature.ofCelsius(21)),
                Optional.empty(), // no gauge
                true,
                Optional.of(new Weighing.Gross(Reading.ofExpanded(gross, 0.04, "scale"))),
                Temperature.ofCelsius(56), // the warmest that it may become
                FillRules.standard().defaultJurisdiction(),
                Mass.ZERO); // nothing in the hoses
    }
}
