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

    private static final String BY_RULE = "the fill rules ask for it";
    private static final String ERROR = "the doubt of every result hangs on it";

    private Questions() {}

    /** Which cylinder the hose is on at the next readings. */
    static Question connectedNow() {
        return needed(CONNECTED, "Cylinder that the hose is on now", "cylinder no. 4", "each is weighed by itself");
    }

    static List<Question> all() {
        return List.of(
                needed("date", "Day of the visit", "2026-07-14", "retest dates are held against it"),
                needed("time", "Time of the readings", "14:35", "the next readings come after them"),
                needed("site.altitude", "Altitude of the site", "310 m or 1000 ft", "gauges count from the air there")
                        .when(fields -> !FieldTree.has(fields, "site.barometer")),
                needed("system.refrigerant", "Refrigerant on the nameplate", "R-410A", "everything hangs on it"),
                needed("system.metering", "Metering device", "", "it says what the charge is judged by")
                        .of("expansion-valve", "fixed-orifice"),
                gauge("suctionGauge", "Limit of error of the low-side gauge", "3.5 psi"),
                gauge("liquidGauge", "Limit of error of the high-side gauge", "7.0 psi"),
                needed(
                                "instruments.thermometer.accuracyClass",
                                "Class of the thermometer",
                                "thermocouple-k-class-1",
                                ERROR)
                        .usually("thermocouple-k-class-1"),
                needed("instruments.thermometer.resolution", "Smallest step of the thermometer", "0.1 K", ERROR)
                        .usually("0.1 K"),
                needed("instruments.thermometer.pipeContact", "How far off a clamp on a pipe may be", "0.5 K", ERROR)
                        .usually("0.5 K"),
                reading(Place.SUCTION_PRESSURE, "Pressure at the suction port", "superheat counts from it"),
                reading(Place.SUCTION_LINE, "Temperature of the suction line at the port", "for superheat"),
                reading(Place.LIQUID_PRESSURE, "Pressure at the liquid port", "subcooling counts from it"),
                reading(Place.LIQUID_LINE, "Temperature of the liquid line at the port", "for subcooling"),
                reading(Place.RETURN_DRY_BULB, "Return air, dry bulb", "it limits what can be"),
                reading(Place.RETURN_WET_BULB, "Return air, wet bulb", "the target superheat hangs on it"),
                reading(Place.SUPPLY_DRY_BULB, "Supply air, dry bulb", "it tells the airflow"),
                reading(Place.OUTDOOR_AIR, "Outdoor air entering the condenser", "the judging conditions hang on it"),
                whereNeeded(
                        "system.targetSubcooling", "Target subcooling on the plate", "10 degF", "judged against it"),
                whereNeeded("system.targetSuperheat", "Target superheat by the maker", "12 degF", "judged against it"),
                whereNeeded("conditions.running", "How long it has run", "20 min", "before that nothing is steady"),
                flag("conditions.settled", "Did the readings stand still", "moving readings decide nothing"),
                flag(
                        "conditions.outdoorMinimumMet",
                        "Is it warm enough outdoors by the maker's word",
                        "judging needs it"),
                whereNeeded(
                        "conditions.airflow",
                        "Airflow over the evaporator",
                        "800 cfm",
                        "low airflow looks like low charge"),
                needed("conditions.nominalCooling", "Nominal cooling", "24000 Btu/h", "airflow counts per ton")
                        .when(fields -> FieldTree.has(fields, "conditions.airflow")),
                whereNeeded("system.fullCharge", "Full charge on the nameplate", "3.2 kg", "steps are shares of it"),
                whereNeeded(
                                CYLINDER,
                                "Cylinder to connect: its name, or none",
                                "cylinder no. 4",
                                "it takes or gives the step")
                        .when(fields -> !FieldTree.has(fields, "cylinder") && !FieldTree.has(fields, "cylinders")),
                needed("cylinder.valve", "Which cylinder and valve", "", "liquid or vapour, in or out")
                        .of("recovery-vapour", "recovery-liquid", "source-vapour", "source-liquid")
                        .when(Questions::withCylinder),
                needed("cylinder.tare", "Tare stamped on it (TW)", "27.4 lb", "the scale less tare is what it holds")
                        .when(Questions::withCylinder),
                needed(
                                "cylinder.waterCapacity",
                                "Water capacity stamped on it (WC)",
                                "47.7 lb or 21.6 l",
                                "its limit hangs on it")
                        .when(Questions::withCylinder),
                needed("cylinder.temperature", "Temperature of the cylinder", "84 degF", "its pressure follows it")
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.specification", "Specification mark", "DOT-4BW400", BY_RULE)
                        .when(Questions::withCylinder),
                flag("cylinder.refillable", "May it be refilled, by its mark", BY_RULE)
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.servicePressure", "Service pressure stamped on it", "400 psig", BY_RULE)
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.testPressure", "Test pressure stamped on it", "42 barg", BY_RULE)
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.retestDue", "Last day of filling before its retest", "2029-04-30", BY_RULE)
                        .when(Questions::withCylinder),
                flag("cylinder.flammableMark", "Is it marked for flammable gas", BY_RULE)
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.holding", "Refrigerant on its label", "R-410A", "nothing may be mixed")
                        .when(Questions::withCylinder),
                whereNeeded("cylinder.provenance", "Where its contents come from", "", "it decides where they may go")
                        .of("new", "reclaimed", "recovered", "mixed-recovered")
                        .when(Questions::withCylinder),
                whereNeeded(
                                "cylinder.owner",
                                "Whose refrigerant is in it",
                                "the sailing club",
                                "used gas goes back to its owner only")
                        .when(Questions::withCylinder),
                whereNeeded(
                        "system.owner",
                        "Whose system it is",
                        "the sailing club",
                        "used gas goes back to its owner only"),
                whereNeeded(
                                "instruments.scale.resolution",
                                "Smallest step of the scale",
                                "0.05 lb",
                                "the weights are read on it")
                        .when(Questions::withCylinder),
                whereNeeded(
                                "instruments.scale.percentOfReading",
                                "Span error of the scale",
                                "0.1 %",
                                "steps are weighed on it")
                        .usually("0.1 %")
                        .when(Questions::withScale),
                whereNeeded(
                                "cylinder.grossBefore",
                                "What the scale showed before it was zeroed, - if it was not",
                                "41.35 lb",
                                "a zeroed scale shows what left since")
                        .when(Questions::withScale),
                whereNeeded("cylinder.scaleReading", "What the scale shows", "41.35 lb", "what it holds is weighed")
                        .when(Questions::withScale),
                whereNeeded("cylinder.pressure", "Pressure of the cylinder", "252 psig", "it says which way it flows")
                        .when(Questions::withCylinder),
                hose("port", "System port of the hose", "", "the step goes through it")
                        .of("high-side-liquid", "high-side-vapour", "low-side", "centre"),
                hose("systemEnd", "End of the hose at the system", "", "what stays shut when it comes off")
                        .of("open-close-valve", "self-sealing", "plain-flare"),
                hose("cylinderEnd", "End of the hose at the cylinder", "", "what stays shut when it comes off")
                        .of("open-close-valve", "self-sealing", "plain-flare"),
                hose("length", "Length of the hose", "5 ft", "it holds refrigerant of its own"),
                hose("holds", "What the hose holds now", "", "air in it must not get anywhere")
                        .of("air", "vapour", "liquid", "evacuated")
                        .usually("air"),
                hose("contentsFrom", "Whose gas that is", "", "nothing may be mixed")
                        .of("system", "source", "recovered")
                        .when(fields -> FieldTree.text(fields, "cylinder.hoses[0].holds")
                                .filter(holds -> holds.equals("vapour") || holds.equals("liquid"))
                                .isPresent()));
    }

    private static Question gauge(String name, String text, String usual) {
        return needed("instruments." + name + ".limitOfError", text, usual, ERROR)
                .usually(usual)
                .when(without("instruments." + name + ".accuracyClass"));
    }

    private static Question reading(Place place, String text, String reason) {
        return whereNeeded(place.path(), text, place.example(), reason);
    }

    private static Question hose(String name, String text, String form, String reason) {
        return needed("cylinder.hoses[0]." + name, text, form, reason).when(Questions::withCylinder);
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
