package org.satline.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rule asked for by name does not silence what the law says of the cylinder, and stamps left out are named. */
class FillsSafetyTest {
    private static final String HEADER = "id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K,"
            + "service_pressure_Pa_gauge,test_pressure_Pa_gauge,specification,flammable_mark,retest_due,fill_date\n";

    @TempDir
    Path folder;

    private String answer(String cells) throws IOException {
        Path in = Files.writeString(folder.resolve("in.csv"), HEADER + "a," + cells + "\n");
        Path out = folder.resolve("out.csv");
        ProgramRun.of("fills", in, "--out", out);
        return Files.readAllLines(out).get(1);
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
    void stampsThatAreLeftOutAreNamed() throws IOException {
        assertThat(answer("R-290,21.6,12.4,,,1654739,,DOT-4BA240,,,"))
                .contains("NOT TESTED: the mark for flammable gas; R-290 (A3)")
                .contains("NOT TESTED: the retest date");
        assertThat(answer("R-134a,21.6,12.4,,,1654739,,,,,"))
                .contains("NOT TESTED: whether the cylinder may be refilled");
        assertThat(answer("R-32,21.6,12.4,,,2757903,,DOT-4BW400,true,2029-01-01,2026-07-14"))
                .doesNotContain("NOT TESTED");
    }
}
