package org.satline.resource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The manifest of core holds every resource of the jar, and nothing damaged passes it. */
class CoreDigestsTest {
    private static final Path RESOURCES = Path.of("src", "main", "resources");
    private static final Path MANIFEST = RESOURCES.resolve("org/satline/resource/core.digests");
    private static final int FLIPS_OF_EACH = 40;

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
                .as("digests of the resources; after a change run"
                        + " mvn -q -pl core test -Dtest=CoreDigestsTest -Dsatline.digests.write=true")
                .isEqualTo(expected.lines().toList());
    }

    @Test
    void everyFileOfTheJarIsTheReleasedOne() {
        assertThatCode(() -> SealedResources.core().verify()).doesNotThrowAnyException();
        assertThat(SealedResources.core().paths()).containsExactlyElementsOf(files().keySet());
    }

    @Test
    void aFlippedBitAnywhereIsRefusedByName() {
        SealedResources core = SealedResources.core();
        Random random = new Random(11);
        files().forEach((path, bytes) -> {
            for (int i = 0; i < FLIPS_OF_EACH; i++) {
                byte[] damaged = bytes.clone();
                damaged[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(Byte.SIZE));
                assertThatThrownBy(() -> core.check(path, path, damaged))
                        .isInstanceOfSatisfying(
                                ResourceFormatException.class,
                                e -> assertThat(e.resource()).isEqualTo(path));
            }
        });
    }

    @Test
    void aFileCutShortIsRefused() {
        files().forEach((path, bytes) -> assertThatThrownBy(() ->
                        SealedResources.core().check(path, path, java.util.Arrays.copyOf(bytes, bytes.length - 1)))
                .isInstanceOf(ResourceFormatException.class));
    }

    @Test
    void damageOfTheManifestIsFoundOrHarmless() throws IOException {
        byte[] manifest = Files.readAllBytes(MANIFEST);
        List<String> lines =
                new String(manifest, StandardCharsets.ISO_8859_1).lines().toList();
        Random random = new Random(12);
        for (int i = 0; i < 2000; i++) {
            byte[] damaged = manifest.clone();
            damaged[random.nextInt(manifest.length)] ^= (byte) (1 << random.nextInt(Byte.SIZE));
            try {
                SealedResources read = new SealedResources(CoreDigestsTest.class, "core.digests", damaged);
                // a digit of the last line in capitals is the same figure
                assertThat(read.paths()).hasSize(lines.size() - 1);
                assertThat(new String(damaged, StandardCharsets.ISO_8859_1))
                        .isEqualToIgnoringCase(String.join("\n", lines) + "\n");
            } catch (ResourceFormatException e) {
                assertThat(e.resource()).isEqualTo("core.digests");
            }
        }
        assertThatThrownBy(() -> new SealedResources(CoreDigestsTest.class, "core.digests", new byte[3]))
                .isInstanceOf(ResourceFormatException.class);
        assertThatThrownBy(() -> SealedResources.of(CoreDigestsTest.class, "absent.digests"))
                .isInstanceOf(ResourceFormatException.class);
    }

    @Test
    void filesThatAreNotListedAreTheCallersOwn() {
        assertThat(SealedResources.core().find(CoreDigestsTest.class, "absent.csv"))
                .isNull();
        assertThat(SealedResources.core().lists(CoreDigestsTest.class, "absent.csv"))
                .isFalse();
        assertThatThrownBy(() -> SealedResources.core().bytes(CoreDigestsTest.class, "absent.csv"))
                .isInstanceOf(ResourceFormatException.class);
    }
}
