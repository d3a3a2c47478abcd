package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisitCommandTest {
    private static final Path SAMPLE = Path.of("samples", "boathouse.json");

    @TempDir
    Path folder;

    @Test
    void theLinesThatMatterStandBelowTheTitle() {
        ProgramRun run = ProgramRun.of("visit", SAMPLE);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        List<String> lines = run.out().lines().toList();
        assertThat(lines.get(0)).startsWith("Boathouse on Lake Tervo");
        assertThat(lines.get(2)).startsWith("do        take one step out");
        assertThat(lines.get(3)).startsWith("charge    probably high, chance ");
        assertThat(run.out())
                .contains("Step by step", "One step", "1.  Open", "Why")
                .contains("does not replace it.\nLocal codes")
                .doesNotContain("Cautions", "Fill rules", "saturation temperatures");
    }

    @Test
    void theCylinderInDangerIsNamedWhereThereAreSeveral() throws IOException {
        // by hand: 90 - 27.4 = 62.6 lb of contents, 1.31 times the water capacity
        // holds
        String full = """
                {"name": "standing by", "role": "receiver", "valve": "vapour", "specification": "DOT-4BW400", "tare": "27.4 lb",
                 "waterCapacity": "47.7 lb", "retestDue": "2029-04-30", "holding": "R-410A", "temperature": "84 degF",
                 "pressure": "252 psig", "owner": "the sailing club", "provenance": "recovered", "scaleReading": "90 lb"}""";
        String visit = Files.readString(SAMPLE).replace("\"cylinder\": {", "\"cylinders\": [{");
        int end = visit.lastIndexOf('}', visit.lastIndexOf('}') - 1);
        String several = visit.substring(0, end + 1) + ", " + full
                + "], \"connected\": \"grey and yellow recovery cylinder no. 4\"}";
        ProgramRun run = ProgramRun.of("visit", write(several));
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines().toList().get(2)).startsWith("DANGER").contains("standing by");
    }

    @Test
    void theRestIsThereWhereItIsAskedFor() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--full").out())
                .startsWith(ProgramRun.of("visit", SAMPLE)
                        .out()
                        .substring(0, ProgramRun.of("visit", SAMPLE).out().indexOf("\nThis page")))
                .contains("R-410A, safety group A1")
                .contains("R-32 + R-125: fitted")
                // 118 psig + 97.656 kPa (ISO 2533 at 310 m, by hand) = 813.58 + 97.66 = 911.24 kPa
                .contains("118.0 psig (813.6 kPa), absolute 132.2 psia")
                .contains("in cooling for 25 min", "not-liquid-full-131F", "at most ", "Cautions", "40 CFR 82.161")
                .doesNotContain("does not apply", "How each number was found");
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out()).contains("does not apply");
    }

    @Test
    void nothingAboveTheGoverningLimitIsCalledLeft() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out()).doesNotContainPattern("lb.*\\bleft\\b");
    }

    @Test
    void linesFitOnAPage() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out().lines())
                .allMatch(line -> line.length() <= 100, "no longer than 100 characters");
    }

    @Test
    void explainPrintsFormulaNumbersAndSource() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out())
                .contains("How each number was found", "p = p_gauge + p_atm", "ISO 2533:1975")
                .contains("SH = T_line - T_dew");
        assertThat(ProgramRun.of("visit", SAMPLE).out()).doesNotContain("How each number was found");
    }

    @Test
    void siAndTradeUnitsGiveTheSamePage() throws IOException {
        String metric = Files.readString(SAMPLE).replace("\"118 psig\"", "\"813.581361 kPa gauge\"");
        String page = ProgramRun.of("visit", SAMPLE).out();
        ProgramRun run = ProgramRun.of("visit", write(metric));
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(page);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        "118 psig"            | "118 pgsi"             | readings.suctionPressure: | psig
        "118 psig"            | "118"                  | readings.suctionPressure: | 118
        "118 psig"            | 118                    | readings.suctionPressure: | text in quotes is expected
        "118 psig"            | null                   | readings.suctionPressure: | is null
        "118 psig"            | "NaN psig"             | readings.suctionPressure: | NaN
        "118 psig"            | "-20 psig"             | readings.suctionPressure: | -20
        "118 psig"            | "118 degF"             | readings.suctionPressure: | degF
        "118 psig"            | "9000 psig"            | readings.suctionPressure: | outside [
        "suctionPressure"     | "suctionPresure"       | readings.suctionPresure:  | unknown field; allowed here: suctionPressure
        "53 degF"             | "53 psig"              | readings.suctionLine:     | psig
        "53 degF"             | "-500 degF"            | readings.suctionLine:     | -500
        "25 min"              | "25"                   | conditions.running:       | is no duration
        "800 cfm"             | "800 psi"              | conditions.airflow:       | psi
        "5 min"               | "3 min"                | conditions:               | not later
        "-0.3 lb"             | "-0.3 psi"             | moved.net:                | psi
        "plain-flare"         | "plainflare"           | cylinder.hoses[0].systemEnd: | not known
        "5 ft"                | "500 ft"               | cylinder.hoses[0].length: | outside (0, 100] m
        "3.2 kg"              | "0 kg"                 | system:                   | outside (0, 5000] kg
        "310 m"               | "310 kg"               | site.altitude:            | kg
        "310 m"               | "90000 m"              | site.altitude:            | outside [
        "R-410A",%n    "met   | "R-41OA",%n    "met    | system.refrigerant:       | R-41OA
        "expansion-valve"     | "valve"                | system.metering:          | expansion-valve
        "27.4 lb"             | "27.4"                 | cylinder.tare:            | 27.4
        "27.4 lb"             | "-27.4 lb"             | cylinder.tare:            | -27.4
        "2029-04-30"          | "04/2029"              | cylinder.retestDue:       | 04/2029
        "recovery-vapour"     | "left"                 | cylinder.valve:           | allowed: liquid, recovery-liquid, recovery-vapour
        "0.05 %"              | "5"                    | scale.percentOfReading:   | no percentage
        "title"               | "tilte"                | tilte:                    | unknown field
        "310 m"               | "310 m", "name": "x"   | line 6,                   | Duplicate field 'name'
        }%n}                  | }                      | broken JSON               | line 69,
        """)
    void aFaultyFileIsOneLineThatNamesTheField(String part, String other, String field, String what)
            throws IOException {
        String sample = Files.readString(SAMPLE).stripTrailing();
        String from = part.replace("%n", "\n");
        assertThat(sample).contains(from);
        Path file = write(sample.replace(from, other.replace("%n", "\n")));
        ProgramRun run = ProgramRun.of("visit", file);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("satline: " + folder)
                .contains(field)
                .contains(what)
                .hasLineCount(1);
    }

    @Test
    void aPortNamedTwiceIsTheFilesFault() throws IOException {
        String twice = Files.readString(SAMPLE)
                .replace(
                        "\"cylinder\": {",
                        "\"openPorts\": [ { \"port\": \"high-side-liquid\", \"pressure\": \"388 psig\" }, "
                                + "{ \"port\": \"high-side-liquid\", \"pressure\": \"388 psig\" } ],\n  \"cylinder\": {");
        ProgramRun run = ProgramRun.of("visit", write(twice));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("named twice");
    }

    @Test
    void aVisitWithoutACylinderGetsItsPageToo() throws IOException {
        String sample = Files.readString(SAMPLE);
        String without = sample.substring(0, sample.indexOf(",\n  \"cylinder\"")) + "\n}\n";
        ProgramRun run = ProgramRun.of("visit", write(without));
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("no cylinder at hand").doesNotContain("Step by step");
    }

    @Test
    void aCylinderPastItsRetestDateIsNotToBeFilled() throws IOException {
        String late = Files.readString(SAMPLE).replace("2029-04-30", "2024-04-30");
        assertThat(ProgramRun.of("visit", write(late)).out())
                .contains("prepare first", "retest was due 2024-04-30")
                .doesNotContain("Step by step", "how much ");
    }

    @Test
    void aDangerComesFirstAndOrdersNothing() throws IOException {
        String heavy = Files.readString(SAMPLE).replace("\"41.35 lb\"", "\"90 lb\"");
        ProgramRun run = ProgramRun.of("visit", write(heavy));
        assertThat(run.status()).isZero();
        assertThat(run.out().lines().toList().get(2)).startsWith("DANGER    overfilled");
        assertThat(run.out()).doesNotContain("Step by step", "how much ");
    }

    @Test
    void aRoleThatContradictsTheValveIsRefusedWithBoth() throws IOException {
        String source = Files.readString(SAMPLE)
                .replace("\"valve\": \"recovery-vapour\"", "\"role\": \"source\", \"valve\": \"recovery-vapour\"");
        ProgramRun run = ProgramRun.of("visit", write(source));
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("cylinder.role", "\"source\"", "\"recovery-vapour\"")
                .hasLineCount(1);
    }

    @Test
    void aDangerIsSaidOfAFileThatCannotBeReadAsAWhole() throws IOException {
        String heavy = Files.readString(SAMPLE)
                .replace("\"41.35 lb\"", "\"90 lb\"")
                .replace("thermocouple-k-class-1", "thermocouple-q")
                .replace(",\n    \"hoseContents\": \"0.2 lb\"", "");
        Path json = folder.resolve("report.json");
        ProgramRun run = ProgramRun.of("visit", write(heavy), "--json", json);
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.out()).startsWith("DANGER    overfilled");
        assertThat(run.err())
                .contains("instruments.thermometer", "thermocouple-q")
                .hasLineCount(1);
        assertThat(json).doesNotExist();
    }

    @Test
    void theReportGoesToAFileBesideTheSamePage() throws IOException {
        Path json = folder.resolve("report.json");
        Path html = folder.resolve("report.html");
        ProgramRun run = ProgramRun.of("visit", SAMPLE, "--json", json, "--html", html);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(ProgramRun.of("visit", SAMPLE).out());
        assertThat(Files.readString(json)).contains("\"action\" : \"takeOut\"").endsWith("}\n");
        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    }

    @Test
    void unitsOfThePageAreTheReadersChoice() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--units", "SI").out()).contains("0.23 kg (0.52 lb) out");
    }

    @Test
    void theReportDoesNotReplaceTheVisit() throws IOException {
        Path visit = write(Files.readString(SAMPLE));
        for (String option : List.of("--html", "--json")) {
            ProgramRun run = ProgramRun.of("visit", visit, option, visit);
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.err()).contains("is the file that is read").hasLineCount(1);
            assertThat(visit).hasSameTextualContentAs(SAMPLE);
            assertThat(ProgramRun.of(
                                    "visit", visit, option, folder.resolve("no").resolve("out"))
                            .err())
                    .contains("its folder does not exist");
        }
    }

    private Path write(String content) throws IOException {
        return Files.writeString(folder.resolve("visit.json"), content);
    }
}
