package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExerciseCommandTest {
    @TempDir
    Path folder;

    @Test
    void withoutFilesTheSheetGoesToStandardOutput() {
        ProgramRun run = ProgramRun.of("exercise", "--seed", "4", "--topic", "glide", "--difficulty", "starting");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .startsWith("# Refrigerant exercises, sheet 4 A\n")
                .contains("## 1. Glide of a blend (starting, 8 points)", "local codes and licensed practice come first")
                .doesNotContain("## 2.");
    }

    @Test
    void topicsMayBeListedEitherWay() {
        String page = ProgramRun.of("exercise", "--topic", "purge,flow", "--difficulty", "practised")
                .out();
        assertThat(page).contains("## 1. Purging a hose", "## 2. Which way it flows");
        assertThat(ProgramRun.of("exercise", "--topic", "purge", "flow", "--difficulty", "practised")
                        .out())
                .isEqualTo(page);
        assertThat(ProgramRun.of("exercise", "--topic", "purge", "--topic", "flow", "--difficulty", "practised")
                        .out())
                .isEqualTo(page);
    }

    @Test
    void sheetAndKeyGoToFilesOfTheFormThatTheirNamesAskFor() throws IOException {
        Path sheet = folder.resolve("sheet.html");
        Path key = folder.resolve("key.md");
        ProgramRun run = ProgramRun.of("exercise", "--count", "2", "--sheet", sheet, "--key", key);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("written to " + sheet, "written to " + key);
        assertThat(sheet).content().startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        assertThat(key).content().startsWith("# Key to refrigerant exercises, sheet 1 A\n");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(2);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        --difficulty easy       | difficulty "easy" is not known; use one of starting, practised, experienced, rising
        --topic superheat       | topic "superheat" is not known
        --count 0               | count 0 is outside [1, 100]
        --count 1000            | count 1000 is outside [1, 100]
        --count few             | few
        --seed 1.5              | 1.5
        --units metric          | metric
        --sheet sheet.pdf       | ends in .md or .html
        --key key               | ends in .md or .html
        --kee key.md            | --kee
        --sheet nowhere/a.md    | its folder does not exist
        --sheet a.md --key a.md | cannot go to the same file
        """)
    void aBadOptionIsOneLineAndNothingIsWritten(String options, String what) throws IOException {
        Object[] words = Stream.concat(Stream.of("exercise"), Stream.of(options.split(" ", -1)))
                .map(word -> word.matches("[a-z]+(/[a-z]+)?\\.[a-z]+")
                        ? folder.resolve(word).toString()
                        : word)
                .toArray();
        ProgramRun run = ProgramRun.of(words);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("satline: ").contains(what).hasLineCount(1);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void aKeyThatCannotBeWrittenLeavesNoSheetBehind() throws IOException {
        ProgramRun run = ProgramRun.of(
                "exercise", "--count", "1", "--sheet", folder.resolve("a.md"), "--key", folder.resolve("no/b.md"));
        assertThat(run.status()).isEqualTo(2);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).isEmpty();
        }
    }
}
