package org.satline.program.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.program.words.ProgramWordingTest.ENGLISH;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.satline.charge.margin.ChargeLevel;
import org.satline.program.file.BadInputException;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.MassDifference;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Language;
import org.satline.wording.Wording;

@Timeout(120)
class VisitAskTest {
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 7, 14, 14, 35);

    @TempDir
    Path folder;

    /** The answers of a technician at an overcharged unit with an expansion valve; an empty answer takes what stands. */
    private static Map<String, List<String>> answers() {
        Map<String, List<String>> rules = new LinkedHashMap<>();
        rules.put("Day of the visit", List.of(""));
        rules.put("Time of the readings", List.of(""));
        rules.put("Altitude", List.of("310 m"));
        rules.put("Refrigerant on the nameplate", List.of("R-410A"));
        rules.put("Metering", List.of("expansion-valve"));
        rules.put("low-side gauge", List.of("1 psi"));
        rules.put("high-side gauge", List.of("2 psi"));
        rules.put("Class of the thermometer", List.of(""));
        rules.put("step of the thermometer", List.of(""));
        rules.put("clamp on a pipe", List.of(""));
        rules.put("Pressure at the suction port", List.of("118 psig"));
        rules.put("suction line at the port", List.of("53 degF"));
        rules.put("Pressure at the liquid port", List.of("388 psig"));
        rules.put("liquid line at the port", List.of("98 degF"));
        rules.put("dry bulb", List.of("78 degF"));
        rules.put("wet bulb", List.of("65 degF"));
        rules.put("Supply air", List.of("-"));
        rules.put("Outdoor air", List.of("91 degF"));
        rules.put("Target subcooling", List.of("10 degF"));
        rules.put("How long it has run", List.of("25 min"));
        rules.put("stand still", List.of("yes"));
        rules.put("Airflow", List.of("800 cfm"));
        rules.put("Nominal cooling", List.of("24000 Btu/h"));
        rules.put("Full charge", List.of("3.2 kg"));
        rules.put("Cylinder to connect", List.of("cylinder no. 4"));
        rules.put("Which cylinder and valve", List.of("recovery-vapour"));
        rules.put("Tare", List.of("27.4 lb"));
        rules.put("Water capacity", List.of("47.7 lb"));
        rules.put("Temperature of the cylinder", List.of("84 degF"));
        rules.put("Specification", List.of("DOT-4BW400"));
        rules.put("retest", List.of("2029-04-30"));
        rules.put("on its label", List.of("R-410A"));
        rules.put("contents come from", List.of("recovered"));
        rules.put("Whose refrigerant", List.of("the sailing club"));
        rules.put("Whose system", List.of("the sailing club"));
        rules.put("step of the scale", List.of("0.05 lb"));
        rules.put("Span error", List.of("0.1 %"));
        rules.put("What the scale shows", List.of("41.35 lb"));
        rules.put("Pressure of the cylinder", List.of("252 psig"));
        rules.put("System port", List.of("high-side-liquid"));
        rules.put("hose at the system", List.of("open-close-valve"));
        rules.put("hose at the cylinder", List.of("plain-flare"));
        rules.put("Length of the hose", List.of("5 ft"));
        rules.put("What the hose holds", List.of("liquid"));
        rules.put("Whose gas", List.of("system"));
        return rules;
    }

    private VisitAsk.Ended ask(Path file, Typed typed) {
        return VisitAsk.ask(file, Optional.empty(), typed.prompt(), NOW, ENGLISH);
    }

    private static VisitReport report(Path file) {
        return VisitReporter.report(VisitFile.read(VisitStore.read(file)));
    }

    @Test
    void answersMakeAVisitFileThatLacksNothing() {
        Path file = folder.resolve("visit.json");
        try (Typed typed = new Typed(answers())) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.asked()).doesNotHaveDuplicates().allMatch(line -> line.contains(";"));
        }
        VisitReport report = report(file);
        assertThat(report.level()).contains(ChargeLevel.HIGH);
        assertThat(Draft.lacking(VisitStore.read(file))).isEmpty();
        assertThat(report.visit().cylinders()).hasSize(1);
    }

    /** The same story in Spanish: other questions, the same file. */
    @Test
    void spanishQuestionsMakeTheSameFile() {
        Wording spanish = ProgramWording.of(Language.SPANISH, UnitSystem.US);
        Map<String, List<String>> rules = new LinkedHashMap<>();
        Path english = folder.resolve("english.json");
        try (Typed typed = new Typed(answers())) {
            assertThat(ask(english, typed).whole()).isTrue();
        }
        FieldValue.Fields answered = VisitStore.read(english);
        for (Question question : Questions.all()) {
            FieldValue answer = FieldTree.get(answered, question.path()).orElse(null);
            String text = answer instanceof FieldValue.Flag flag
                    ? flag.value() ? "sí" : "no"
                    : answer instanceof FieldValue.Text typed ? typed.value() : "-";
            rules.put(question.text(spanish) + " (", List.of(text));
        }
        Path file = folder.resolve("spanish.json");
        try (Typed typed = new Typed(rules)) {
            assertThat(VisitAsk.ask(file, Optional.empty(), typed.prompt(), NOW, spanish)
                            .whole())
                    .isTrue();
        }
        assertThat(VisitStore.read(file)).isEqualTo(answered);
    }

    @Test
    void onlyWhatTheAnswerNeedsIsAsked() {
        Path file = folder.resolve("visit.json");
        Map<String, List<String>> rules = answers();
        rules.put("Cylinder to connect", List.of("none"));
        try (Typed typed = new Typed(rules)) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.asked()).noneMatch(line -> line.startsWith("Tare") || line.startsWith("Target superheat"));
        }
    }

    @Test
    void questionsCanBeExplainedAndGoneBackTo() {
        Path file = folder.resolve("visit.json");
        Map<String, List<String>> rules = answers();
        rules.put("Altitude", List.of("?", "310 m", "300 m"));
        rules.put("Refrigerant on the nameplate", List.of("<", "R-410A"));
        rules.put("Metering", List.of("turbine", "expansion-valve"));
        try (Typed typed = new Typed(rules)) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.screen()).contains("gauges count from the air there.", "turbine");
        }
        assertThat(FieldTree.text(VisitStore.read(file), "site.altitude")).contains("300 m");
    }

    /** An answer that no file may have is refused at once, with what is allowed. */
    @Test
    void wrongAnswersAreAskedForAgain() {
        Path file = folder.resolve("visit.json");
        Map<String, List<String>> rules = answers();
        rules.put("Pressure at the suction port", List.of("118", "118 psi", "9000 psig", "118 psig"));
        rules.put("stand still", List.of("perhaps", "y"));
        try (Typed typed = new Typed(rules)) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.asked().stream().filter(line -> line.startsWith("Pressure at the suction")))
                    .hasSize(4);
        }
    }

    @Test
    void whatWasAnsweredIsKeptWhenTheInputEnds() {
        brokenOff(Map.of());
    }

    @Test
    void whatWasAnsweredIsKeptAtCtrlC() {
        brokenOff(Map.of("Metering", List.of(Typed.CTRL_C)));
    }

    private void brokenOff(Map<String, List<String>> at) {
        Path file = folder.resolve("visit.json");
        Map<String, List<String>> rules = answers();
        rules.remove("Metering");
        rules.putAll(at);
        try (Typed typed = new Typed(rules)) {
            VisitAsk.Ended ended = ask(file, typed);
            assertThat(ended.whole()).isFalse();
            assertThat(ended.notes()).hasSize(1);
        }
        assertThat(FieldTree.text(VisitStore.read(file), "system.refrigerant")).contains("R-410A");
        try (Typed typed = new Typed(answers())) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.asked().get(0)).startsWith("Metering");
        }
        assertThat(report(file).level()).contains(ChargeLevel.HIGH);
    }

    /** After a step out: readings, scale and hose are asked anew, the nameplate, the stamps and the site are not. */
    @Test
    void theNextReadingsAreAskedOnTopOfAVisit() {
        Path file = folder.resolve("visit.json");
        try (Typed typed = new Typed(answers())) {
            ask(file, typed);
        }
        Map<String, List<String>> rules = answers();
        rules.put("hose is on now", List.of(""));
        rules.put("Time of the readings", List.of("15:10"));
        rules.put("Pressure at the liquid port", List.of("380 psig"));
        rules.put("What the scale shows", List.of("41.85 lb"));
        FieldValue.Fields before = VisitStore.read(file);
        try (Typed typed =
                new Typed(Map.of("hose is on now", List.of(""), "Time of the readings", List.of(Typed.CTRL_C)))) {
            assertThat(VisitAsk.next(file, typed.prompt(), NOW, ENGLISH).whole())
                    .isFalse();
        }
        assertThat(VisitStore.read(file)).isEqualTo(before);
        try (Typed typed = new Typed(rules)) {
            assertThat(VisitAsk.next(file, typed.prompt(), NOW, ENGLISH).whole())
                    .isTrue();
            assertThat(typed.asked())
                    .noneMatch(line ->
                            line.startsWith("Tare") || line.startsWith("Altitude") || line.startsWith("Metering"))
                    .anyMatch(line -> line.startsWith("What the scale shows"));
        }
        assertThat(MassDifference.parse(FieldTree.text(VisitStore.read(file), "moved.net")
                                .orElseThrow())
                        .pounds())
                .isCloseTo(-0.5, within(0.001));
        assertThat(folder.resolve("visit.json.next")).doesNotExist();
    }

    /** Short of charge, with the hose on the recovery cylinder: the source is asked about too, and both stand in the file. */
    @Test
    void theOtherCylinderIsAskedAboutWhereTheChargeAsksForIt() {
        Path file = folder.resolve("visit.json");
        try (Typed typed = new Typed(shortOfCharge())) {
            assertThat(ask(file, typed).whole()).isTrue();
            assertThat(typed.asked().stream().filter(line -> line.startsWith("Tare")))
                    .hasSize(2);
            assertThat(typed.asked().stream().filter(line -> line.startsWith("Length of the hose")))
                    .hasSize(1);
        }
        VisitReport report = report(file);
        assertThat(report.level()).contains(ChargeLevel.LOW);
        assertThat(report.visit().cylinders()).hasSize(2);
        assertThat(report.visit().connected()).contains("cylinder no. 4");
        assertThat(report.other()).isPresent();
    }

    private static Map<String, List<String>> shortOfCharge() {
        Map<String, List<String>> rules = answers();
        rules.put("suction line at the port", List.of("68 degF"));
        rules.put("liquid line at the port", List.of("113 degF"));
        rules.put("Cylinder to connect", List.of("cylinder no. 4", "cylinder no. 4", "cylinder no. 7"));
        rules.put("Which cylinder and valve", List.of("recovery-vapour", "source-liquid"));
        rules.put("Tare", List.of("27.4 lb", "6 lb"));
        rules.put("Water capacity", List.of("47.7 lb", "30 lb"));
        rules.put("Temperature of the cylinder", List.of("84 degF", "84 degF"));
        rules.put("Specification", List.of("DOT-4BW400", "DOT-39"));
        rules.put("on its label", List.of("R-410A", "R-410A"));
        rules.put("contents come from", List.of("recovered", "new"));
        rules.put("Whose refrigerant", List.of("the sailing club", "the sailing club"));
        rules.put("before it was zeroed", List.of("-"));
        rules.put("What the scale shows", List.of("41.35 lb", "20 lb"));
        rules.put("Pressure of the cylinder", List.of("252 psig", "252 psig"));
        rules.put("May it be refilled", List.of("no"));
        rules.put("Service pressure", List.of("-"));
        rules.put("marked for flammable", List.of("no"));
        rules.put("retest", List.of("2029-04-30", "-"));
        return rules;
    }

    /** The hose goes to the other cylinder; the one that it leaves keeps its weight. */
    @Test
    void theNextReadingsMayBeTakenOnAnotherCylinder() {
        Path file = folder.resolve("visit.json");
        try (Typed typed = new Typed(shortOfCharge())) {
            ask(file, typed);
        }
        Map<String, List<String>> rules = shortOfCharge();
        rules.put("hose is on now", List.of("cylinder no. 7"));
        rules.put("Time of the readings", List.of("15:10"));
        rules.put("before it was zeroed", List.of("20 lb"));
        rules.put("What the scale shows", List.of("-0.3 lb"));
        rules.put("Temperature of the cylinder", List.of("84 degF"));
        rules.put("Pressure of the cylinder", List.of("252 psig"));
        rules.put("Whose gas", List.of("source"));
        try (Typed typed = new Typed(rules)) {
            assertThat(VisitAsk.next(file, typed.prompt(), NOW, ENGLISH).whole())
                    .isTrue();
            assertThat(typed.asked()).noneMatch(line -> line.startsWith("Tare"));
        }
        FieldValue.Fields visit = VisitStore.read(file);
        assertThat(report(file).visit().connected()).contains("cylinder no. 7");
        assertThat(report(file).visit().cylinders())
                .allSatisfy(each -> assertThat(each.weighing()).isPresent());
        assertThat(MassDifference.parse(FieldTree.text(visit, "moved.net").orElseThrow())
                        .pounds())
                .isCloseTo(0.3, within(0.001));
    }

    @Test
    void aFileThatCannotBeUsedIsNotOverwritten() throws IOException {
        Path file = folder.resolve("visit.json");
        Files.writeString(file, "{ \"colour\": \"grey\" }");
        try (Typed typed = new Typed(answers())) {
            assertThatThrownBy(() -> ask(file, typed)).isInstanceOf(BadInputException.class);
        }
        assertThat(file).hasContent("{ \"colour\": \"grey\" }");
    }

    /** Each question has a field that the reader of visit files knows. */
    @Test
    void everyQuestionLeadsToAFieldOfTheFile() {
        Set<String> paths = new HashSet<>();
        for (Question question : Questions.all()) {
            assertThat(paths.add(question.path())).as(question.path()).isTrue();
            String answer = question.kind() == Question.Kind.FLAG
                    ? "yes"
                    : question.choices().isEmpty()
                            ? question.form().replaceAll(", .*", "")
                            : question.choices().get(0);
            Draft.check(question.answered(beside(question), answer, ENGLISH));
        }
    }

    /** A weight needs a scale, cooling its airflow. */
    private static FieldValue.Fields beside(Question question) {
        FieldValue.Fields fields = FieldTree.put(FieldTree.EMPTY, "instruments.scale.resolution", "0.05 lb");
        return question.path().endsWith("nominalCooling")
                ? FieldTree.put(fields, "conditions.airflow", "800 cfm")
                : fields;
    }
}
