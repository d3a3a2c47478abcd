package org.satline.tables.vectors;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.refrigerant.Catalogue;

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
    void refusals() throws IOException {
        same("refusals.csv", PropertyVectors.REFUSALS, PropertyVectors.refusals());
        List<String> fills = FillVectors.refusals();
        assertThat(fills).hasSizeGreaterThan(10);
        same("refused-fills.csv", FillVectors.REFUSALS, fills);
    }

    @Test
    void theVersionOfTheDataStandsInside() throws IOException {
        same("version.csv", "data", List.of(Catalogue.standard().dataVersion()));
    }

    /** The same as JSON, for readers that have no CSV, with a schema. */
    @Test
    void json() throws IOException {
        ObjectMapper mapper = new ObjectMapper();
        ObjectNode all =
                mapper.createObjectNode().put("data", Catalogue.standard().dataVersion());
        for (String name :
                List.of("properties", "refusals", "fills", "refused-fills", "verdicts", "refused-verdicts")) {
            List<String> lines = Files.readAllLines(FOLDER.resolve(name + ".csv"));
            List<String> columns = List.of(lines.get(0).split(",", -1));
            ArrayNode rows = all.putArray(name);
            for (String line : lines.subList(1, lines.size())) {
                ObjectNode row = rows.addObject();
                List<String> cells = cells(line);
                for (int i = 0; i < columns.size(); i++) {
                    if (!cells.get(i).isEmpty()) {
                        row.put(columns.get(i), cells.get(i));
                    }
                }
            }
        }
        Path path = FOLDER.resolve("vectors.json");
        if (System.getProperty("satline.vectors.write") != null) {
            Files.writeString(path, mapper.writerWithDefaultPrettyPrinter().writeValueAsString(all) + "\n");
        }
        JsonNode published = mapper.readTree(Files.readString(path));
        assertThat(published).isEqualTo(all);
        JsonNode schema = mapper.readTree(Files.readString(FOLDER.resolve("vectors.schema.json")));
        for (String name :
                List.of("properties", "refusals", "fills", "refused-fills", "verdicts", "refused-verdicts")) {
            JsonNode row = schema.path("properties").path(name).path("items");
            for (JsonNode each : published.path(name)) {
                each.fieldNames()
                        .forEachRemaining(
                                field -> assertThat(row.path("properties").has(field))
                                        .as(field)
                                        .isTrue());
                row.path("required")
                        .forEach(field -> assertThat(each.has(field.asText()))
                                .as("%s", field)
                                .isTrue());
            }
        }
    }

    /** Cells of a line; a quoted cell may hold commas. */
    private static List<String> cells(String line) {
        return Pattern.compile("(?:^|,)(\"(?:[^\"]|\"\")*\"|[^,]*)")
                .matcher(line)
                .results()
                .map(found -> found.group(1))
                .map(cell -> cell.startsWith("\"")
                        ? cell.substring(1, cell.length() - 1).replace("\"\"", "\"")
                        : cell)
                .toList();
    }

    /** A program in another language that knows nothing of this library reads the files, and finds a number that was changed. */
    @Test
    void theyStandAlone(@TempDir Path folder) throws IOException, InterruptedException {
        assertThat(read(FOLDER)).isZero();
        for (String file : List.of(
                "properties", "refusals", "fills", "refused-fills", "verdicts", "refused-verdicts", "version")) {
            Files.copy(FOLDER.resolve(file + ".csv"), folder.resolve(file + ".csv"));
        }
        Path properties = folder.resolve("properties.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(properties));
        lines.replaceAll(line -> line.contains(",psig,1600,") ? line.replaceFirst("(\\.\\d)", "$19") : line);
        Files.write(properties, lines);
        assertThat(read(folder)).isEqualTo(1);
    }

    private static int read(Path folder) throws IOException, InterruptedException {
        Process reader = new ProcessBuilder(
                        "perl", FOLDER.resolve("read-vectors.pl").toString(), folder.toString())
                .inheritIO()
                .start();
        return reader.waitFor();
    }

    /** By the maker's target and by the air, and other faults; each level that readings can lead to occurs. */
    @Test
    void verdicts() throws IOException {
        List<String> lines = VerdictVectors.lines();
        for (String level : List.of("low", "on-target", "high", "undecided", "not-charge")) {
            assertThat(lines).as(level).anyMatch(line -> line.endsWith("," + level));
        }
        same("verdicts.csv", VerdictVectors.HEADER, lines);
    }

    @Test
    void refusedVerdicts() throws IOException {
        List<String> lines = VerdictVectors.refusals();
        for (String error : List.of("implausible-reading", "outside-range", "target-outside-chart", "target-at-dash")) {
            assertThat(lines).as(error).anyMatch(line -> line.endsWith("," + error));
        }
        same("refused-verdicts.csv", VerdictVectors.REFUSALS, lines);
    }
}
