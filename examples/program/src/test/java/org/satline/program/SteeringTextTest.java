package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Control characters and those that turn text around come in with a file and reach nobody's eyes, on any output. */
class SteeringTextTest {
    private static final String STEERING = "x\u202ey\u009b31m\u2067z\u200e";
    private static final Path SAMPLES = Path.of("samples");

    @TempDir
    Path folder;

    private static void assertClean(String text) {
        assertThat(text).containsPattern("x ?y 31m ?z");
        assertThat(text.codePoints())
                .allMatch(c -> c == '\n' || !Character.isISOControl(c))
                .allMatch(c -> Character.getType(c) != Character.FORMAT);
    }

    private Path changed(String sample, String part) throws IOException {
        String text = Files.readString(SAMPLES.resolve(sample));
        assertThat(text).contains(part);
        return Files.writeString(folder.resolve(sample), text.replace(part, STEERING));
    }

    @Test
    void pageAndReportOfAVisit() throws IOException {
        Path visit = changed("boathouse.json", "Boathouse on Lake Tervo");
        assertClean(ProgramRun.of("visit", visit).out());
        Path html = folder.resolve("report.html");
        assertThat(ProgramRun.of("visit", visit, "--html", html).status()).isZero();
        assertClean(Files.readString(html));
    }

    @Test
    void pictureOfAVisit() throws IOException {
        Path visit = changed("boathouse.json", "digital gauge, low side");
        Path svg = folder.resolve("picture.svg");
        ProgramRun run = ProgramRun.of("picture", "pressure-temperature", "--visit", visit, "--out", svg);
        assertThat(run.status()).isZero();
        assertThat((run.out() + Files.readString(svg)).codePoints())
                .allMatch(c -> Character.getType(c) != Character.FORMAT);
    }

    @Test
    void cellsOfBulkCommands() throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun.of("points", changed("points.csv", "freezer"), "--out", out);
        assertClean(Files.readString(out));
        ProgramRun.of("fills", changed("fills.csv", "strictest"), "--out", out);
        assertClean(Files.readString(out));
        ProgramRun.of("verdicts", changed("verdicts.csv", "boathouse"), "--out", out);
        assertClean(Files.readString(out));
    }

    /** What a spreadsheet does with cells that begin so is common knowledge of its makers' manuals; from memory. */
    @Test
    void cellsThatASpreadsheetWouldRunAreMadeHarmlessAndItIsSaid() throws IOException {
        Path out = folder.resolve("out.csv");
        for (String formula : new String[] {"=HYPERLINK(1)", "+1+cmd", "-2+3", "@SUM(1)", "\uff1d1", "\t=1+1"}) {
            Path in = folder.resolve("points.csv");
            Files.writeString(
                    in, Files.readString(SAMPLES.resolve("points.csv")).replace("freezer", formula));
            ProgramRun run = ProgramRun.of("points", in, "--out", out);
            assertThat(Files.readString(out)).contains("'").doesNotContain("\n" + formula);
            assertThat(run.err()).contains("apostrophe");
        }
        ProgramRun plain = ProgramRun.of("points", SAMPLES.resolve("points.csv"), "--out", out);
        assertThat(Files.readString(out)).doesNotContain("'");
        assertThat(plain.err()).doesNotContain("apostrophe");
    }

    @Test
    void pageOfAnAudit() throws IOException {
        assertClean(ProgramRun.of("audit", changed("answers.csv", "d30")).out());
    }

    @Test
    void complaints() throws IOException {
        assertClean(
                ProgramRun.of("visit", changed("boathouse.json", "118 psig")).err());
    }
}
