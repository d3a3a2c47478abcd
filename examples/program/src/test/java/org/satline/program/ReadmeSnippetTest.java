package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compiles and runs each Java snippet of the README that is followed by its output, and runs its commands; {@link PrintedRunsTest} compares
 * what they print.
 */
class ReadmeSnippetTest {
    private static final Pattern SNIPPET = Pattern.compile("```java\\n(.*?)```\\s*```text\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND =
            Pattern.compile("java -jar examples/program/target/satline\\.jar ([^\\n`]+)");
    private static final Path ROOT = Path.of("..", "..");

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> eachSnippetPrintsWhatTheReadmeSays() throws IOException {
        List<MatchResult> snippets = SNIPPET.matcher(readme()).results().toList();
        assertThat(snippets).isNotEmpty();
        return snippets.stream()
                .map(snippet -> DynamicTest.dynamicTest(
                        snippet.group(1).lines().findFirst().orElse(""),
                        () -> assertThat(printed(snippet.group(1))).isEqualTo(snippet.group(2))));
    }

    @Test
    void eachCommandRuns() throws IOException {
        List<String> commands =
                COMMAND.matcher(readme()).results().map(each -> each.group(1)).toList();
        assertThat(commands).isNotEmpty();
        for (String command : commands) {
            Object[] words = Stream.of(command.split(" ", -1))
                    .map(word -> word.startsWith("examples/") ? ROOT.resolve(word) : written(word))
                    .toArray();
            assertThat(ProgramRun.of(words).status()).as(command).isZero();
        }
    }

    /** What a command writes goes to a folder of this test. */
    private Object written(String word) {
        return word.matches("[\\w-]+\\.(csv|html|svg|json|md|txt)") ? folder.resolve(word) : word;
    }

    private String printed(String snippet) throws Exception {
        String imports =
                snippet.lines().filter(line -> line.startsWith("import ")).collect(Collectors.joining("\n"));
        String body =
                snippet.lines().filter(line -> !line.startsWith("import ")).collect(Collectors.joining("\n"));
        Path source = Files.writeString(
                folder.resolve("Snippet.java"),
                imports + "\npublic class Snippet { public static void main(String[] args) {\n" + body + "\n} }\n");
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        ByteArrayOutputStream complaints = new ByteArrayOutputStream();
        int result =
                compiler.run(null, null, complaints, "-cp", classPath(), "-d", folder.toString(), source.toString());
        assertThat(result).as(complaints.toString(StandardCharsets.UTF_8)).isZero();
        PrintStream console = System.out;
        ByteArrayOutputStream output = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            System.setOut(new PrintStream(output, true, StandardCharsets.UTF_8));
            loader.loadClass("Snippet").getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(console);
        }
        return output.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private static String readme() throws IOException {
        return Files.readString(ROOT.resolve("README.md"));
    }
}
