package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The runnable jar runs, and lists every library in it with its licence. */
class RunnableJarIT {
    private static final Path JAR = Path.of("target/satline.jar");
    private static final Pattern CONTAINED = Pattern.compile("META-INF/maven/([^/]+)/([^/]+)/pom\\.properties");

    private static final Pattern COPYLEFT = Pattern.compile(
            "\\b(A?GPL|LGPL|EUPL|MPL)\\b|General Public License|Mozilla Public", Pattern.CASE_INSENSITIVE);

    @Test
    void everyLibraryInItIsListedWithItsLicence() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> libraries = jar.stream()
                    .map(entry -> CONTAINED.matcher(entry.getName()))
                    .filter(Matcher::matches)
                    .filter(match -> !match.group(1).equals("org.satline"))
                    .map(match -> "(" + match.group(1) + ":" + match.group(2) + ":")
                    .toList();
            assertThat(libraries).isNotEmpty();
            List<String> listed = text(jar, "META-INF/THIRD-PARTY.txt")
                    .lines()
                    .map(String::strip)
                    .toList();
            for (String library : libraries) {
                assertThat(listed).anyMatch(line -> line.startsWith("(") && line.contains(library));
            }
            assertThat(text(jar, "META-INF/LICENSE")).contains("Apache License");
        }
    }

    /** Copyleft would bind whoever ships the jar on. */
    @Test
    void noPartIsUnderACopyleftLicence() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(text(jar, "META-INF/THIRD-PARTY.txt").lines())
                    .noneMatch(line -> COPYLEFT.matcher(line).find());
            assertThat(jar.stream().map(ZipEntry::getName))
                    .noneMatch(name -> COPYLEFT.matcher(name).find());
        }
    }

    @Test
    void itRuns() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        JAR.toString(),
                        "--version")
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isZero();
        assertThat(output).startsWith("satline ").doesNotContain("not run from its jar");
    }

    private static String text(JarFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        assertThat(entry).as(name).isNotNull();
        return new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    }
}
