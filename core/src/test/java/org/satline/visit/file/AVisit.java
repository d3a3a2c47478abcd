package org.satline.visit.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.visit.Visit;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;

/**
 * A visit to a boathouse: an R-410A split air conditioner that holds too much, read while it runs, with a recovery cylinder of the club on
 * the scale and a swept hose at the centre of a manifold. As it stands one step may be taken out; each test alters what it is about.
 * Saturation of R-410A at 84 degF is about 252 psig (from memory of trade charts). Immutable.
 */
public record AVisit(FieldValue.Fields fields) {
    /** About 6 degF more subcooling than the target of 10 degF. */
    public static AVisit overcharged() {
        return new AVisit(new FieldValue.Fields(Map.of()))
                .with("title", "the upstairs workshop is warm")
                .with("date", "2026-07-14")
                .with("site.name", "boathouse")
                .with("site.altitude", "0 m")
                .with("system.name", "split air conditioner")
                .with("system.refrigerant", "R-410A")
                .with("system.metering", "expansion-valve")
                .with("system.targetSubcooling", "10 degF")
                .with("system.fullCharge", "3.2 kg")
                .with("system.owner", "the sailing club")
                .with("instruments.suctionGauge", gauge())
                .with("instruments.liquidGauge", gauge())
                .with("instruments.thermometer.name", "pipe clamps")
                .with("instruments.thermometer.accuracyClass", "thermocouple-k-class-1")
                .with("instruments.thermometer.resolution", "0.1 K")
                .with("instruments.thermometer.pipeContact", "0.5 K")
                .with("instruments.scale.name", "scale")
                .with("instruments.scale.resolution", "0.05 lb")
                .with("instruments.scale.percentOfReading", "0.05 %")
                .with("readings.suctionPressure", "118 psig")
                .with("readings.suctionLine", "53 degF")
                .with("readings.liquidPressure", "388 psig")
                .with("readings.liquidLine", "98 degF")
                .with("readings.returnDryBulb", "78 degF")
                .with("readings.returnWetBulb", "65 degF")
                .with("readings.supplyDryBulb", "59 degF")
                .with("readings.outdoorAir", "91 degF")
                .with("conditions.running", "25 min")
                .with("conditions.settled", true)
                .with("conditions.airflow", "800 cfm")
                .with("conditions.nominalCooling", "24000 Btu/h")
                .with("cylinder.name", "cylinder no. 4")
                .with("cylinder.valve", "recovery-vapour")
                .with("cylinder.specification", "DOT-4BW400")
                .with("cylinder.tare", "27.4 lb")
                .with("cylinder.waterCapacity", "47.7 lb")
                .with("cylinder.retestDue", "2029-04-30")
                .with("cylinder.holding", "R-410A")
                .with("cylinder.temperature", "84 degF")
                .with("cylinder.pressure", "252 psig")
                .with("cylinder.owner", "the sailing club")
                .with("cylinder.provenance", "recovered")
                .with("cylinder.scaleReading", "41.35 lb")
                .with("cylinder.hoses", List.of(hose("centre")))
                .with("manifold.valves", 4)
                .with("manifold.holds", "vapour");
    }

    /** Little subcooling and much superheat, with a source of new refrigerant on the scale and its hose at the suction port. */
    public static AVisit shortOfCharge() {
        return overcharged().low().withSource();
    }

    /** Within a degree of the target. */
    public static AVisit onTarget() {
        return overcharged().with("readings.liquidLine", "104 degF");
    }

    /** The readings of a system that holds too little; the cylinder stays. */
    public AVisit low() {
        return with("readings.liquidLine", "113 degF").with("readings.suctionLine", "68 degF");
    }

    /** A source of new refrigerant instead of the recovery cylinder. */
    public AVisit withSource() {
        return with("cylinder.valve", "source-liquid")
                .with("cylinder.provenance", "new")
                .hoseAt("low-side");
    }

    public AVisit withoutCylinder() {
        return without("cylinder");
    }

    /** The only cylinder's weight. */
    public AVisit weighing(String gross) {
        return gross.isEmpty() ? without("cylinder.scaleReading") : with("cylinder.scaleReading", gross);
    }

    /** The only cylinder's pressure. */
    public AVisit gauged(String pressure) {
        return pressure.isEmpty() ? without("cylinder.pressure") : with("cylinder.pressure", pressure);
    }

    /** What the only cylinder is said to hold. */
    public AVisit holding(String refrigerant) {
        return refrigerant.isEmpty() ? without("cylinder.holding") : with("cylinder.holding", refrigerant);
    }

    /** Evacuated, by gauge and weight. */
    public AVisit evacuated() {
        return holding("").gauged("500 micron").weighing("27.4 lb");
    }

    /** The hose as it came from the van: full of air. */
    public AVisit withAirInTheHose() {
        return without("cylinder.hoses[0].holds").without("cylinder.hoses[0].contentsFrom");
    }

