package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;

/**
 * Reads the entries of the catalogue from their resources. On a cold virtual machine each lambda and each string joined by a plus sign costs as much as
 * many rows, so the readers do without.
 */
final class CatalogueReader {
    private CatalogueReader() {}

    static List<Refrigerant> read() {
        Map<String, String> citations = new LinkedHashMap<>();
        for (Row row : CsvResource.read(CatalogueReader.class, "sources.csv", "key", "citation")
                .rows()) {
            if (citations.put(row.text("key"), row.text("citation")) != null) {
                throw row.fault(row.text("key") + " stands twice; leave one out");
            }
        }
        Map<String, Refrigerant> entries = new LinkedHashMap<>();
        new SubstanceReader(citations).readInto(entries);
        new BlendReader(citations).readInto(entries);
        return new ArrayList<>(entries.values());
    }

    static void add(Map<String, Refrigerant> entries, Refrigerant entry, Row row) {
        if (entries.put(entry.designation(), entry) != null) {
            throw row.fault(entry.designation() + " stands twice; leave one out");
        }
    }

    static String citation(Map<String, String> citations, Row row, String column) {
        String citation = citations.get(row.text(column));
        if (citation == null) {
            throw row.fault("source \"" + row.text(column) + "\" is not a key of sources.csv; add it there");
        }
        return citation;
    }

    static Optional<SafetyGroup> group(Row row) {
        if (row.isEmpty("safety_group")) {
            return Optional.empty();
        }
        for (SafetyGroup group : SafetyGroup.values()) {
            if (group.name().equals(row.cell("safety_group"))) {
                return Optional.of(group);
            }
        }
        throw row.fault("safety_group \"" + row.cell("safety_group") + "\" is not one of ISO 817; correct it");
    }

    static Optional<Temperature> celsius(Row row, String column) {
        return row.isEmpty(column) ? Optional.empty() : Optional.of(Temperature.ofCelsius(row.number(column)));
    }
}
