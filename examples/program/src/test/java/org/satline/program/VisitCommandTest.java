package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VisitCommandTest {
    private static final Path SAMPLE = Path.of("samples", "boathouse.json");

    @TempDir
    Path folder;

    @Test
    void theSamplePageHoldsWhatAVisitNeeds() {
        ProgramRun run = ProgramRun.of("visit", SAMPLE);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("Boathouse on Lake Tervo")
                .contains("R-410A, safety group A1")
                .contains("pair R-32 + R-125: fitted")
                // 118 psig + 97.656 kPa (ISO 2533 at 310 m, by hand) = 813.58 + 97.66 = 911.24 kPa
                .contains("118.0 psig, absolute 132.2 psia (911.2 kPa)")
                .contains("bubble point", "dew point", "superheat", "subcooling")
                .containsPattern("level +high")
                .contains("stop at")
                .contains("liquid from the high-side liquid port")
                .contains("BACKFLOW")
                .contains("Cautions")
                .contains("does not replace it.\nLocal codes");
    }

    @Test
    void everyPartOfAVisitIsOnThePage() {
        assertThat(ProgramRun.of("visit", SAMPLE).out())
                .contains("in cooling for 25 min", "settled: slope")
                .contains("as the next step out from the high-side liquid port")
                .contains("charge error    about +9 %", "what fits")
                .contains("law: not-liquid-full-131F: at most", "practice, GOVERNS: liquid-80-warmest: at most")
                .contains("law, not in the set us: tank-filling: does not apply: it is for portable tanks")
                .contains("consistent with the label")
                .contains("The cylinder as it warms, with 13.95 lb", "liquid-full     never")
                .contains("Purging the hose at the high-side liquid port", "the joint at the cylinder stays loose")
                .contains("40 CFR 82.154(a)")
                .contains("Rules of this transfer");
    }

    @Test
    void linesFitOnAPage() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out().lines())
                .allMatch(line -> line.length() <= 100, "no longer than 100 characters");
    }

    @Test
    void explainPrintsFormulaNumbersAndSource() {
        assertThat(ProgramRun.of("visit", SAMPLE, "--explain").out())
                .contains(
                        "How each number was found",
                        "p = p_gauge + p_atm",
                        "813.58 kPa (118.00 psig) + 97.66 kPa",
                        "ISO 2533:1975")
                .contains("SH = T_suction_line - T_dew(p_suction)");
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
        "25 min"              | "25"                   | conditions.running:       | number and s, min or h
        "800 cfm"             | "800 psi"              | conditions.airflow:       | psi
        "5 min"               | "3 min"                | conditions.settling:      | not later
        "-0.3 lb"             | "-0.3 psi"             | moved.net:                | psi
        "self-sealing"        | "selfsealing"          | cylinder.hoses[0].systemEnd: | not known
        "5 ft"                | "500 ft"               | cylinder.hoses[0].length: | outside (0, 100] m
        "3.2 kg"              | "0 kg"                 | system:                   | outside (0, 5000] kg
        "310 m"               | "310 kg"               | site.altitude:            | kg
        "310 m"               | "90000 m"              | site.altitude:            | outside [
        "R-410A",%n    "met   | "R-41OA",%n    "met    | system.refrigerant:       | R-41OA
        "expansion-valve"     | "valve"                | system.metering:          | expansion-valve
        "27.4 lb"             | "27.4"                 | cylinder.tare:            | 27.4
        "27.4 lb"             | "-27.4 lb"             | cylinder.tare:            | -27.4
        "2029-04-30"          | "04/2029"              | cylinder.retestDue:       | 04/2029
        "recovery-vapour"     | "left"                 | cylinder.valve:           | allowed: recovery-liquid, recovery-vapour
        "0.05 %"              | "5"                    | scale.percentOfReading:   | no percentage
        "title"               | "tilte"                | tilte:                    | unknown field
        "310 m"               | "310 m", "name": "x"   | visit.json:6:             | Duplicate field 'name'
        }%n}                  | }                      | broken JSON               | visit.json:68:
        "84 degF"             | "300 degF"             | cylinder.temperature:     | outside [
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
        assertThat(run.out()).contains("hook up a recovery cylinder").doesNotContain("Which way it would flow");
    }

    @Test
    void aCylinderPastItsRetestDateIsNotToBeFilled() throws IOException {
        String late = Files.readString(SAMPLE).replace("2029-04-30", "2024-04-30");
        assertThat(ProgramRun.of("visit", write(late)).out()).contains("DO NOT FILL", "take another recovery cylinder");
    }

    @Test
    void anImpossibleWeightPrintsNoPressureAndNoPurge() throws IOException {
        String heavy = Files.readString(SAMPLE).replace("\"41.35 lb\"", "\"90 lb\"");
        assertThat(ProgramRun.of("visit", write(heavy)).out())
                .contains("DO NOT FILL     keep people away", "DO NOT CONNECT THE CYLINDER", "NOT NOW")
                .doesNotContain("consistent with the label", "The cylinder as it warms", "screw it home");
    }

    @Test
    void noHoseIsPurgedWhereNothingIsToBeMoved() throws IOException {
        String onTarget = Files.readString(SAMPLE).replace("\"98 degF\"", "\"104 degF\"");
        assertThat(ProgramRun.of("visit", write(onTarget)).out())
                .contains("NOTHING IS TO BE MOVED", "NOT NOW")
                .doesNotContain("screw it home");
        String source = Files.readString(SAMPLE).replace("recovery-vapour", "source-liquid");
        assertThat(ProgramRun.of("visit", write(source)).out())
                .contains("hook up a recovery cylinder", "NOTHING IS TO BE MOVED", "NOT NOW")
                .doesNotContain("screw it home");
    }

    @Test
    void theReportGoesToAFileThatAppearsWhole() throws IOException {
        Path out = folder.resolve("report.html");
        ProgramRun run = ProgramRun.of("visit", SAMPLE, "--html", out, "--units", "SI");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("written to " + out, "charge: high");
        assertThat(Files.readString(out))
                .startsWith("<!DOCTYPE html>")
                .contains(" kPa, ")
                .endsWith("</html>\n");
    }

    @Test
    void theReportDoesNotReplaceTheVisit() throws IOException {
        Path visit = write(Files.readString(SAMPLE));
        ProgramRun run = ProgramRun.of("visit", visit, "--html", visit);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("is the file that is read").hasLineCount(1);
        assertThat(visit).hasSameTextualContentAs(SAMPLE);
        assertThat(ProgramRun.of("visit", visit, "--html", folder.resolve("no").resolve("out.html"))
                        .err())
                .contains("its folder does not exist");
    }

    private Path write(String content) throws IOException {
        return Files.writeString(folder.resolve("visit.json"), content);
    }
}
