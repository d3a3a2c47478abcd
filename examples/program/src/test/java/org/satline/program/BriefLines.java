package org.satline.program;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.satline.explanation.Figure;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.VisitLines;
import org.satline.wording.VisitLines.Topic;
import org.satline.wording.Wording;

/** The lines that matter, read back from a printed page and held against the fields of the report. */
final class BriefLines {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.US);
    /** The second figure of a mass, as it is printed in SI. */
    private static final Pattern SI_MASS = Pattern.compile("\\((-?[0-9.]+) (kg|g)\\)");

    private static final Map<String, String> PLACES = Map.of(
            "high-side-liquid", "transfer.pointKind.highSideLiquidPort",
            "high-side-vapour", "transfer.pointKind.highSideVapourPort",
            "low-side", "transfer.pointKind.lowSidePort",
            "recovery-vapour", "transfer.pointKind.recoveryCylinderVapourValve",
            "recovery-liquid", "transfer.pointKind.recoveryCylinderLiquidValve",
            "source-vapour", "transfer.pointKind.sourceCylinderVapourValve",
            "source-liquid", "transfer.pointKind.sourceCylinderLiquidValve");

    private final List<String> rows;
    private final Map<Topic, List<String>> lines = new LinkedHashMap<>();

    BriefLines(String page) {
        List<String> all = page.lines().toList();
        rows = all.subList(2, Math.max(2, all.indexOf("")));
        Topic topic = Topic.ACTION;
        for (String row : rows) {
            String name = row.substring(0, VisitLines.NAME_COLUMNS).strip();
            String text = row.substring(VisitLines.NAME_COLUMNS).strip();
            if (name.isEmpty()) {
                List<String> texts = Objects.requireNonNull(lines.get(topic));
                texts.set(texts.size() - 1, texts.get(texts.size() - 1) + " " + text);
            } else {
                topic = topic(name);
                lines.computeIfAbsent(topic, key -> new ArrayList<>()).add(text);
            }
        }
    }

    private static Topic topic(String name) {
        for (Topic each : Topic.values()) {
            if (WORDING.name(each).equals(name)) {
                return each;
            }
        }
        throw new AssertionError("no line is called " + name);
    }

    private String text(Topic topic) {
        return String.join("; ", lines.getOrDefault(topic, List.of()));
    }

    void check(JsonNode report, SoftAssertions softly, String trial) {
        String action = report.path("action").textValue();
        boolean moves = report.path("movesNow").booleanValue();
        softly.assertThat(rows).as(trial).hasSizeBetween(3, VisitLines.MOST_ROWS);
        softly.assertThat(rows).as(trial).allMatch(row -> row.length() <= VisitLines.COLUMNS);
        softly.assertThat(List.copyOf(lines.keySet())).as(trial).isSorted();
        softly.assertThat(lines.containsKey(Topic.DANGER)).as(trial).isEqualTo(action.equals("makeSafe"));
        softly.assertThat(text(Topic.ACTION)).as(trial).isEqualTo(WORDING.message("visit.actionKind." + action));
        level(report, softly, trial);
        for (Topic topic :
                List.of(Topic.AMOUNT, Topic.PATH, Topic.STOP_READING, Topic.NEVER_PASS, Topic.WAIT, Topic.READ_THEN)) {
            softly.assertThat(lines.containsKey(topic)).as(trial + " " + topic).isEqualTo(moves);
        }
        if (moves) {
            step(report, softly, trial);
        }
        if (moves || action.equals("prepare")) {
            softly.assertThat(text(Topic.HOSE))
                    .as(trial)
                    .startsWith(WORDING.message(
                            "transfer.hoseState." + report.path("hose").textValue()));
        }
        softly.assertThat(lines.containsKey(Topic.SUPPLY))
                .as(trial)
                .isEqualTo(!report.path("ask").isEmpty());
        report.path("ask").forEach(path -> {
            String supply = text(Topic.SUPPLY);
            softly.assertThat(supply.contains(fieldName(path.textValue())) || supply.endsWith("..."))
                    .as(trial + " " + path)
                    .isTrue();
        });
        List<String> cautions = new ArrayList<>();
        report.path("cautions").forEach(id -> cautions.add(WORDING.message("brief.caution." + id.textValue())));
        softly.assertThat(lines.getOrDefault(Topic.CAUTION, List.of()))
                .as(trial)
                .isEqualTo(cautions);
    }

    private void level(JsonNode report, SoftAssertions softly, String trial) {
        String word = report.path("level").textValue();
        String key = word.equals("on-target") ? "onTarget" : word;
        if (!word.equals("not-charge")) {
            boolean probable =
                    !word.equals("undecided") && report.path("levelProbability").doubleValue() < 0.95;
            String level = WORDING.message("visit.level." + key);
            softly.assertThat(text(Topic.LEVEL))
                    .as(trial)
                    .startsWith(probable ? WORDING.message("visit.level.probably", Figure.of("level", level)) : level);
        }
        if (report.has("levelProbability")) {
            softly.assertThat(text(Topic.LEVEL))
                    .as(trial)
                    .endsWith(WORDING.numbers()
                            .percent(report.path("levelProbability").doubleValue()));
        }
    }

    private void step(JsonNode report, SoftAssertions softly, String trial) {
        boolean out = report.path("action").textValue().equals("takeOut");
        below(Topic.AMOUNT, report.path("amountKg").doubleValue(), softly, trial);
        if (out) {
            below(Topic.STOP_READING, report.path("stopReadingKg").doubleValue(), softly, trial);
            below(Topic.NEVER_PASS, report.path("neverPassReadingKg").doubleValue(), softly, trial);
        } else {
            above(Topic.STOP_READING, report.path("stopReadingKg").doubleValue(), softly, trial);
            above(Topic.NEVER_PASS, report.path("neverPassReadingKg").doubleValue(), softly, trial);
        }
        for (String field : List.of("port", "valve")) {
            softly.assertThat(text(Topic.PATH))
                    .as(trial)
                    .contains(WORDING.message(
                            Objects.requireNonNull(PLACES.get(report.path(field).textValue()))));
        }
        softly.assertThat(text(Topic.PATH))
                .as(trial)
                .endsWith(WORDING.message(
                        "transfer.medium." + report.path("phase").textValue()));
        softly.assertThat(text(Topic.WAIT))
                .as(trial)
                .startsWith(WORDING.numbers().duration(report.path("waitS").doubleValue()));
        report.path("readThen")
                .forEach(path ->
                        softly.assertThat(text(Topic.READ_THEN)).as(trial).contains(fieldName(path.textValue())));
    }

    private static String fieldName(String path) {
        return WORDING.message("brief.field." + path.replaceFirst("^cylinders\\[\\d+]", "cylinder"));
    }

    /** Printed to 0.01 kg or 0.1 g, and never above the field; the last digit of a double apart. */
    private void below(Topic topic, double field, SoftAssertions softly, String trial) {
        softly.assertThat(field - printedKg(topic)).as(trial + " " + topic).isBetween(-1e-9, 0.01);
    }

    private void above(Topic topic, double field, SoftAssertions softly, String trial) {
        softly.assertThat(printedKg(topic) - field).as(trial + " " + topic).isBetween(-1e-9, 0.01);
    }

    private double printedKg(Topic topic) {
        Matcher mass = SI_MASS.matcher(text(topic));
        if (!mass.find()) {
            return Double.MAX_VALUE;
        }
        return Double.parseDouble(mass.group(1)) / (mass.group(2).equals("g") ? 1000 : 1);
    }
}
