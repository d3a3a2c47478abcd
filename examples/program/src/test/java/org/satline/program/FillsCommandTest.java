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
import org.satline.program.fills.FillAnswers;

class FillsCommandTest {
    private static final String HEADER = "id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K,"
            + "specification,flammable_mark,retest_due,fill_date,jurisdiction,test_pressure_Pa_gauge,service_pressure_Pa_gauge\n";

    @TempDir
    Path folder;

    @Test
    void thePrintedFillingRatioGivesTheContents() throws IOException {
        CsvRow row = answered("R-134a,10,5,filling-ratio,,,,,,,1800000,");
        // ADR 2025, 4.1.4.1, P200 table 2, UN 3159: filling ratio 1.05
        assertThat(row.number("maximum_contents_kg").orElseThrow()).isCloseTo(10.5, offset(1e-12));
        assertThat(row.number("maximum_gross_kg").orElseThrow()).isCloseTo(15.5, offset(1e-12));
        assertThat(row.raw("rule")).isEqualTo("filling-ratio");
    }

    @Test
    void anEmptyRuleNamesTheGoverningOne() throws IOException {
        CsvRow row = answered("R-410A,21.6,12.4,,,DOT-4BW400,,,,,,");
        assertThat(row.raw("rule")).isEqualTo("liquid-80-warmest");
        assertThat(row.raw("note")).contains("governing rule of us");
        assertThat(answered("R-410A,21.6,12.4,,,,,,,adr,4200000,").raw("note")).contains("governing rule of adr");
    }

    @Test
    void aWarmerCylinderHoldsLess() throws IOException {
        double usual = answered("R-410A,21.6,12.4,liquid-80-warmest,,,,,,,,")
                .number("maximum_contents_kg")
                .orElseThrow();
        double cooler = answered("R-410A,21.6,12.4,liquid-80-warmest,310,,,,,,,")
                .number("maximum_contents_kg")
                .orElseThrow();
        assertThat(cooler).isGreaterThan(usual);
    }

