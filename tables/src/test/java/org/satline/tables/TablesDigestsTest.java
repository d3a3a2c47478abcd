package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.satline.resource.SealedResources;

/** The manifest of tables holds every resource of the jar. */
class TablesDigestsTest {
    private static final Path RESOURCES = Path.of("src", "main", "resources");
    private static final Path MANIFEST = RESOURCES.resolve("org/satline/tables/tables.digests");

    private static SortedMap<String, byte[]> files() {
        SortedMap<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(RESOURCES)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                if (!file.equals(MANIFEST) && !isForTools(file)) {
                    files.put(RESOURCES.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /** Instructions for shrinkers and native images, which drop them once they are read. */
    private static boolean isForTools(Path file) {
        Path folder = RESOURCES.relativize(file).subpath(0, 2);
        return folder.equals(Path.of("META-INF", "proguard")) || folder.equals(Path.of("META-INF", "native-image"));
    }

    @Test
    void manifestIsThatOfTheFiles() throws IOException {
        String expected = SealedResources.manifest(files());
        if (Boolean.getBoolean("satline.digests.write")) {
            Files.writeString(MANIFEST, expected, StandardCharsets.ISO_8859_1);
        }
        assertThat(Files.readString(MANIFEST, StandardCharsets.ISO_8859_1)
                        .lines()
                        .toList())
                .as("digests of the resources; after a change run mvn -q -pl tables -am test -Dtest=TablesDigestsTest"
                        + " -Dsurefire.failIfNoSpecifiedTests=false -Dsatline.digests.write=true")
                .isEqualTo(expected.lines().toList());
    }

    @Test
    void everyFileOfTheJarIsTheReleasedOne() {
        assertThatCode(() -> TableProvider.resources().verify()).doesNotThrowAnyException();
        assertThat(TableProvider.resources().paths()).containsExactlyElementsOf(files().keySet());
    }

    /** Against the platform's own implementation, and the check value of RFC 3720, appendix B.4: 32 bytes of zeros give 8a9136aa. */
    @Test
    void checksumOfTheFormatIsCastagnolis() {
        assertThat(Castagnoli.checksum(new byte[32], 0)).isEqualTo(0x8a9136aa);
        files().values().forEach(bytes -> {
            CRC32C platform = new CRC32C();
            platform.update(bytes, 0, bytes.length);
            assertThat(Castagnoli.checksum(bytes, 0)).isEqualTo((int) platform.getValue());
        });
    }
}