    /** No manifold: the hose hangs at a port of the system itself. */
    public AVisit hoseAt(String port) {
        return without("manifold").with("cylinder.hoses", List.of(hose(port)));
    }

    /** Much better thermometers, so that the readings of a series can tell apart what the system answers. */
    public AVisit withGoodThermometers() {
        return with("instruments.thermometer.accuracyClass", "platinum-class-aa")
                .with("instruments.thermometer.pipeContact", "0.1 K");
    }

    /** What was moved before, with the subcooling or superheat that was read on the way. */
    public AVisit moved(String net, List<Map<String, Object>> earlier) {
        return with("moved.net", net).with("moved.earlier", earlier);
    }

    public static Map<String, Object> earlier(String net, String measured) {
        return Map.of("net", net, "measured", measured);
    }

    /** A series of the judged quantity instead of the word that it has settled. */
    public AVisit settlingAt(String measured) {
        List<Map<String, Object>> series = new ArrayList<>();
        for (int minute = 0; minute < 6; minute++) {
            series.add(Map.of("after", minute + " min", "measured", measured));
        }
        return without("conditions.settled").with("conditions.settling", series);
    }

    /** The cylinder as one of several, and one beside it. */
    public AVisit withBeside(Map<String, Object> other) {
        AVisit one = without("cylinder");
        FieldValue here = fields.values().get("cylinder");
        return one.with("cylinders", List.of(here, value(other))).with("connected", "cylinder no. 4");
    }

    /** A cylinder of carbon dioxide in a high-pressure cylinder. */
    public AVisit carbonDioxide(String gross, String temperature, String pressure) {
        return holding("R-744")
                .with("cylinder.specification", "DOT-3AA1800")
                .with("cylinder.temperature", temperature)
                .weighing(gross)
                .gauged(pressure);
    }

    private static Map<String, Object> gauge() {
        return Map.of("name", "digital gauge", "percentOfReading", "0.5 %", "limitOfError", "0.5 psi");
    }

    private static Map<String, Object> hose(String port) {
        return Map.of(
                "port", port,
                "systemEnd", "self-sealing",
                "cylinderEnd", "plain-flare",
                "length", "5 ft",
                "holds", "vapour",
                "contentsFrom", "system");
    }

    /** Sets a field by its path, such as {@code cylinder.hoses[0].port}. */
    public AVisit with(String path, Object value) {
        return new AVisit((FieldValue.Fields) set(fields, List.of(path.split("\\.|(?=\\[)")), value(value)));
    }

    public AVisit without(String path) {
        return new AVisit((FieldValue.Fields) set(fields, List.of(path.split("\\.|(?=\\[)")), REMOVED));
    }

    private static final FieldValue REMOVED = new FieldValue.Text("removed");

    private static FieldValue set(FieldValue in, List<String> path, FieldValue value) {
        if (path.isEmpty()) {
            return value;
        }
        List<String> rest = path.subList(1, path.size());
        if (in instanceof FieldValue.Items items) {
            List<FieldValue> copy = new ArrayList<>(items.values());
            int at = Integer.parseInt(path.get(0).substring(1, path.get(0).length() - 1));
            copy.set(at, set(copy.get(at), rest, value));
            return new FieldValue.Items(copy);
        }
        Map<String, FieldValue> copy = new LinkedHashMap<>(in instanceof FieldValue.Fields of ? of.values() : Map.of());
        FieldValue made = set(copy.getOrDefault(path.get(0), new FieldValue.Fields(Map.of())), rest, value);
        if (made == REMOVED) {
            copy.remove(path.get(0));
        } else {
            copy.put(path.get(0), made);
        }
        return new FieldValue.Fields(copy);
    }

    public static FieldValue value(Object value) {
        if (value instanceof FieldValue made) {
            return made;
        } else if (value instanceof Map<?, ?> map) {
            Map<String, FieldValue> made = new LinkedHashMap<>();
            map.forEach((name, each) -> made.put((String) name, value(each)));
            return new FieldValue.Fields(made);
        } else if (value instanceof List<?> list) {
            return new FieldValue.Items(list.stream().map(AVisit::value).toList());
        } else if (value instanceof Boolean flag) {
            return new FieldValue.Flag(flag);
        } else if (value instanceof Number number) {
            return new FieldValue.Plain(number.doubleValue());
        }
        return new FieldValue.Text((String) value);
    }

    public Visit read() {
        return VisitFile.read(fields);
    }

    public VisitReport report() {
        return VisitReporter.report(read());
    }

    /** The codes of what was found, of one weight. */
    public static Set<FindingCode> codes(VisitReport report, Severity severity) {
        return report.findings().stream()
                .filter(each -> each.severity() == severity)
                .map(Finding::code)
                .collect(Collectors.toSet());
    }

    /** The words of the codes that decided the action, in alphabetical order. */
    public static Set<String> because(VisitReport report) {
        return report.action().because().stream()
                .filter(each -> each.severity() != Severity.CAUTION)
                .map(each -> each.code().word())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
