package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs each command that a console block of a README shows and compares what it prints with what stands there. A last line {@code ...}
 * stands for the rest. After an output has changed,
 * {@code mvn -q -pl examples/program -am test -Dtest=PrintedRunsTest -Dsurefire.failIfNoSpecifiedTests=false -Dsatline.readme.write} prints
 * all of them anew, as many lines as before; {@code ...12} in place of an output asks for its first twelve lines.
 */
class PrintedRunsTest {
    private static final Path ROOT = Path.of("..", "..");
    private static final List<Path> READMES = List.of(ROOT.resolve("README.md"), Path.of("README.md"));
    private static final Pattern BLOCK = Pattern.compile("(?<=```console\\n)(.*?)(?=```)", Pattern.DOTALL);
    private static final String PROGRAM = "java -jar examples/program/target/satline.jar ";
    private static final Pattern LAST_LINES = Pattern.compile(" \\| tail -(\\d+)$");
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d+\\.\\d{8,}(e-?\\d+)?");
    private static final String REST = "...";

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> eachRunPrintsWhatTheReadmeSays() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path readme : READMES) {
            String text = Files.readString(readme);
            if (System.getProperty("satline.readme.write") != null) {
                text = BLOCK.matcher(text).replaceAll(block -> Matcher.quoteReplacement(runAnew(block.group())));
                Files.writeString(readme, text);
            }
            for (Matcher block = BLOCK.matcher(text); block.find(); ) {
                String printed = block.group();
                tests.add(DynamicTest.dynamicTest(
                        printed.lines().findFirst().orElse(""),
                        () -> assertThat(rounded(runAnew(printed))).isEqualTo(rounded(printed))));
            }
        }
        assertThat(tests).hasSizeGreaterThan(5);
        return tests.stream();
    }

    /** Numbers of many digits to eight of them: the last ones may differ between machines. */
    private static String rounded(String text) {
        return LONG_NUMBER
                .matcher(text)
                .replaceAll(number ->
                        new BigDecimal(number.group()).round(new MathContext(8)).toString());
    }

    /** The block with its commands and what they print now, cut where the block was cut. */
    private String runAnew(String block) {
        StringBuilder anew = new StringBuilder();
        List<String> lines = block.lines().toList();
        for (int i = 0; i < lines.size(); ) {
            String command = lines.get(i);
            assertThat(command).startsWith("$ ");
            int end = i + 1;
            while (end < lines.size() && !lines.get(end).startsWith("$ ")) {
                end++;
            }
            anew.append(command).append('\n');
            cut(output(command.substring(2)), lines.subList(i + 1, end))
                    .forEach(line -> anew.append(line).append('\n'));
            i = end;
        }
        return anew.toString();
    }

    private static List<String> cut(List<String> output, List<String> before) {
        String last = before.isEmpty() ? "" : before.get(before.size() - 1);
        if (!last.startsWith(REST)) {
            return output;
        }
        int wanted = last.equals(REST) ? before.size() - 1 : Integer.parseInt(last.substring(REST.length()));
        if (wanted >= output.size()) {
            return output;
        }
        return Stream.concat(output.stream().limit(wanted), Stream.of(REST)).toList();
    }

    private List<String> output(String command) {
        if (command.startsWith("cat ")) {
            try {
                return Files.readAllLines(folder.resolve(command.substring("cat ".length())));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        Matcher tail = LAST_LINES.matcher(command);
        if (tail.find()) {
            List<String> all = output(command.substring(0, tail.start()));
            return all.subList(Math.max(0, all.size() - Integer.parseInt(tail.group(1))), all.size());
        }
        assertThat(command).startsWith(PROGRAM);
        Object[] words = Stream.of(command.substring(PROGRAM.length()).split(" ", -1))
                .map(this::resolved)
                .toArray();
        ProgramRun run = ProgramRun.of(words);
        return Stream.concat(run.err().lines(), run.out().lines())
                .map(line -> line.replace(folder + File.separator, "").replace("../../examples", "examples"))
                .toList();
    }

    /** Samples lie below the root; what is written goes to a folder of this test. */
    private Object resolved(String word) {
        if (word.startsWith("examples/")) {
            return ROOT.resolve(word);
        }
        return word.matches("[\\w-]+\\.(csv|html|svg|json|md|txt)") ? folder.resolve(word) : word;
    }
}
