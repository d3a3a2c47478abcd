package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.filling.FillAssessor;
import org.satline.program.fills.FillAnswers;

/** A rule asked for by name does not silence what the law says of the cylinder, and stamps left out are named. */
class FillsSafetyTest {
    private static final String HEADER = "id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K,"
            + "service_pressure_Pa_gauge,test_pressure_Pa_gauge,specification,flammable_mark,retest_due,fill_date,jurisdiction\n";

    private static final int ALLOWED = FillAnswers.OUTPUT.indexOf("allowed_contents_kg");

    @TempDir
    Path folder;

    private String allowed(String cells) throws IOException {
        return cell(cells, ALLOWED);
    }

    private String cell(String cells, int column) throws IOException {
        return cells(List.of(cells)).get(0)[column];
    }

    /** The cells of each answer, quoted ones left out. */
    private List<String[]> cells(List<String> rows) throws IOException {
        List<String[]> answers = new ArrayList<>();
        for (String answer : answers(rows)) {
            String[] cells = answer.replaceAll("\"(?:[^\"]|\"\")*\"", "quoted").split(",", -1);
            assertThat(cells).hasSize(FillAnswers.OUTPUT.size());
            answers.add(cells);
        }
        return answers;
    }

    /** With an empty cell for the jurisdiction where a row of full length names none. */
    private static String padded(String cells) {
        return cells.chars().filter(c -> c == ',').count() == 10 ? cells + "," : cells;
    }

    private String answer(String cells) throws IOException {
        return answers(List.of(cells)).get(0);
    }

