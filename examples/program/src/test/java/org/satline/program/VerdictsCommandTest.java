package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.program.file.CsvRow;
import org.satline.program.file.CsvRows;
import org.satline.program.verdicts.VerdictRows;

class VerdictsCommandTest {
    private static final String HEADER = String.join(",", VerdictRows.INPUT) + "\n";
    private static final String GOOD = "good,R-410A,expansion-valve,911240,284.8,2772800,313.1,,306,,5.56,2000,0.3\n";

    @TempDir
    Path folder;

    @Test
    void aRowGetsItsNumbersAndItsLevel() throws IOException {
        CsvRow row = answers(HEADER + GOOD).get(0);
        assertThat(row.raw("judged_by")).isEqualTo("subcooling");
        assertThat(row.raw("level")).isEqualTo("on-target");
        assertThat(row.number("deviation_K").orElseThrow())
                .isCloseTo(
                        row.number("subcooling_K").orElseThrow()
                                - row.number("target_K").orElseThrow(),
                        offset(1e-9));
        double sum = row.number("probability_low").orElseThrow()
                + row.number("probability_on_target").orElseThrow()
                + row.number("probability_high").orElseThrow();
        // three probabilities of 15 printed digits
        assertThat(sum).isCloseTo(1, offset(1e-12));
    }

    @Test
    void columnsMayStandInAnyOrderAndOptionalOnesMayBeThere() throws IOException {
        List<CsvRow> rows = answers("outdoor_minimum_met,tolerance_K," + HEADER + "true,2," + GOOD);
        assertThat(rows.get(0).raw("level")).isEqualTo("on-target");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        R-410A,valve,911240,284.8,2772800,313.1,,,,5.56,2000,0.3              | valve
        R-410A,,911240,284.8,2772800,313.1,,,,5.56,2000,0.3                   | metering is empty
        R-9999,expansion-valve,911240,284.8,2772800,313.1,,,,5.56,2000,0.3    | R-9999
        R-410A,expansion-valve,-911240,284.8,2772800,313.1,,,,5.56,2000,0.3   | -911
        R-410A,expansion-valve,9e9,284.8,2772800,313.1,,,,5.56,2000,0.3       | not below liquid pressure
        R-410A,expansion-valve,NaN,284.8,2772800,313.1,,,,5.56,2000,0.3       | "NaN" is not a finite decimal number
        R-410A,expansion-valve,911240,-4,2772800,313.1,,,,5.56,2000,0.3       | -4
        R-410A,expansion-valve,911240,284.8,2772800,313.1,,,,5.56,-2000,0.3   | uncertainty
        R-410A,expansion-valve,911240                                         | line 2 has 4 cells
        """)
    void aRowThatCannotBeUsedIsRefusedAndTheOthersGoOn(String row, String part) throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of("verdicts", input(HEADER + "bad," + row + "\n" + GOOD), "--out", out);
        List<CsvRow> answers = read(out);
        assertThat(answers).extracting(each -> each.raw("id")).containsExactly("bad", "good");
        assertThat(answers.get(0).raw("level")).isEqualTo("refused");
        assertThat(answers.get(0).raw("note")).contains(part);
        assertThat(answers.get(1).raw("level")).isEqualTo("on-target");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).hasLineCount(1);
    }

    private List<CsvRow> answers(String content) throws IOException {
        Path out = folder.resolve("out.csv");
        assertThat(ProgramRun.of("verdicts", input(content), "--out", out).status())
                .isZero();
        return read(out);
    }

    private Path input(String content) throws IOException {
        return Files.writeString(folder.resolve("in.csv"), content);
    }

    private static List<CsvRow> read(Path out) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        try (CsvRows answers = CsvRows.of(out, VerdictRows.OUTPUT, List.of())) {
            answers.forEachRemaining(rows::add);
        }
        return rows;
    }
}
