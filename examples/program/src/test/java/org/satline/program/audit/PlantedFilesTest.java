package org.satline.program.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.audit.AuditRow;
import org.satline.audit.Auditor;
import org.satline.audit.LikelyCause;
import org.satline.audit.Mistake;
import org.satline.quantity.Length;

/** What the audit finds of mistakes that somebody else planted, and that it finds none where there is none. */
class PlantedFilesTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern TABLE =
            Pattern.compile("(\\| mistakes in a file \\|[^\n]*\n\\|[-|]*\\|\n)(?:\\|[^\n]*\n)*");
    private static final Auditor AUDITOR = Auditor.standard();

    private static List<AuditRow> rows(PlantedFile file, int decimals) {
        List<AuditRow> rows = new ArrayList<>();
        List<String> answers = file.answers(decimals);
        for (int i = 0; i < answers.size(); i++) {
            OptionalDouble asked = OptionalDouble.of(file.asked().get(i));
            rows.add(new AuditRow(
                    "row" + i,
                    file.refrigerant(),
                    file.quantity(),
                    file.byTemperature() ? asked : OptionalDouble.empty(),
                    file.byTemperature() ? OptionalDouble.empty() : asked,
                    answers.get(i),
                    file.unit(),
                    file.altitude() > 0 ? Optional.of(Length.ofMetres(file.altitude())) : Optional.empty(),
                    OptionalDouble.empty()));
        }
        return rows;
    }

    private static List<LikelyCause> causes(PlantedFile file, int decimals) {
        return AUDITOR.audit(rows(file, decimals)).summary().causes();
    }

    private static Set<String> codes(LikelyCause cause) {
        return Stream.concat(Stream.of(cause.mistake()), cause.besides().stream())
                .map(Mistake::code)
                .map(Enum::name)
                .collect(Collectors.toSet());
    }

    /** How many of those in which the mistake shows are found. */
    private record Score(int shown, int found, List<String> missed) {
        double share() {
            return (double) found / shown;
        }

        String words() {
            return found + " of " + shown;
        }
    }

    private static Score score(boolean pairs, int decimals, boolean onlyWhereItShows) {
        int shown = 0;
        int found = 0;
        List<String> missed = new ArrayList<>();
        for (PlantedFile file : PlantedFiles.hundred()) {
            if (file.pair() != pairs || (onlyWhereItShows && !file.exceedsTwice(decimals))) {
                continue;
            }
            shown++;
            List<LikelyCause> causes = causes(file, decimals);
            if (!causes.isEmpty() && codes(causes.get(0)).equals(file.codes())) {
                found++;
            } else {
                missed.add(file.mistake() + " of " + file.refrigerant() + ": "
                        + causes.stream().map(PlantedFilesTest::codes).toList());
            }
        }
        return new Score(shown, found, missed);
    }

    @Test
    void plantedMistakesAreFoundAndTheReadmeSaysHowMany() throws Exception {
        List<String> table = new ArrayList<>();
        for (boolean pairs : new boolean[] {false, true}) {
            Score hundredth = score(pairs, 2, false);
            Score tenth = score(pairs, 1, false);
            Score one = score(pairs, 0, true);
            table.add("| " + (pairs ? "two in the same rows" : "one") + " | " + hundredth.words() + " | "
                    + tenth.words() + " | " + one.words() + " |");
            assertThat(hundredth.share()).as("%s", hundredth.missed).isGreaterThanOrEqualTo(pairs ? 0.8 : 0.95);
            if (!pairs) {
                assertThat(tenth.share()).as("%s", tenth.missed).isGreaterThanOrEqualTo(0.95);
                assertThat(one.share()).as("%s", one.missed).isGreaterThanOrEqualTo(0.7);
            }
        }
        String readme = Files.readString(README, StandardCharsets.UTF_8);
        if (System.getProperty("satline.readme.write") != null) {
            readme = TABLE.matcher(readme).replaceFirst("$1" + String.join("\n", table) + "\n");
            Files.writeString(README, readme);
        }
        assertThat(readme).contains(String.join("\n", table));
    }

    /** All 500 with {@code -Dsatline.planted.all}; the usual run takes every tenth. */
    @Test
    void nothingIsFoundInFiveHundredFilesWithoutAMistake() {
        List<String> named = new ArrayList<>();
        int step = System.getProperty("satline.planted.all") != null ? 1 : 10;
        for (int number = 0; number < 500; number += step) {
            PlantedFile file = PlantedFiles.innocent(number);
            int decimals = number / 3 % 3;
            for (LikelyCause cause : causes(file, decimals)) {
                named.add(number + " " + file.mistake() + " " + file.quantity() + " of " + file.refrigerant() + ", "
                        + decimals + " decimals: " + codes(cause) + " " + cause.coincidence());
            }
        }
        assertThat(named).isEmpty();
    }
}
