package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The runnable jar runs, and lists every library in it with its licence. */
class RunnableJarIT {
    private static final Path JAR = Path.of("target/satline.jar");
    private static final Pattern LICENCE = Pattern.compile("^\\s*\\(([^)]+)\\) .*\\(\\S+:\\S+:\\S+ - ");
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
            Set<String> pinned = LibrariesTest.pinned().keySet();
            assertThat(libraries).allSatisfy(library -> {
                String artifact = library.split(":", -1)[1];
                assertThat(pinned).anyMatch(name -> name.matches(Pattern.quote(artifact) + "-\\d.*\\.jar"));
            });
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

    /** The text of each licence that the list names; the notice of each part that its licence wants kept. */
    @Test
    void noTextOfALicenceIsMissing() throws IOException {
        Map<String, List<String>> texts = Map.of(
                "Apache-2.0", List.of("META-INF/LICENSE"),
                "The BSD License", List.of("META-INF/licences/jline-BSD-3-Clause.txt"));
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> named = text(jar, "META-INF/THIRD-PARTY.txt")
                    .lines()
                    .map(LICENCE::matcher)
                    .filter(Matcher::find)
                    .map(match -> match.group(1))
                    .distinct()
                    .toList();
            assertThat(named).isNotEmpty().isSubsetOf(texts.keySet());
            for (String licence : named) {
                for (String name : texts.getOrDefault(licence, List.of())) {
                    assertThat(text(jar, name)).hasSizeGreaterThan(500);
                }
            }
            for (String notice : List.of(
                    "META-INF/licences/commons-math3.txt",
                    "META-INF/licences/pdfbox.txt",
                    "META-INF/licences/fontbox.txt",
                    "META-INF/FastDoubleParser-LICENSE",
                    "META-INF/Schubfach-LICENSE",
                    "META-INF/NOTICE")) {
                assertThat(text(jar, notice)).hasSizeGreaterThan(100);
            }
        }
    }

    /** A table with a byte changed, ahead of the jar on the class path: said, and no fault of the program. */
    @Test
    void aDamagedTableIsSaidToBeDamaged(@TempDir Path folder) throws Exception {
        String name = "org/satline/tables/r410a.saturation";
        Path damaged = folder.resolve(name);
        Files.createDirectories(damaged.getParent());
        try (JarFile jar = new JarFile(JAR.toFile())) {
            byte[] bytes = jar.getInputStream(jar.getEntry(name)).readAllBytes();
            bytes[bytes.length / 2] ^= 1;
            Files.write(damaged, bytes);
        }
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        folder + System.getProperty("path.separator") + JAR,
                        Main.class.getName(),
                        "pressure",
                        "R-410A",
                        "20degC")
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(output).contains("r410a.saturation", "damaged").doesNotContain("fault of the program");
    }

    /** A reader that has enough closes the pipe. */
    @Test
    void aClosedPipeIsNoError() throws Exception {
        Process process = new ProcessBuilder(
                        "sh",
                        "-c",
                        "{ '" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -jar " + JAR
                                + " table R-410A; echo \"status $?\" >&2; } | head -1")
                .start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.getInputStream().readAllBytes()).isNotEmpty();
        assertThat(process.waitFor()).isZero();
        assertThat(said.strip()).isEqualTo("status 0");
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
