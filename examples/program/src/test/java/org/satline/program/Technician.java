package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.program.StoryUnit.shown;
import static org.satline.program.StoryUnit.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.satline.json.JsonFields;
import org.satline.visit.file.FieldValue;

/** Does with hose, cylinders and scale what the program says, and writes down what the instruments show then. For one thread. */
final class Technician {
    static final String RECEIVER = "recovery no. 4";
    static final String SOURCE = "new no. 7";
    /** What the scale shows, kg: every weight is a whole number of its steps. */
    static final double STEP_KG = 0.005;

    private static final double CYLINDER_CELSIUS = 27;
    private static final double RECEIVER_TARE_KG = 12.43;
    private static final double SOURCE_TARE_KG = 3.0;

    private final Path folder;
    private final Path visit;
    private final StoryUnit unit;
    private final TechnicianStoryTest.Job job;
    /** Gross weights as they are, by cylinder, kg. */
    final Map<String, Double> gross = new LinkedHashMap<>();
    /** Gross weights at the start. */
    final Map<String, Double> before = new LinkedHashMap<>();

    private String connected = RECEIVER;
    private FieldValue.Fields hose;
    private boolean sourceZeroed;
    private int minutes = 8 * 60;

    Technician(Path folder, StoryUnit unit, TechnicianStoryTest.Job job) {
        this.folder = folder;
        this.visit = folder.resolve("visit.json");
        this.unit = unit;
        this.job = job;
        hose = new FieldValue.Fields(Map.of(
                "port", text("centre"),
                "systemEnd", text(job.systemEnd()),
                "cylinderEnd", text(job.cylinderEnd()),
                "length", text("5 ft"),
                "holds", text("air")));
        gross.put(RECEIVER, RECEIVER_TARE_KG + (job.evacuated() ? 0 : 4.0));
        gross.put(SOURCE, SOURCE_TARE_KG + 8.0);
        before.putAll(gross);
    }

    double tare(String name) {
        return name.equals(RECEIVER) ? RECEIVER_TARE_KG : SOURCE_TARE_KG;
    }

    /** Arrives: the first file of the visit. */
    void arrives() {
        Map<String, FieldValue> file = new LinkedHashMap<>();
        file.put("title", text("the bakery is warm"));
        file.put("date", text("2026-07-14"));
        file.put("time", text(time()));
        file.put("site", fields(Map.of("name", text("bakery"), "altitude", text("0 m"))));
        file.put("system", unit.plate());
        file.put("instruments", instruments());
        file.put("readings", unit.readings());
        file.put("conditions", conditions());
        file.put("manifold", fields(Map.of("valves", new FieldValue.Plain(job.pump() ? 4 : 2), "holds", text("air"))));
        file.put("vacuumPump", new FieldValue.Flag(job.pump()));
        file.put("cylinders", new FieldValue.Items(List.of(cylinder(RECEIVER, true), cylinder(SOURCE, true))));
        file.put("connected", text(RECEIVER));
        write(visit, new FieldValue.Fields(file));
    }

    JsonNode readsThePage() {
        return run("visit", visit, "--json", folder.resolve("report.json"));
    }

    /** Reads everything anew and puts it on top of the visit. */
    JsonNode readsAgain() {
        minutes += 20;
        Map<String, FieldValue> fresh = new LinkedHashMap<>();
        fresh.put("time", text(time()));
        fresh.put("readings", unit.readings());
        fresh.put("conditions", conditions());
        fresh.put(
                "manifold",
                fields(Map.of("valves", new FieldValue.Plain(job.pump() ? 4 : 2), "holds", text("vapour"))));
        fresh.put("cylinder", cylinder(connected, false));
        Path next = folder.resolve("next.json");
        write(next, new FieldValue.Fields(fresh));
        return run("visit", visit, "--next", "--with", next, "--json", folder.resolve("report.json"));
    }