    private List<String> answers(List<String> rows) throws IOException {
        String input = rows.stream().map(row -> "a," + padded(row) + "\n").collect(Collectors.joining());
        Path in = Files.writeString(folder.resolve("in.csv"), HEADER + input);
        Path out = folder.resolve("out.csv");
        ProgramRun.of("fills", in, "--out", out);
        List<String> lines = Files.readAllLines(out);
        return lines.subList(1, lines.size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        R-744,21.6,12.4,water-80,,2757903,,DOT-4BW400,,,          | water-80
        R-170,21.6,12.4,water-80,,2757903,,DOT-4BW400,true,,      | water-80
        R-410A,21.6,12.4,liquid-80-warmest,,1654739,,DOT-4BA240,,,| 173.301a
        """)
    void aNamedRuleGivesNoLimitWhereTheCylinderIsTooWeakOrTheRuleSaysNothing(String cells, String says)
            throws IOException {
        String answer = answer(cells);
        String[] parts = answer.split(",", -1);
        assertThat(parts[3]).isEmpty();
        assertThat(parts[4]).isEmpty();
        assertThat(answer).contains(says);
    }

    @Test
    void aNamedRuleThatAllowsMoreThanItsSetSaysSo() throws IOException {
        // 80 % at 77 degF lets in more than 80 % at 130 degF, since warm liquid is less dense
        assertThat(answer("R-134a,21.6,12.4,liquid-80-77F,,2757903,,DOT-4BW400,,,"))
                .containsPattern("ONLY [0-9.]+ kg ARE ALLOWED by liquid-80-warmest of the set us");
        assertThat(answer("R-134a,21.6,12.4,liquid-80-warmest,,2757903,,DOT-4BW400,,,"))
                .doesNotContain("ONLY");
    }

    @Test
    void theLastColumnIsTheSmallestOfWhatTheRuleAndItsSetAllow() throws IOException {
        // 80 % of the dense liquid at 0 degC; the set takes 80 % at 77 degF, where the liquid is lighter
        assertThat(Double.parseDouble(cell(
                        "R-134a,21.6,11.8,liquid-80-warmest,273.15,2758000,,DOT-4BA400,,2029-01-01,2026-07-14", 3)))
                .isCloseTo(22.396, within(0.001));
        assertThat(Double.parseDouble(allowed(
                        "R-134a,21.6,11.8,liquid-80-warmest,273.15,2758000,,DOT-4BA400,,2029-01-01,2026-07-14")))
                .isCloseTo(20.8729, within(0.0001));
        // R-134a at 77 degF against 130 degF; a rule that is the strictest; no rule named
        String warm = allowed("R-134a,21.6,12.4,,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14");
        assertThat(warm).isEqualTo(cell("R-134a,21.6,12.4,,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14", 3));
        assertThat(allowed("R-134a,21.6,12.4,liquid-80-77F,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14"))
                .isEqualTo(warm);
        assertThat(allowed("R-134a,21.6,12.4,liquid-80-warmest,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14"))
                .isEqualTo(warm);
        // a rule outside the set, stricter than it: its own limit
        String stricter = "R-134a,21.6,12.4,liquid-80-warmest,,2757903,6000000,DOT-4BW400,,2029-01-01,2026-07-14,adr";
        assertThat(allowed(stricter)).isEqualTo(cell(stricter, 3));
        assertThat(Double.parseDouble(allowed(stricter)))
                .isLessThan(Double.parseDouble(
                        allowed("R-134a,21.6,12.4,,,2757903,6000000,DOT-4BW400,,2029-01-01,2026-07-14,adr")));
        // a pressure rule gives no mass of its own
        assertThat(allowed("R-134a,21.6,12.4,service-pressure-131F,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14"))
                .isEqualTo(warm);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R-410A,21.6,12.4,service-pressure-131F,,1654739,,DOT-4BA240,,,",
                "R-410A,21.6,12.4,liquid-80-warmest,,1654739,,DOT-4BA240,,,",
                "R-410A,21.6,12.4,,,1654739,,DOT-4BA240,,,",
                "R-134a,21.6,12.4,,,,,DOT-39,,,",
                "R-134a,21.6,12.4,no-such-rule,,,,,,,",
                "R-134a,21.6"
            })
    void theLastColumnIsEmptyWhereNothingMayBeFilledIn(String cells) throws IOException {
        assertThat(allowed(cells)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-22", "R-32", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-744", "R-170"})
    void noRuleByNameAllowsMoreThanItsSet(String refrigerant) throws IOException {
        List<String> rules = new ArrayList<>(List.of("")); // the first row asks for what governs
        FillAssessor.standard().rules().all().forEach(rule -> rules.add(rule.name()));
        for (String set : List.of("us", "adr")) {
            List<String[]> answers = cells(rules.stream()
                    .map(rule -> refrigerant + ",21.6,12.4," + rule
                            + ",,2757903,6000000,DOT-4BW400,true,2029-01-01,2026-07-14," + set)
                    .toList());
            String governing = answers.get(0)[ALLOWED];
            for (String[] each : answers) {
                String what = set + ": " + String.join(",", each);
                if (!each[ALLOWED].isEmpty()) {
                    double allowed = Double.parseDouble(each[ALLOWED]);
                    assertThat(governing).as(what).isNotEmpty();
                    assertThat(allowed).as(what).isLessThanOrEqualTo(Double.parseDouble(governing));
                    assertThat(each[3].isEmpty() || allowed <= Double.parseDouble(each[3]))
                            .as(what)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void aTestThatCouldNotBeMadeLeavesTheLastColumnEmpty() throws IOException {
        List<String> rows = List.of(
                "R-410A,21.6,12.4,,,,,,,,",
                "R-410A,21.6,12.4,liquid-80-77F,,,,,,,",
                "R-290,21.6,12.4,,,,,,,,",
                "R-290,21.6,12.4,,,1654739,,DOT-4BA240,,2029-01-01,2026-07-14",
                "R-290,21.6,12.4,,,1654739,,DOT-4BA240,true,2029-01-01,",
                "R-290,21.6,12.4,,,1654739,,DOT-4BA240,true,,2026-07-14",
                "R-290,21.6,12.4,,,1654739,,,true,2029-01-01,2026-07-14",
                "R-32,21.6,12.4,,,,,4BA,true,2029-01-01,2026-07-14",
                "R-134a,21.6,12.4,,,2757903,,DOT-4BW400,,2029-01-01,2026-07-14,adr");
        for (String[] each : cells(rows)) {
            assertThat(each[ALLOWED]).as(String.join(",", each)).isEmpty();
            // what the rule says of the data given stays in its own column
            assertThat(each[3]).as(String.join(",", each)).isNotEmpty();
        }
        String open = "NO allowed_contents_kg before every test is made; supply ";
        List<String> notes = answers(rows);
        assertThat(notes.get(0))
                .contains(open + "specification or refillable, retest_due, fill_date, service_pressure_Pa_gauge")
                .containsPattern("ruleNotTested: [^;]*service-pressure-131F");
        assertThat(notes.get(2))
                .contains(open + "flammable_mark, specification or refillable, retest_due, fill_date, service_");
        assertThat(notes.get(3)).contains(open + "flammable_mark\"");
        assertThat(notes.get(4)).contains(open + "fill_date\"");
        assertThat(notes.get(5)).contains(open + "retest_due\"");
        assertThat(notes.get(6)).contains(open + "specification or refillable\"");
        assertThat(notes.get(7)).contains(open + "service_pressure_Pa_gauge\"");
        assertThat(notes.get(8)).contains(open + "test_pressure_Pa_gauge\"");
        for (String[] each : cells(List.of(
                "R-290,21.6,12.4,,,1654739,,DOT-4BA240,true,2029-01-01,2026-07-14",
                "R-134a,21.6,12.4,,,,,4BA400,,2029-01-01,2026-07-14",
                "R-744,21.6,24.4,,,12410000,,3AA1800,,2029-01-01,2026-07-14",
                "R-744,21.6,24.4,,,,25000000,3AA,,2029-01-01,2026-07-14,adr",
                "R-134a,21.6,12.4,,,,6000000,4BW400,,2029-01-01,2026-07-14,adr"))) {
            assertThat(each[ALLOWED]).as(String.join(",", each)).isNotEmpty();
        }
    }

    @Test
    void stampsThatAreLeftOutAreNamed() throws IOException {
        assertThat(answer("R-290,21.6,12.4,,,1654739,,DOT-4BA240,,,"))
                .containsPattern("stampNotTested: [^;]*mark for flammable gas")
                .containsPattern("stampNotTested: [^;]*retest date");
        assertThat(answer("R-134a,21.6,12.4,,,1654739,,,,,"))
                .containsPattern("stampNotTested: [^;]*whether it may be refilled");
        assertThat(answer("R-32,21.6,12.4,,,2757903,,DOT-4BW400,true,2029-01-01,2026-07-14"))
                .doesNotContain("otTested");
    }
}
