package org.satline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The form of every Java file of all modules, as the house rules of DEVELOPERS.md have it; our own choice, no source. */
class SourceFormTest {
    private static final int COMMENT_COLUMNS = 140;
    private static final int LINES_OF_A_FILE = 400;
    private static final Pattern COMMENT_OR_TEXT = Pattern.compile(
            "(?s)//[^\\n]*|/\\*.*?\\*/|\"\"\".*?\"\"\"" + "|\"(?:\\\\.|[^\"\\\\])*+\"|'(?:\\\\.|[^'\\\\])*+'");
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

    private static final int LINES_OF_A_PACKAGE = 3000;

    /** An equation of state and the value types are each one subject, however long. */
    private static final Set<String> ONE_SUBJECT = Set.of("equilibrium", "quantity");

    private static List<Path> sources;

    @BeforeAll
    static void find() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT)) {
            sources = files.filter(each -> each.toString().endsWith(".java"))
                    .filter(each -> ROOT.relativize(each).toString().contains("src"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void everyModuleIsSeen() {
        assertThat(sources.stream()
                        .map(each -> ROOT.relativize(each).toString().replace('\\', '/'))
                        .map(each -> each.substring(0, each.indexOf("/src/")))
                        .distinct())
                .contains("core", "tables", "benchmarks", "examples/small", "examples/program");
    }

    @Test
    void commentsKeepTo140Columns() throws IOException {
        List<String> wide = new ArrayList<>();
        for (Path file : sources) {
            wide.addAll(wideComments(file, Files.readString(file)));
        }
        assertThat(wide).isEmpty();
    }

    @Test
    void filesKeepTo400Lines() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : sources) {
            long lines = Files.readString(file).lines().count();
            if (lines > LINES_OF_A_FILE) {
                tooLong.add(file + ": " + lines + " lines");
            }
        }
        assertThat(tooLong).isEmpty();
    }

    @Test
    void packagesOfCoreKeepTo3000Lines() throws IOException {
        Map<Path, Long> lines = new TreeMap<>();
        for (Path file : sources) {
            if (file.startsWith(ROOT.resolve("core/src/main"))) {
                lines.merge(file.getParent(), Files.readString(file).lines().count(), Long::sum);
            }
        }
        assertThat(lines).hasSizeGreaterThan(20);
        lines.keySet().removeIf(each -> ONE_SUBJECT.contains(each.getFileName().toString()));
        assertThat(lines)
                .allSatisfy((room, count) ->
                        assertThat(count).as(room.getFileName().toString()).isLessThanOrEqualTo(LINES_OF_A_PACKAGE));
    }

    @Test
    void theScanTellsCommentsFromTexts() {
        String wide = "x".repeat(COMMENT_COLUMNS);
        String text = "\"\"\"";
        assertThat(wideComments(
                        Path.of("A.java"), "/** " + wide + " */\nint a; // " + wide + "\n/*\n * " + wide + "\n */\n"))
                .containsExactly("A.java:1", "A.java:2", "A.java:4");
        assertThat(wideComments(
                        Path.of("A.java"),
                        "a = \"http://" + wide + "\";\nb = " + text + "\n  // " + wide + "\n  * " + wide + "\n" + text
                                + ";\n"))
                .isEmpty();
    }

    /** Lines that a comment makes too wide; a string or text block may be as wide as it is. */
    private static List<String> wideComments(Path file, String source) {
        List<String> found = new ArrayList<>();
        Matcher token = COMMENT_OR_TEXT.matcher(source);
        while (token.find()) {
            int end = token.start();
            while (token.group().startsWith("/") && end < token.end()) {
                int start = source.lastIndexOf('\n', end - 1) + 1;
                end = Math.min(token.end(), (source + "\n").indexOf('\n', end));
                if (end - start > COMMENT_COLUMNS) {
                    found.add(file + ":"
                            + (source.substring(0, start)
                                            .chars()
                                            .filter(c -> c == '\n')
                                            .count()
                                    + 1));
                }
                end++;
            }
        }
        return found;
    }
}
