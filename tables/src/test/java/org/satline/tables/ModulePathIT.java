package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Compiles and runs the programs of {@code src/it} against the packaged jars, once on the class path and once on the module path. The
 * profile {@code consumer} does the same as a project of its own, against installed artifacts.
 */
class ModulePathIT {
    private static final Path PROJECTS = Path.of("src/it");

    @TempDir
    Path folder;

    @Test
    void onTheClassPath() throws Exception {
        run("javac", "-cp", jars(), "-d", folder.toString(), source("consumer-class-path", "consumer/Main.java"));
        assertThat(run("java", "-cp", folder + File.pathSeparator + jars(), "consumer.Main"))
                .contains("core in unnamed module");
    }

    @Test
    void onTheModulePath() throws Exception {
        run(
                "javac",
                "--module-path",
                jars(),
                "-d",
                folder.toString(),
                source("consumer-module-path", "module-info.java"),
                source("consumer-module-path", "consumer/Main.java"));
        assertThat(run(
                        "java",
                        "--module-path",
                        folder + File.pathSeparator + jars(),
                        "--module",
                        "consumer/consumer.Main"))
                .contains("consumer in module consumer, core in module org.satline.core");
    }

    @Test
    void withoutJackson() throws Exception {
        String jars = jars("commons-math3|jspecify");
        run("javac", "-cp", jars, "-d", folder.toString(), source("consumer-without-jackson", "consumer/Main.java"));
        assertThat(run("java", "-cp", folder + File.pathSeparator + jars, "consumer.Main"))
                .contains("consumer without Jackson");
    }

    @Test
    void bothProjectsRunTheSameProgram() throws IOException {
        assertThat(Path.of(source("consumer-module-path", "consumer/Main.java")))
                .hasSameTextualContentAs(Path.of(source("consumer-class-path", "consumer/Main.java")));
    }

    /** What Android lacks, such as java.desktop, stays out; so does everything else that is not needed. */
    @Test
    void bothJarsNeedTheBaseOfJavaAlone() throws Exception {
        for (Path target : List.of(Path.of("target"), Path.of("../core/target"))) {
            for (Path jar : packaged(target).toList()) {
                assertThat(run("jdeps", "-summary", "--ignore-missing-deps", jar.toString())
                                .lines()
                                .map(line -> line.replaceFirst(".* -> ", ""))
                                .filter(name -> !name.equals("not found")))
                        .containsExactly("java.base");
            }
        }
    }

    private static String source(String project, String file) {
        return PROJECTS.resolve(project).resolve("src/main/java").resolve(file).toString();
    }

    private static String jars() throws IOException {
        return jars("jackson-(annotations|core|databind)|commons-math3|jspecify");
    }

    /** Our jars as packaged, with the libraries of these names. */
    private static String jars(String names) throws IOException {
        Stream<Path> own = Stream.concat(packaged(Path.of("target")), packaged(Path.of("../core/target")));
        Stream<Path> libraries = Stream.of(
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                                .split(File.pathSeparator, -1))
                .filter(path -> path.matches(".*(" + names + ")-[^/\\\\]*\\.jar"))
                .map(Path::of);
        return Stream.concat(own, libraries).map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    private static Stream<Path> packaged(Path target) throws IOException {
        try (Stream<Path> files = Files.list(target)) {
            List<Path> jars = files.filter(file ->
                            file.getFileName().toString().matches("satline-(core|tables)-[^-]+(-SNAPSHOT)?\\.jar"))
                    .toList();
            assertThat(jars).as("packaged jar in " + target).hasSize(1);
            return jars.stream();
        }
    }

    private static String run(String tool, String... arguments) throws Exception {
        Process process = new ProcessBuilder(Stream.concat(
                                Stream.of(Path.of(System.getProperty("java.home"), "bin", tool)
                                        .toString()),
                                Stream.of(arguments))
                        .toList())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(tool + " said: " + output).isZero();
        return output;
    }
}