    private JsonNode run(Object... words) {
        ProgramRun run = ProgramRun.of(words);
        assertThat(run.status()).as(run.err()).isZero();
        try {
            return new ObjectMapper().readTree(Files.readString(folder.resolve("report.json")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Carries out the acts that make the hose ready, on the cylinder that they lead to. */
    void carriesOut(JsonNode plan) {
        List<String> targets = new ArrayList<>();
        List<String> acts = new ArrayList<>();
        plan.forEach(act -> {
            targets.add(act.path("target").textValue() + " " + act.path("to").asText());
            acts.add(act.path("act").textValue() + " " + act.path("target").textValue());
        });
        if (targets.stream().anyMatch(each -> each.contains("next-cylinder"))) {
            connected = connected.equals(RECEIVER) ? SOURCE : RECEIVER;
        }
        boolean evacuated = acts.contains("start pump");
        boolean bySource =
                acts.stream().anyMatch(each -> each.matches("(open|openShort|crack) (next-)?cylinder.valve"));
        holds(evacuated ? "evacuated" : "vapour", bySource ? "source" : "system");
    }

    private void holds(String content, String from) {
        Map<String, FieldValue> now = new LinkedHashMap<>(hose.values());
        now.put("holds", text(content));
        now.remove("contentsFrom");
        if (!content.equals("evacuated")) {
            now.put("contentsFrom", text(from));
        }
        hose = new FieldValue.Fields(now);
    }

    /** Moves refrigerant until the scale has changed by so much; above zero out of the unit. */
    double moves(double outKg) {
        double steps = outKg / STEP_KG;
        double moved = (steps > 0 ? Math.floor(steps + 1e-9) : Math.ceil(steps - 1e-9)) * STEP_KG;
        gross.merge(connected, moved, Double::sum);
        unit.takes(-moved);
        holds("liquid", moved > 0 ? "system" : "source");
        return moved;
    }

    /** A weight that was noted. */
    static double weight(Map<String, Double> noted, String name) {
        return Objects.requireNonNull(noted.get(name), name);
    }

    /** What the scale shows of the cylinder on it: the source's was zeroed before the first opening. */
    double scaleShows() {
        double weight = weight(gross, connected);
        return sourceZeroed && connected.equals(SOURCE) ? weight - weight(before, SOURCE) : weight;
    }

    private FieldValue.Fields cylinder(String name, boolean arriving) {
        boolean receiver = name.equals(RECEIVER);
        boolean holdsSome = !receiver || weight(gross, RECEIVER) > RECEIVER_TARE_KG + STEP_KG / 2;
        Map<String, FieldValue> cylinder = new LinkedHashMap<>();
        cylinder.put("name", text(name));
        cylinder.put("valve", text(receiver ? "recovery-vapour" : "source-liquid"));
        cylinder.put("specification", text(receiver ? "DOT-4BW400" : "DOT-39"));
        cylinder.put("tare", text(shown("%.3f kg", tare(name))));
        cylinder.put("waterCapacity", text(receiver ? "21.6 kg" : "13.6 kg"));
        if (receiver) {
            cylinder.put("retestDue", text("2029-04-30"));
        }
        if (job.flammable()) {
            cylinder.put("flammableMark", new FieldValue.Flag(true));
        }
        cylinder.put("temperature", text(shown("%.1f degC", CYLINDER_CELSIUS)));
        if (holdsSome) {
            cylinder.put("holding", text(job.refrigerant()));
            cylinder.put("provenance", text(receiver ? "recovered" : "new"));
        }
        cylinder.put("owner", text("the bakery"));
        if (!receiver || !job.evacuated()) {
            cylinder.put("pressure", unit.saturation(CYLINDER_CELSIUS));
        } else if (!holdsSome) {
            cylinder.put("pressure", text("500 micron"));
        }
        if (!receiver && !arriving) {
            sourceZeroed = true;
            cylinder.put("grossBefore", text(shown("%.3f kg", weight(before, SOURCE))));
            cylinder.put("scaleReading", text(shown("%.3f kg", weight(gross, SOURCE) - weight(before, SOURCE))));
        } else {
            cylinder.put("scaleReading", text(shown("%.3f kg", weight(gross, name))));
        }
        if (name.equals(connected)) {
            cylinder.put("hoses", new FieldValue.Items(List.of(hose)));
        }
        return new FieldValue.Fields(cylinder);
    }

    private static FieldValue.Fields instruments() {
        Map<String, FieldValue> gauge =
                Map.of("name", text("gauge"), "percentOfReading", text("0.5 %"), "limitOfError", text("0.5 psi"));
        return fields(Map.of(
                "suctionGauge",
                fields(gauge),
                "liquidGauge",
                fields(gauge),
                "thermometer",
                fields(Map.of(
                        "name", text("clamps"),
                        "accuracyClass", text("thermocouple-k-class-1"),
                        "resolution", text("0.1 K"),
                        "pipeContact", text("0.5 K"))),
                "scale",
                fields(Map.of(
                        "name", text("scale"),
                        "resolution", text(shown("%.3f kg", STEP_KG)),
                        "percentOfReading", text("0.05 %")))));
    }

    private static FieldValue.Fields conditions() {
        return fields(Map.of(
                "running", text("25 min"),
                "settled", new FieldValue.Flag(true),
                "airflow", text("1200 cfm"),
                "nominalCooling", text("36000 Btu/h")));
    }

    private static FieldValue.Fields fields(Map<String, FieldValue> fields) {
        return new FieldValue.Fields(new LinkedHashMap<>(fields));
    }

    private String time() {
        return String.format(java.util.Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }

    private static void write(Path file, FieldValue.Fields fields) {
        try {
            Files.writeString(file, JsonFields.write(fields) + "\n");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Net mass moved into the unit by the file's own word. */
    String netByTheFile() {
        try {
            JsonNode file = new ObjectMapper().readTree(Files.readString(visit));
            return file.path("moved").path("net").asText();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
