package org.satline.program;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A visit with what may follow from it.
 *
 * @param file the visit
 * @param row its row of {@code expectations.csv}
 */
record VisitTrial(Path file, Map<String, String> row) {
    private static final Path FOLDER = Path.of("src", "test", "resources", "org", "satline", "program", "visits");

    static List<VisitTrial> all() {
        List<VisitTrial> trials = new ArrayList<>();
        CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
        try (MappingIterator<Map<String, String>> rows = new CsvMapper()
                .readerForMapOf(String.class)
                .with(schema)
                .readValues(FOLDER.resolve("expectations.csv").toFile())) {
            rows.forEachRemaining(row -> trials.add(new VisitTrial(FOLDER.resolve(row.get("file")), row)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return trials;
    }

    static List<VisitTrial> ready() {
        return all().stream().filter(each -> each.cell("group").equals("ready")).toList();
    }

    String text() {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String cell(String column) {
        return Objects.requireNonNull(row.get(column), column);
    }

    List<String> expected() {
        return List.of(cell("expected").split("\\|", -1));
    }

    List<String> forbidden() {
        return List.of(cell("forbidden").split("\\|", -1));
    }

    boolean has(String bound) {
        return !cell(bound).isEmpty();
    }

    double bound(String name) {
        return Double.parseDouble(row.get(name));
    }

    @Override
    public String toString() {
        return String.valueOf(file.getFileName());
    }
}
