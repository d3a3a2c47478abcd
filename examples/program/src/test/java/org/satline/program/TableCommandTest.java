package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TableCommandTest {
    @Test
    void printsTextAndCsvInBothUnitSystems() {
        // ASHRAE Handbook Fundamentals 2021 (SI), chapter 2, example 2: 132.73 kPa at -20 degC
        ProgramRun text = ProgramRun.of("table", "R-134a", "--from", "-20", "--to", "0", "--step", "10");
        assertThat(text.status()).isEqualTo(ExitStatus.DONE);
        assertThat(text.out()).contains("source: ", "132.7");
        ProgramRun csv =
                ProgramRun.of("table", "r410a", "--units", "US", "--form", "CSV", "--from", "40", "--to", "45");
        assertThat(csv.status()).isEqualTo(ExitStatus.DONE);
        assertThat(csv.out()).contains("bubble pressure psia", "\n40.00,");
    }

    @Test
    void refusesWhatMakesNoTable() {
        assertThat(ProgramRun.of("table", "R-134a", "--step", "0").status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(ProgramRun.of("table", "R-99999").status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(ProgramRun.of("table", "R-134a", "--to", "500").err()).contains("outside");
    }

    @Test
    void theCertificateAloneNamesErrorAndBound() {
        ProgramRun run = ProgramRun.of("table", "R-410A", "--errors");
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("R-410A, table ")
                .containsPattern("dew pressure +below 0.9 +200 +\\d.\\de-\\d\\d +1.0e-08")
                .doesNotContain("BOUND MISSED");
        assertThat(ProgramRun.of("table", "R-471A", "--errors").err()).contains("no table of R-471A is stored");
    }
}
