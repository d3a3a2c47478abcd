package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The libraries that the runnable jar carries are those that were looked at, to the last byte, whatever repository they come from. A new
 * version: look at it, then write its digest into {@code libraries.sha256}, as {@code sha256sum} prints it.
 */
class LibrariesTest {
    static final Path LIST = Path.of("src/test/resources/org/satline/program/libraries.sha256");

    /** Digest by file name. */
    static Map<String, String> pinned() throws IOException {
        Map<String, String> pinned = new TreeMap<>();
        for (String line : Files.readAllLines(LIST)) {
            String[] parts = line.split(" {2}", -1);
            pinned.put(parts[1], parts[0]);
        }
        return pinned;
    }

    @Test
    void eachLibraryIsTheOneThatWasLookedAt() throws IOException, NoSuchAlgorithmException {
        String machine = System.getProperty("java.class.path");
        String classPath = System.getProperty("surefire.test.class.path", machine);
        Map<String, String> found = new TreeMap<>();
        for (String entry : classPath.split(Pattern.quote(System.getProperty("path.separator")), -1)) {
            String name = String.valueOf(Path.of(entry).getFileName());
            if (pinned().containsKey(name)) {
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(Path.of(entry)));
                found.put(name, HexFormat.of().formatHex(digest));
            }
        }
        assertThat(found).isEqualTo(pinned());
    }
}
