package org.satline.program.ask;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.satline.cylinder.Role;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Severity;
import org.satline.json.JsonFields;
import org.satline.transfer.TransferCode;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;

/** A visit file in the making: held against the reader of visit files, what is not answered yet standing as in a plain file. Stateless. */
final class Draft {
    private static final FieldValue.Fields PLAIN = JsonFields.read("""
            {
              "site": { "altitude": "0 m" },
              "system": { "refrigerant": "R-134a", "metering": "expansion-valve" },
              "instruments": {
                "suctionGauge": { "name": "gauge, low side", "percentOfReading": "0 %", "limitOfError": "3.5 psi" },
                "liquidGauge": { "name": "gauge, high side", "percentOfReading": "0 %", "limitOfError": "7.0 psi" },
                "thermometer": { "name": "thermometer", "accuracyClass": "thermocouple-k-class-1",
                  "resolution": "0.1 K", "pipeContact": "0.5 K" }
              },
              "readings": {}
            }
            """);
    private static final FieldValue.Fields PLAIN_SCALE =
            JsonFields.read("{ \"name\": \"scale\", \"resolution\": \"0.05 lb\", \"percentOfReading\": \"0.1 %\" }");
    private static final FieldValue.Fields PLAIN_CYLINDER = JsonFields.read("""
            { "valve": "recovery-vapour", "tare": "27.4 lb", "waterCapacity": "47.7 lb", "temperature": "70 degF" }
            """);
    private static final FieldValue.Fields PLAIN_HOSE = JsonFields.read("""
            { "port": "high-side-liquid", "systemEnd": "self-sealing", "cylinderEnd": "plain-flare", "length": "5 ft" }
            """);

    private Draft() {}

    /** Refuses fields that no file may have, whatever the answers to come. */
    static void check(FieldValue.Fields answers) {
        VisitFile.read(filled(answers));
    }

    /** What every file has beside the answers: names of the instruments, and what no question asks. */
    static FieldValue.Fields finished(FieldValue.Fields answers) {
        FieldValue.Fields all = answers;
        for (String part : new String[] {"suctionGauge", "liquidGauge", "thermometer"}) {
            String path = "instruments." + part;
            all = FieldTree.put(all, path, under(FieldTree.get(PLAIN, path).orElseThrow(), all, path));
        }
        if (FieldTree.has(all, "instruments.scale")) {
            all = FieldTree.put(all, "instruments.scale", under(PLAIN_SCALE, all, "instruments.scale"));
        }
        return FieldTree.has(all, "readings") ? all : FieldTree.put(all, "readings", FieldTree.EMPTY);
    }

    /** What the cylinder must be for that is needed instead of the connected one; nothing where that one serves. */
    static Optional<String> otherUse(FieldValue.Fields answers) {
        VisitReport report = report(answers);
        return report.findings().stream().anyMatch(each -> each.code() == TransferCode.OTHER_CYLINDER_NEEDED)
                ? report.connected().map(each -> each.cylinder().role() == Role.RECEIVER ? "source" : "recovery")
                : Optional.empty();
    }

    private static VisitReport report(FieldValue.Fields answers) {
        return VisitReporter.report(VisitFile.read(finished(answers)));
    }

    /** Paths of the fields that the answer lacks. */
    static Set<String> lacking(FieldValue.Fields answers) {
        VisitReport report = report(answers);
        Set<String> paths = new LinkedHashSet<>(report.ask());
        report.findings().stream()
                .filter(each -> each.severity() == Severity.MUST_BE_SUPPLIED)
                .forEach(each -> {
                    if (each.code() == CommonCode.NOT_GIVEN) {
                        paths.add(each.subject().name());
                    } else if (each.code() == TransferCode.NO_CYLINDER) {
                        paths.add(Questions.CYLINDER);
                    }
                });
        if (paths.contains("cylinder.scaleReading")) {
            paths.add("instruments.scale.resolution");
            paths.add("instruments.scale.percentOfReading");
            // a source is turned over and the scale zeroed then; a receiver goes on being weighed whole
            if (FieldTree.text(answers, "cylinder.valve")
                    .filter(valve -> valve.startsWith("source"))
                    .isPresent()) {
                paths.add("cylinder.grossBefore");
            }
        }
        // the mark answers more than the field that is missed
        if (paths.contains("cylinder.refillable") || paths.contains("cylinder.servicePressure")) {
            paths.add("cylinder.specification");
        }
        return paths;
    }

    private static FieldValue.Fields filled(FieldValue.Fields answers) {
        FieldValue.Fields plain = PLAIN;
        if (FieldTree.has(answers, "site.barometer")) {
            plain = FieldTree.put(plain, "site", FieldTree.EMPTY);
        }
        FieldValue.Fields all = FieldTree.merged(plain, finished(answers));
        if (FieldTree.has(all, "conditions.airflow") && !FieldTree.has(all, "conditions.nominalCooling")) {
            all = FieldTree.put(all, "conditions.nominalCooling", "24000 Btu/h");
        }
        if (FieldTree.has(all, "cylinder")) {
            all = FieldTree.put(all, "cylinder", under(PLAIN_CYLINDER, all, "cylinder"));
            if (FieldTree.has(all, "cylinder.grossBefore") && !FieldTree.has(all, "cylinder.scaleReading")) {
                all = FieldTree.put(all, "cylinder.scaleReading", "0 lb");
            }
        }
        if (FieldTree.has(all, "cylinder.hoses[0].contentsFrom") && !FieldTree.has(all, "cylinder.hoses[0].holds")) {
            all = FieldTree.put(all, "cylinder.hoses[0].holds", "liquid");
        }
        if (FieldTree.has(all, "cylinder.hoses[0]")) {
            all = FieldTree.put(all, "cylinder.hoses[0]", under(PLAIN_HOSE, all, "cylinder.hoses[0]"));
        }
        return all;
    }

    private static FieldValue under(FieldValue plain, FieldValue.Fields all, String path) {
        FieldValue given = FieldTree.get(all, path).orElse(FieldTree.EMPTY);
        boolean dial = given instanceof FieldValue.Fields fields
                && fields.values().containsKey("accuracyClass")
                && path.endsWith("Gauge");
        return given instanceof FieldValue.Fields over && plain instanceof FieldValue.Fields under && !dial
                ? FieldTree.merged(under, over)
                : given;
    }
}
