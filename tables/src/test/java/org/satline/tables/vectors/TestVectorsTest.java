package org.satline.tables.vectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The published test vectors are what the equations answer today. After data have changed,
 * {@code mvn -q -pl core,tables test -Dtest=TestVectorsTest
 * -Dsatline.vectors.write -Dsurefire.failIfNoSpecifiedTests=false} writes them anew.
 */
class TestVectorsTest {
    private static final Path FOLDER = Path.of("src", "vectors");

    private static void same(String file, String header, List<String> lines) throws IOException {
        Path path = FOLDER.resolve(file);
        List<String> now = Stream.concat(Stream.of(header), lines.stream()).toList();
        if (System.getProperty("satline.vectors.write") != null) {
            Files.writeString(path, String.join("\n", now) + "\n");
        }
        List<String> published = Files.readAllLines(path);
        assertThat(published).hasSameSizeAs(now);
        for (int i = 0; i < now.size(); i++) {
            List<String> cells = List.of(published.get(i).split(",", -1));
            List<String> fresh = List.of(now.get(i).split(",", -1));
            assertThat(cells).as(published.get(i)).hasSameSizeAs(fresh);
            for (int k = 0; k < cells.size(); k++) {
                assertThat(agree(cells.get(k), fresh.get(k)))
                        .as(published.get(i) + " against " + now.get(i))
                        .isTrue();
            }
        }
    }

    /** Texts to the letter; numbers to one unit of their last digit, where another machine may round the other way. */
    private static boolean agree(String published, String fresh) {
        if (published.equals(fresh)) {
            return true;
        }
        try {
            BigDecimal one = new BigDecimal(published);
            BigDecimal other = new BigDecimal(fresh);
            return one.subtract(other).abs().compareTo(one.ulp().max(other.ulp())) <= 0;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    @Test
    void properties() throws IOException {
        same("properties.csv", PropertyVectors.HEADER, PropertyVectors.lines());
    }

    @Test
    void fills() throws IOException {
        same("fills.csv", FillVectors.HEADER, FillVectors.lines());
    }

    @Test
    void verdicts() throws IOException {
        List<String> lines = VerdictVectors.lines();
        // every level that readings of charge alone can lead to occurs
        for (String level : List.of("low", "on-target", "high", "undecided")) {
            assertThat(lines).anyMatch(line -> line.endsWith("," + level));
        }
        same("verdicts.csv", VerdictVectors.HEADER, lines);
    }
}
