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
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.audit.Auditor;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake;
import org.satline.quantity.Length;

/** What the audit finds of mistakes that somebody else planted, and that it finds none where there is none. */
class PlantedFilesTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern TABLE =
            Pattern.compile("(\\| mistakes in a file \\|[^\n]*\n\\|[-|]*\\|\n)(?:\\|[^\n]*\n)*");
    /** Which hundred files and which innocent ones; others with {@code -Dsatline.planted.seed=1}. */
    private static final int SEED = Integer.getInteger("satline.planted.seed", 0);

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

    static List<LikelyCause> causes(PlantedFile file, int decimals) {
        return AUDITOR.audit(rows(file, decimals)).summary().causes();
    }

    private static Set<String> codes(LikelyCause cause) {
        return Stream.concat(Stream.of(cause.mistake()), cause.besides().stream())
                .map(Mistake::code)
                .map(Enum::name)
                .collect(Collectors.toSet());
    }

    /** How many of those in which the mistake shows are found. */
    record Score(int shown, int found, List<String> missed) {
        double share() {
            return (double) found / shown;
        }

        String words() {
            return found + " of " + shown;
        }
    }

    static Score score(List<PlantedFile> files, boolean pairs, int decimals, boolean onlyWhereItShows) {
        List<PlantedFile> shown = files.stream()
                .filter(file -> file.pair() == pairs && (!onlyWhereItShows || file.exceedsTwice(decimals)))
                .toList();
        List<String> missed = shown.stream()
                .parallel()
                .flatMap(file -> missed(file, decimals).stream())
                .toList();
        return new Score(shown.size(), shown.size() - missed.size(), missed);
    }

    private static Optional<String> missed(PlantedFile file, int decimals) {
        List<LikelyCause> causes = causes(file, decimals);
        return !causes.isEmpty() && codes(causes.get(0)).equals(file.codes())
                ? Optional.empty()
                : Optional.of(file.mistake() + " of " + file.refrigerant() + ", " + decimals + " decimals: "
                        + causes.stream().map(PlantedFilesTest::codes).toList());
    }

    @Test
    void plantedMistakesAreFoundAndTheReadmeSaysHowMany() throws Exception {
        List<String> table = new ArrayList<>();
        List<PlantedFile> files = PlantedFiles.hundred(SEED);
        for (boolean pairs : new boolean[] {false, true}) {
            Score hundredth = score(files, pairs, 2, false);
            Score tenth = score(files, pairs, 1, false);
            Score one = score(files, pairs, 0, true);
            table.add("| " + (pairs ? "two in the same rows" : "one") + " | " + hundredth.words() + " | "
                    + tenth.words() + " | " + one.words() + " |");
            assertThat(hundredth.share()).as("%s", hundredth.missed).isGreaterThanOrEqualTo(pairs ? 0.8 : 0.95);
            if (!pairs) {
                assertThat(tenth.share()).as("%s", tenth.missed).isGreaterThanOrEqualTo(0.95);
                assertThat(one.share()).as("%s", one.missed).isGreaterThanOrEqualTo(0.7);
            }
        }
        if (SEED > 0) {
            return; // the table holds the first hundred
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
        int step = System.getProperty("satline.planted.all") != null ? 1 : 10;
        assertThat(IntStream.range(0, 500)
                        .filter(number -> number % step == 0)
                        .parallel()
                        .boxed()
                        .flatMap(number -> named(number, SEED)))
                .isEmpty();
    }

    static Stream<String> named(int number, int seed) {
        PlantedFile file = PlantedFiles.innocent(number, seed);
        int decimals = number / 3 % 3;
        return causes(file, decimals).stream()
                .map(cause -> number + " " + file.mistake() + " " + file.quantity() + " of " + file.refrigerant() + ", "
                        + decimals + " decimals: " + codes(cause) + " " + cause.coincidence());
    }
}
