package org.satline.page;

import java.util.ArrayList;
import java.util.List;
import org.satline.page.Ask.Kind;
import org.satline.page.Ask.Part;
import org.satline.program.ask.FieldTree;
import org.satline.visit.file.FieldValue;

/** All questions, in the order in which they come. */
final class Asks {
    static final String NO_CYLINDER = "none";
    static final String VALVE = "cylinder.valve";

    private static final Kind GAUGE = number("psig", "kPa gauge", "bar gauge");
    private static final Kind TEMPERATURE = number("degF", "degC");
    private static final Kind DIFFERENCE = number("degF", "K");
    private static final Kind MASS = number("lb", "kg");
    private static final Kind LENGTH = number("ft", "m");
    private static final Kind LINE = new Kind.Line();
    private static final Kind FLAG = new Kind.Flag();
    private static final Kind GAS = new Kind.Gas();

    private Asks() {}

    static final List<Ask> ALL = all();

    private static List<Ask> all() {
        List<Ask> all = new ArrayList<>();
        system(all);
        readings(all);
        conditions(all);
        cylinder(all);
        hose(all);
        kit(all);
        return List.copyOf(all);
    }

    /** Those that arise in a visit. */
    static List<Ask> arising(FieldValue.Fields fields) {
        return ALL.stream().filter(ask -> ask.arises().test(fields)).toList();
    }

    private static void system(List<Ask> all) {
        add(all, Part.SYSTEM, "system.refrigerant", GAS);
        add(all, Part.SYSTEM, "system.metering", choice("expansion-valve", "fixed-orifice"));
        add(all, Part.SYSTEM, "site.altitude", LENGTH);
        all.add(new Ask(
                "system.targetSubcooling",
                Part.SYSTEM,
                DIFFERENCE,
                fields -> FieldTree.text(fields, "system.metering")
                        .filter("fixed-orifice"::equals)
                        .isEmpty()));
        all.add(new Ask(
                "system.targetSuperheat",
                Part.SYSTEM,
                DIFFERENCE,
                fields -> FieldTree.text(fields, "system.metering")
                        .filter("fixed-orifice"::equals)
                        .isPresent()));
        add(all, Part.SYSTEM, "system.fullCharge", MASS);
        add(all, Part.SYSTEM, "system.owner", LINE);
    }

    private static void readings(List<Ask> all) {
        add(all, Part.READINGS, "readings.suctionPressure", GAUGE);
        add(all, Part.READINGS, "readings.suctionLine", TEMPERATURE);
        add(all, Part.READINGS, "readings.liquidPressure", GAUGE);
        add(all, Part.READINGS, "readings.liquidLine", TEMPERATURE);
        add(all, Part.READINGS, "readings.returnDryBulb", TEMPERATURE);
        add(all, Part.READINGS, "readings.returnWetBulb", TEMPERATURE);
        add(all, Part.READINGS, "readings.supplyDryBulb", TEMPERATURE);
        add(all, Part.READINGS, "readings.outdoorAir", TEMPERATURE);
    }

    private static void conditions(List<Ask> all) {
        add(all, Part.CONDITIONS, "conditions.running", number("min", "min", "h"));
        add(all, Part.CONDITIONS, "conditions.settled", FLAG);
        add(all, Part.CONDITIONS, "conditions.airflow", number("cfm", "m3/h"));
        all.add(new Ask(
                "conditions.nominalCooling",
                Part.CONDITIONS,
                number("Btu/h", "kW"),
                fields -> FieldTree.has(fields, "conditions.airflow")));
    }

    private static void cylinder(List<Ask> all) {
        add(
                all,
                Part.CYLINDER,
                VALVE,
                choice("recovery-vapour", "recovery-liquid", "source-vapour", "source-liquid", NO_CYLINDER));
        with(all, Part.CYLINDER, "cylinder.scaleReading", MASS);
        with(all, Part.CYLINDER, "cylinder.tare", MASS);
        with(all, Part.CYLINDER, "cylinder.waterCapacity", number("lb", "kg", "L"));
        with(all, Part.CYLINDER, "cylinder.specification", LINE);
        with(all, Part.CYLINDER, "cylinder.retestDue", new Kind.Day());
        with(all, Part.CYLINDER, "cylinder.holding", GAS);
        with(all, Part.CYLINDER, "cylinder.provenance", choice("new", "reclaimed", "recovered", "mixed-recovered"));
        with(all, Part.CYLINDER, "cylinder.owner", LINE);
        with(all, Part.CYLINDER, "cylinder.temperature", TEMPERATURE);
        with(all, Part.CYLINDER, "cylinder.pressure", GAUGE);
    }

    private static void hose(List<Ask> all) {
        Kind ends = choice("open-close-valve", "self-sealing", "plain-flare");
        with(all, Part.HOSE, "manifold.valves", choice("2", "4"));
        all.add(new Ask(
                "manifold.holds",
                Part.HOSE,
                choice("air", "vapour", "liquid", "evacuated"),
                fields -> FieldTree.has(fields, "manifold.valves")));
        with(all, Part.HOSE, "cylinder.hoses[0].port", choice("centre", "high-side-liquid", "low-side"));
        with(all, Part.HOSE, "cylinder.hoses[0].systemEnd", ends);
        with(all, Part.HOSE, "cylinder.hoses[0].cylinderEnd", ends);
        with(all, Part.HOSE, "cylinder.hoses[0].length", LENGTH);
        with(all, Part.HOSE, "cylinder.hoses[0].holds", choice("air", "vapour", "liquid", "evacuated"));
        all.add(new Ask(
                "cylinder.hoses[0].contentsFrom",
                Part.HOSE,
                choice("system", "source", "recovered"),
                fields -> FieldTree.text(fields, "cylinder.hoses[0].holds")
                        .filter(holds -> holds.equals("vapour") || holds.equals("liquid"))
                        .isPresent()));
    }

    private static void kit(List<Ask> all) {
        Kind percent = number("%", "%");
        Kind pressure = number("psi", "kPa", "bar");
        for (String gauge : new String[] {"suctionGauge", "liquidGauge"}) {
            add(all, Part.KIT, "instruments." + gauge + ".percentOfReading", percent);
            add(all, Part.KIT, "instruments." + gauge + ".limitOfError", pressure);
        }
        add(
                all,
                Part.KIT,
                "instruments.thermometer.accuracyClass",
                choice(
                        "thermocouple-k-class-1",
                        "thermocouple-k-class-2",
                        "thermocouple-t-class-1",
                        "thermocouple-t-class-2"));
        add(all, Part.KIT, "instruments.thermometer.resolution", DIFFERENCE);
        add(all, Part.KIT, "instruments.thermometer.pipeContact", DIFFERENCE);
        add(all, Part.KIT, "instruments.scale.resolution", MASS);
        add(all, Part.KIT, "instruments.scale.percentOfReading", percent);
    }

    private static void add(List<Ask> all, Part part, String path, Kind kind) {
        all.add(new Ask(path, part, kind, fields -> true));
    }

    private static void with(List<Ask> all, Part part, String path, Kind kind) {
        all.add(new Ask(path, part, kind, fields -> FieldTree.has(fields, VALVE)));
    }

    private static Kind number(String us, String si, String... more) {
        List<String> units = new ArrayList<>(List.of(us));
        if (!us.equals(si)) {
            units.add(si);
        }
        units.addAll(List.of(more));
        return new Kind.Measure(us, si, List.copyOf(units));
    }

    private static Kind choice(String... words) {
        return new Kind.Choice(List.of(words));
    }
}
