package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.refrigerant.Catalogue;

/**
 * Every sample in the Javadoc of both libraries compiles as it stands, with the imports that an editor adds and a few things that it takes
 * as given.
 */
class JavadocSamplesTest {
    private static final List<Path> SOURCES =
            List.of(Path.of("..", "core", "src", "main", "java"), Path.of("src", "main", "java"));
    private static final Pattern SAMPLE = Pattern.compile("<pre>\\{@code\\n(.*?)\\n\\s*\\* \\}</pre>", Pattern.DOTALL);
    private static final String GIVEN =
            "Refrigerant refrigerant; SaturationCurve curve; double[] pressuresPa; double[] temperaturesK; double sum;"
                    + " Judgement judgement; Map<String, byte[]> files;";

    @TempDir
    private Path classes = Path.of("");

    private record Sample(String name, String code) {}

    private static List<Sample> samples() throws IOException {
        List<Sample> samples = new ArrayList<>();
        for (Path file : files(path -> path.toString().endsWith(".java"))) {
            Matcher found = SAMPLE.matcher(Files.readString(file));
            while (found.find()) {
                String code = found.group(1)
                        .lines()
                        .map(line -> line.replaceFirst("^\\s*\\* ?", ""))
                        .collect(Collectors.joining("\n"));
                if (code.contains(";")) { // a formula is none
                    samples.add(new Sample(file.toString(), code));
                }
            }
        }
        return samples;
    }

    private static List<Path> files(Predicate<Path> wanted) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path sources : SOURCES) {
            try (Stream<Path> walk = Files.walk(sources)) {
                walk.filter(wanted).sorted().forEach(files::add);
            }
        }
        return files;
    }

    private static String imports() throws IOException {
        String packages = files(path -> path.endsWith("package-info.java")).stream()
                .map(path -> path.toString().replace('\\', '/').replaceFirst(".*/java/", ""))
                .map(name -> name.replace("/package-info.java", ""))
                .filter(name -> name.contains("/"))
                .map(name -> "import " + name.replace('/', '.') + ".*;\n")
                .collect(Collectors.joining());
        return "import java.time.*;\nimport java.util.*;\n" + packages;
    }

    @Test
    void everySampleCompiles() throws IOException {
        List<Sample> samples = samples();
        assertThat(samples).hasSizeGreaterThanOrEqualTo(5);
        List<JavaFileObject> sources = new ArrayList<>();
        for (int i = 0; i < samples.size(); i++) {
            sources.add(source(
                    "Sample" + i,
                    imports() + "class Sample" + i + " {\n    " + GIVEN + "\n    void run() throws Exception {\n"
                            + samples.get(i).code() + "\n    }\n}\n"));
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> said = new DiagnosticCollector<>();
        String classPath = Stream.of(location(Catalogue.class), location(GeneratedTable.class))
                .collect(Collectors.joining(
                        File.pathSeparator, "", File.pathSeparator + System.getProperty("java.class.path")));
        compiler.getTask(
                        null,
                        null,
                        said,
                        List.of("-proc:none", "-classpath", classPath, "-d", classes.toString()),
                        null,
                        sources)
                .call();
        assertThat(said.getDiagnostics().stream()
                        .filter(each -> each.getKind() == Diagnostic.Kind.ERROR)
                        .map(each -> samples.get(number(each)).name() + ": " + each.getMessage(Locale.ROOT)))
                .isEmpty();
    }

    private static String location(Class<?> type) {
        return Path.of(URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }

    private static int number(Diagnostic<? extends JavaFileObject> each) {
        return Integer.parseInt(each.getSource().getName().replaceAll("\\D", ""));
    }

    private static JavaFileObject source(String name, String text) {
        return new SimpleJavaFileObject(URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
    }
}
