package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.audit.AuditSummary;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.json.SatlineJson;
import org.satline.program.audit.AuditPage;

/** The sample of planted mistakes, made with {@code points} and altered by hand as its ids say, and files that cannot be used. */
class AuditCommandTest {
    private static final Path SAMPLE = Path.of("samples", "answers.csv");
    private static final String HEADER = "id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit\n";

    @TempDir
    private Path folder = Path.of("");

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("in.csv"), text);
    }

    @Test
    void eachPlantedMistakeIsNamedAndNothingElse() throws IOException {
        Path json = folder.resolve("out.json");
        ProgramRun run = ProgramRun.of("audit", SAMPLE, "--json", json);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(ExitStatus.ANSWERS_OUTSIDE);
        AuditSummary summary = new SatlineJson()
                .read(
                        new ObjectMapper()
                                .readTree(Files.readString(json))
                                .path("summary")
                                .toString(),
                        AuditSummary.class);
        Map<String, Kind> causes =
                summary.causes().stream().collect(Collectors.toMap(LikelyCause::refrigerant, LikelyCause::kind));
        assertThat(causes)
                .isEqualTo(Map.of(
                        "R-134a", Kind.GAUGE_OR_ABSOLUTE,
                        "R-410A", Kind.ALTITUDE_IGNORED,
                        "R-407C", Kind.BUBBLE_AND_DEW,
                        "R-32", Kind.CELSIUS_OR_FAHRENHEIT,
                        "R-290", Kind.REFERENCE_STATE,
                        "R-404A", Kind.OTHER_REFRIGERANT));
        assertThat(summary.unexplained()).isZero();
        assertThat(summary.within()).isEqualTo(6);
        assertThat(summary.notComparable()).isEqualTo(3);
        assertThat(run.out()).contains("the answers are those of R-507A", "35: 6 within tolerance, 26 outside");
    }

    @Test
    void theCsvHoldsEveryRowAsItCameIn() throws IOException {
        Path csv = folder.resolve("out.csv");
        ProgramRun.of("audit", SAMPLE, "--csv", csv);
        List<String> rows = Files.readAllLines(csv);
        assertThat(rows).hasSize(Files.readAllLines(SAMPLE).size());
        assertThat(rows.get(1)).startsWith("a-20,R-134a,dew_pressure,253.15,,31.4,kPa,outside,132.73");
        assertThat(rows.get(rows.size() - 2))
                .startsWith("comma,R-22,dew_pressure,283.15,,\"6,8\",bar,not-comparable,,,,,,")
                .contains("is not a decimal number");
    }

    @Test
    void theJsonFollowsItsSchemaAndHoldsEachSourceOnce() throws IOException {
        Path out = folder.resolve("out.json");
        ProgramRun.of("audit", SAMPLE, "--json", out);
        String text = Files.readString(out);
        JsonNode json = new ObjectMapper().readTree(text);
        JsonNode schema;
        try (InputStream stream = AuditPage.class.getResourceAsStream("audit.schema.json")) {
            schema = new ObjectMapper().readTree(stream);
        }
        JsonSchema checker =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
        assertThat(checker.validate(json)).isEmpty();
        assertThat(json.path("rows")).hasSize(35);
        assertThat(json.path("citations")).isNotEmpty();
        for (JsonNode citation : json.path("citations")) {
            assertThat(text.split(Pattern.quote(citation.asText()), -1).length - 1)
                    .as("%s", citation)
                    .isEqualTo(1);
        }
        ((ObjectNode) json.path("rows").get(0)).remove("answer");
        assertThat(checker.validate(json)).hasSize(1);
    }

    @Test
    void theStatusTellsAgreementFromWhatCannotBeCompared() throws IOException {
        // ASHRAE Handbook Fundamentals 2021 (SI), ch. 2, Example 2: R-134a at -20 degC, kPa
        String good = "a,R-134a,dew_pressure,253.15,,132.73,kPa\n";
        assertThat(ProgramRun.of("audit", file(HEADER + good)).status()).isEqualTo(ExitStatus.DONE);
        ProgramRun some = ProgramRun.of("audit", file(HEADER + good + "b,R-134a,dew_pressure,cold,,1,kPa\nc,R-134a\n"));
        assertThat(some.status()).isEqualTo(ExitStatus.SOME_ROWS_REFUSED);
        assertThat(some.out())
                .contains("3: 1 within tolerance, 0 outside, 2 not comparable")
                .contains("line 3: temperature_K \"cold\" is not a finite decimal number")
                .contains("line 4 has 2 cells, the header has 7")
                .doesNotContain("line 4: line 4");
    }

    @Test
    void aFileThatCannotBeUsedIsRefusedAndNothingIsWritten() throws IOException {
        assertThat(ProgramRun.of("audit", file(HEADER)).err()).contains("there is nothing to audit");
        assertThat(ProgramRun.of("audit", file("id,refrigerant\n")).err()).contains("column \"quantity\" is missing");
        assertThat(ProgramRun.of("audit", folder.resolve("none.csv")).status()).isEqualTo(ExitStatus.BAD_INPUT);
        Path in = file(HEADER + "a,R-134a,dew_pressure,253.15,,132.73,kPa\n");
        ProgramRun overInput = ProgramRun.of("audit", in, "--json", in);
        assertThat(overInput.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(Files.readString(in)).startsWith(HEADER);
    }

    @Test
    void aConstantRatioAndRepeatedIdsAreMentioned() throws IOException {
        // ASHRAE Handbook Fundamentals 2021 (SI), ch. 2, Example 2: 132.73 kPa at -20 degC, 770.2 kPa at 30 degC; 1.02
        // times those, and 292.8 kPa at 0 degC from memory
        ProgramRun run = ProgramRun.of(
                "audit",
                file(HEADER + "a,R-134a,dew_pressure,253.14999999999998,,135.38,kPa\n"
                        + "a,R-134a,dew_pressure,303.15,,785.6,kPa\nb,R-134a,dew_pressure,273.15,,298.7,kPa\n"));
        assertThat(run.status()).isEqualTo(ExitStatus.ANSWERS_OUTSIDE);
        assertThat(run.out())
                .contains("constant ratio 1.02", "at 253.15 K")
                .containsPattern("more than one row\\s+has");
    }
}