    @Test
    void aPressureRulePassesOrFailsWithItsMargin() throws IOException {
        assertThat(answered("R-134a,21.6,12.4,service-pressure-131F,,DOT-4BA240,,,,,,")
                        .raw("note"))
                .startsWith("passed, margin");
        assertThat(answered("R-410A,21.6,12.4,service-pressure-131F,,DOT-4BA240,,,,,,")
                        .raw("note"))
                .startsWith("FAILED, margin -");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        R-410A,21.6,12.4,,,DOT-39,,,,,,                    | notRefillable
        R-32,21.6,12.4,,,DOT-4BW400,false,,,,,             | flammable
        R-134a,21.6,12.4,,,,,2020-01-01,2026-01-01,,,      | retestPast
        R-134a,21.6,99,,,,,,,,,                            | tareMisfitsCapacity
        R-134a,0,12.4,,,,,,,,,                             | water_capacity_kg 0.0 kg is not above 0
        R-134a,21.6,-1,,,,,,,,,                            | tare_kg -1.0 kg is not above 0
        R-134a,,12.4,,,,,,,,,                              | water_capacity_kg is empty
        R-134a,twenty,12.4,,,,,,,,,                        | "twenty" is not a finite decimal number
        R-134a,NaN,12.4,,,,,,,,,                           | "NaN" is not a finite decimal number
        R-134a,21.6,12.4,no-such-rule,,,,,,,,              | no-such-rule
        R-134a,21.6,12.4,,,,,,,atlantis,,                  | atlantis
        R-134a,21.6,12.4,,500,,,,,,,                       | outside [-50
        R-134a,21.6,12.4,,,,maybe,,,,,                     | "maybe" is not known; allowed: true, false
        R-134a,21.6,12.4,,,,,01/2029,,,,                   | retest_due "01/2029" is no date
        R-744,21.6,12.4,settled-pressure-65C,,,,,,,,       | could not be applied
        R-744,21.6,12.4,liquid-80-warmest,,,,,,,,          | does not apply
        R-9999,21.6,12.4,,,,,,,,,                          | R-9999
        R-134a,21.6                                        | line 2 has 3 cells
        """)
    void aRowThatCannotBeComputedSaysWhyAndTheOthersGoOn(String row, String part) throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of(
                "fills", input(HEADER + "bad," + row + "\ngood,R-134a,21.6,12.4,,,DOT-4BW400,,,,,,\n"), "--out", out);
        List<CsvRow> answers = answers(out);
        assertThat(answers).extracting(each -> each.raw("id")).containsExactly("bad", "good");
        assertThat(answers.get(0).raw("maximum_contents_kg")).isEmpty();
        assertThat(answers.get(0).raw("note")).contains(part);
        assertThat(answers.get(1).raw("maximum_contents_kg")).isNotEmpty();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).hasLineCount(1);
    }

    @Test
    void optionalColumnsMayBeMissing() throws IOException {
        Path out = folder.resolve("out.csv");
        ProgramRun run = ProgramRun.of(
                "fills",
                input("id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K\nx,R-22,21.6,12.4,,\n"),
                "--out",
                out);
        assertThat(run.status()).isZero();
        assertThat(answers(out).get(0).raw("maximum_contents_kg")).isNotEmpty();
    }

    /** A cylinder of a place that knows no such mark as DOT-4BW400. */
    @Test
    void whetherItMayBeRefilledCanBeSaidWithoutAMark() throws IOException {
        String header =
                "id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K,refillable,retest_due,fill_date,"
                        + "jurisdiction,test_pressure_Pa_gauge\n";
        Path out = folder.resolve("out.csv");
        String stamps = ",2029-01-01,2026-07-14,adr,4200000\n";
        ProgramRun.of(
                "fills",
                input(header + "yes,R-134a,21.6,12.4,,,true" + stamps + "no,R-134a,21.6,12.4,,,false" + stamps
                        + "unknown,R-134a,21.6,12.4,,," + stamps + "x,R-134a,21.6,12.4,,,perhaps" + stamps),
                "--out",
                out);
        List<CsvRow> answers = answers(out);
        assertThat(answers.get(0).raw("allowed_contents_kg")).isNotEmpty();
        assertThat(answers.get(1).raw("note")).contains("notRefillable");
        assertThat(answers.get(2).raw("allowed_contents_kg")).isEmpty();
        assertThat(answers.get(2).raw("note")).contains("supply specification or refillable");
        assertThat(answers.get(3).raw("note")).contains("refillable \"perhaps\" is not known; allowed: true, false");
    }

    @Test
    void rulesAreListedOneALine() {
        ProgramRun run = ProgramRun.of("fills", "--rules");
        assertThat(run.status()).isZero();
        assertThat(run.out().lines()).anyMatch(line -> line.startsWith("liquid-80-warmest: m <= 0.80 rho_l(T_max) V"));
        assertThat(run.out().lines()).allMatch(line -> line.matches("[A-Za-z0-9-]+: .+ \\[.+]"));
    }

    @Test
    void rulesAndRowsTogetherAreRefused() {
        assertThat(ProgramRun.of("fills", "--rules", "in.csv").status()).isEqualTo(2);
        assertThat(ProgramRun.of("fills", "in.csv").err()).contains("--out").hasLineCount(1);
        assertThat(ProgramRun.of("fills").err()).contains("IN.csv").hasLineCount(1);
    }

    private CsvRow answered(String row) throws IOException {
        Path out = folder.resolve("answered.csv");
        ProgramRun.of("fills", input(HEADER + "x," + row + "\n"), "--out", out);
        return answers(out).get(0);
    }

    private Path input(String content) throws IOException {
        return Files.writeString(folder.resolve("in.csv"), content);
    }

    private static List<CsvRow> answers(Path out) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        try (CsvRows answers = CsvRows.of(out, FillAnswers.OUTPUT, List.of())) {
            answers.forEachRemaining(rows::add);
        }
        return rows;
    }
}
