package org.satline.program.ask;

import static org.satline.program.ask.Question.flag;
import static org.satline.program.ask.Question.needed;
import static org.satline.program.ask.Question.whereNeeded;

import java.util.List;
import java.util.function.Predicate;
import org.satline.measurement.Place;
import org.satline.visit.file.FieldValue;

/** All questions, in the order in which they come. */
final class Questions {
    /** The path under which the connected cylinder is chosen; it is no field. */
    static final String CYLINDER = "cylinder.name";

    /** The path under which the cylinder is chosen that the hose is on now. */
    static final String CONNECTED = "connected";

    private Questions() {}

    /** Which cylinder the hose is on at the next readings. */
    static Question connectedNow() {
        return needed(CONNECTED, "C-4");
    }

    static List<Question> all() {
        return List.of(
                needed("date", "2026-07-14"),
                needed("time", "14:35"),
                needed("site.altitude", "310 m, 1000 ft").when(fields -> !FieldTree.has(fields, "site.barometer")),
                needed("system.refrigerant", "R-410A"),
                needed("system.metering", "").of("expansion-valve", "fixed-orifice"),
                gauge("suctionGauge", "3.5 psi"),
                gauge("liquidGauge", "7.0 psi"),
                needed("instruments.thermometer.accuracyClass", "thermocouple-k-class-1")
                        .usually("thermocouple-k-class-1"),
                needed("instruments.thermometer.resolution", "0.1 K").usually("0.1 K"),
                needed("instruments.thermometer.pipeContact", "0.5 K").usually("0.5 K"),
                reading(Place.SUCTION_PRESSURE),
                reading(Place.SUCTION_LINE),
                reading(Place.LIQUID_PRESSURE),
                reading(Place.LIQUID_LINE),
                reading(Place.RETURN_DRY_BULB),
                reading(Place.RETURN_WET_BULB),
                reading(Place.SUPPLY_DRY_BULB),
                reading(Place.OUTDOOR_AIR),
                whereNeeded("system.targetSubcooling", "10 degF"),
                whereNeeded("system.targetSuperheat", "12 degF"),
                whereNeeded("conditions.running", "20 min"),
                flag("conditions.settled"),
                flag("conditions.outdoorMinimumMet"),
                whereNeeded("conditions.airflow", "800 cfm"),
                needed("conditions.nominalCooling", "24000 Btu/h")
                        .when(fields -> FieldTree.has(fields, "conditions.airflow")),
                whereNeeded("system.fullCharge", "3.2 kg"),
                whereNeeded(CYLINDER, "C-4")
                        .when(fields -> !FieldTree.has(fields, "cylinder") && !FieldTree.has(fields, "cylinders")),
                needed("cylinder.valve", "")
                        .of("recovery-vapour", "recovery-liquid", "source-vapour", "source-liquid")
                        .when(Questions::withCylinder),
                needed("cylinder.tare", "27.4 lb").when(Questions::withCylinder),
                needed("cylinder.waterCapacity", "47.7 lb, 21.6 l").when(Questions::withCylinder),
                needed("cylinder.temperature", "84 degF").when(Questions::withCylinder),
                whereNeeded("cylinder.specification", "DOT-4BW400").when(Questions::withCylinder),
                flag("cylinder.refillable").when(Questions::withCylinder),
                whereNeeded("cylinder.servicePressure", "400 psig").when(Questions::withCylinder),
                whereNeeded("cylinder.testPressure", "42 barg").when(Questions::withCylinder),
                whereNeeded("cylinder.retestDue", "2029-04-30").when(Questions::withCylinder),
                flag("cylinder.flammableMark").when(Questions::withCylinder),
                whereNeeded("cylinder.holding", "R-410A").when(Questions::withCylinder),
                whereNeeded("cylinder.provenance", "")
                        .of("new", "reclaimed", "recovered", "mixed-recovered")
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.owner", "Tervo").when(Questions::withCylinder),
                whereNeeded("system.owner", "Tervo"),
                whereNeeded("instruments.scale.resolution", "0.05 lb").when(Questions::withCylinder),
                whereNeeded("instruments.scale.percentOfReading", "0.1 %")
                        .usually("0.1 %")
                        .when(Questions::withScale),
                whereNeeded("cylinder.grossBefore", "41.35 lb").when(Questions::withScale),
                whereNeeded("cylinder.scaleReading", "41.35 lb").when(Questions::withScale),
                whereNeeded("cylinder.pressure", "252 psig").when(Questions::withCylinder),
                hose("port", "").of("high-side-liquid", "high-side-vapour", "low-side", "centre"),
                hose("systemEnd", "").of("open-close-valve", "self-sealing", "plain-flare"),
                hose("cylinderEnd", "").of("open-close-valve", "self-sealing", "plain-flare"),
                hose("length", "5 ft"),
                hose("holds", "").of("air", "vapour", "liquid", "evacuated").usually("air"),
                hose("contentsFrom", "")
                        .of("system", "source", "recovered")
                        .when(fields -> FieldTree.text(fields, "cylinder.hoses[0].holds")
                                .filter(holds -> holds.equals("vapour") || holds.equals("liquid"))
                                .isPresent()));
    }

    private static Question gauge(String name, String usual) {
        return needed("instruments." + name + ".limitOfError", usual)
                .usually(usual)
                .when(without("instruments." + name + ".accuracyClass"));
    }

    private static Question reading(Place place) {
        return whereNeeded(place.path(), place.example());
    }

    private static Question hose(String name, String form) {
        return needed("cylinder.hoses[0]." + name, form).when(Questions::withCylinder);
    }

    private static Predicate<FieldValue.Fields> without(String part) {
        return fields -> !FieldTree.has(fields, part);
    }

    private static boolean withCylinder(FieldValue.Fields fields) {
        return FieldTree.has(fields, "cylinder");
    }

    private static boolean withScale(FieldValue.Fields fields) {
        return withCylinder(fields) && FieldTree.has(fields, "instruments.scale");
    }
}
