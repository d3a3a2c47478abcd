package org.satline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No line of code or comment is longer than a reader sees at once, beside a second file. */
class LineLengthTest {
    private static final int LONGEST = 140;

    @ParameterizedTest
    @ValueSource(strings = {"core", "tables", "examples", "benchmarks"})
    void noLineIsLonger(String module) throws IOException {
        Path root = Path.of("..").resolve(module);
        List<String> found = new ArrayList<>();
        List<Path> sources = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !root.relativize(file).toString().contains("target"))
                    .forEach(sources::add);
        }
        assertThat(sources).isNotEmpty();
        for (Path source : sources) {
            List<String> lines = Files.readAllLines(source);
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).length() > LONGEST) {
                    found.add(source + ":" + (i + 1) + " has " + lines.get(i).length());
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
