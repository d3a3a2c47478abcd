package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.json.JsonFields;

/** Visits as technicians meet them, through the program: what it may say and what it must not; common practice, no source. */
class VisitTrialsTest {
    /** A visit whose file cannot be used, or contradicts itself. */
    private static final String REFUSE = "refuse";
    /** Texts that people gave, versions and units: the only ones with blanks. */
    private static final Set<String> GIVEN = Set.of("name", "dataVersion", "unit");

    @TempDir
    static Path folder;

    private static final Map<VisitTrial, Outcome> OUTCOMES = new LinkedHashMap<>();

    /** What the program made of a visit; the report is missing where it was refused. */
    private record Outcome(ProgramRun run, JsonNode report) {
        String action() {
            return report.isMissingNode() ? REFUSE : report.path("action").textValue();
        }
    }

    @BeforeAll
    static void runAll() throws IOException {
        ObjectMapper json = new ObjectMapper();
        for (VisitTrial trial : VisitTrial.all()) {
            Path out = folder.resolve(trial + ".out");
            ProgramRun run = ProgramRun.of("visit", trial.file(), "--json", out);
            OUTCOMES.put(trial, new Outcome(run, json.readTree(Files.exists(out) ? Files.readString(out) : "")));
        }
        assertThat(OUTCOMES).hasSizeGreaterThan(160);
    }

    @Test
    void noVisitGetsAForbiddenAction() {
        assertThat(wrong(false)).isEmpty();
    }

    @Test
    void everyVisitGetsAnAllowedAction() {
        assertThat(wrong(true)).isEmpty();
    }

    private static Map<String, String> wrong(boolean allowedOnly) {
        Map<String, String> wrong = new TreeMap<>();
        OUTCOMES.forEach((trial, outcome) -> {
            boolean bad = allowedOnly
                    ? !trial.expected().contains(outcome.action())
                    : trial.forbidden().contains(outcome.action());
            if (bad) {
                wrong.put(
                        trial.toString(),
                        outcome.action() + " instead of " + trial.row().get("expected"));
            }
        });
        return wrong;
    }

    @Test
    void whatIsReadyGetsThePreferredActionWithinItsBounds() {
        SoftAssertions softly = new SoftAssertions();
        for (VisitTrial trial : VisitTrial.ready()) {
            Outcome outcome = Objects.requireNonNull(OUTCOMES.get(trial));
            softly.assertThat(outcome.action())
                    .as("%s", trial)
                    .isEqualTo(trial.expected().get(0));
            if (trial.has("amount_min_kg")) {
                softly.assertThat(outcome.report().path("amountKg").doubleValue())
                        .as("%s amountKg", trial)
                        .isBetween(trial.bound("amount_min_kg"), trial.bound("amount_max_kg"));
                softly.assertThat(outcome.report().path("stopReadingKg").doubleValue())
                        .as("%s stopReadingKg", trial)
                        .isBetween(trial.bound("stop_min_kg"), trial.bound("stop_max_kg"));
                softly.assertThat(outcome.report().path("port").textValue())
                        .as("%s port", trial)
                        .isEqualTo(trial.row().get("port"));
            }
        }
        softly.assertAll();
    }

    /** What is done names no hose in these files, so that nothing is left to take off. */
    @Test
    void whatIsReadyToMoveCarriesAPlanOfItsStep() {
        SoftAssertions softly = new SoftAssertions();
        for (VisitTrial trial : VisitTrial.ready()) {
            JsonNode report = Objects.requireNonNull(OUTCOMES.get(trial)).report();
            List<String> phases = report.path("plan").findValuesAsText("phase");
            if (trial.expected().get(0).equals("done")) {
                softly.assertThat(phases).as("%s", trial).isEmpty();
            } else {
                softly.assertThat(phases).as("%s", trial).isNotEmpty().containsOnly("step");
            }
        }
        softly.assertAll();
    }

    @Test
    void noVisitMovesWithoutAnOrderOfValves() {
        OUTCOMES.forEach((trial, outcome) -> {
            if (outcome.report().path("movesNow").asBoolean()) {
                assertThat(outcome.report().path("plan")).as("%s", trial).isNotEmpty();
            }
        });
    }

    @Test
    void everyReportKeepsToItsSchemaAndHoldsNoSentence() {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(JsonFields.reportSchema());
        SoftAssertions softly = new SoftAssertions();
        OUTCOMES.forEach((trial, outcome) -> {
            if (!outcome.report().isMissingNode()) {
                softly.assertThat(schema.validate(outcome.report()))
                        .as("%s", trial)
                        .isEmpty();
                softly.assertThat(sentences("", outcome.report()))
                        .as("%s", trial)
                        .isEmpty();
            }
        });
        softly.assertAll();
    }

    private static List<String> sentences(String name, JsonNode node) {
        List<String> found = new ArrayList<>();
        if (node.isTextual() && node.textValue().contains(" ") && !GIVEN.contains(name)) {
            found.add(node.textValue());
        }
        node.properties().forEach(each -> found.addAll(sentences(each.getKey(), each.getValue())));
        if (node.isArray()) {
            node.forEach(each -> found.addAll(sentences(name, each)));
        }
        return found;
    }

    @Test
    void whatIsRefusedIsOneLineThatNamesFileAndField() {
        SoftAssertions softly = new SoftAssertions();
        OUTCOMES.forEach((trial, outcome) -> {
            boolean refused = outcome.report().isMissingNode();
            softly.assertThat(outcome.run().status()).as("%s", trial).isEqualTo(refused ? ExitStatus.BAD_INPUT : 0);
            softly.assertThat(outcome.run().err().lines().count())
                    .as("%s", trial)
                    .isEqualTo(refused ? 1 : 0);
            if (refused) {
                softly.assertThat(outcome.run().err())
                        .as("%s", trial)
                        .contains(trial + ": ")
                        .matches("(?s).*: [a-zA-Z]+(\\.|\\[|, |: ).*");
            }
        });
        softly.assertAll();
    }

    @Test
    void theLinesThatMatterComeFirstAndSayWhatTheReportSays() {
        SoftAssertions softly = new SoftAssertions();
        OUTCOMES.forEach((trial, outcome) -> {
            if (!outcome.report().isMissingNode()) {
                new BriefLines(outcome.run().out()).check(outcome.report(), softly, trial.toString());
            }
        });
        softly.assertAll();
    }

    @Test
    void aDangerOrdersNoMovementAnywhereOnThePage() {
        OUTCOMES.forEach((trial, outcome) -> {
            if (outcome.action().equals("makeSafe")) {
                assertThat(outcome.report().path("plan")).as("%s", trial).isEmpty();
                assertThat(outcome.run().out()).as("%s", trial).doesNotContain("Step by step");
            }
        });
    }
}
