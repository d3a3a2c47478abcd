package org.satline.refrigerant;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;

/**
 * Reads the entries of the catalogue from their resources: the lists at once, the figures of an entry when it is first asked for. On a cold
 * virtual machine each lambda and each string joined by a plus sign costs as much as many rows, so the readers do without.
 */
final class CatalogueReader {
    private CatalogueReader() {}

    /** Substances first, by designation, in the order of the files. */
    static Map<String, CatalogueEntry> read() {
        Map<String, CatalogueEntry> entries = new LinkedHashMap<>();
        Citations citations = new Citations();
        new SubstanceReader(citations).readInto(entries);
        new BlendReader(citations).readInto(entries);
        return entries;
    }

    static void add(Map<String, CatalogueEntry> entries, CatalogueEntry entry, Row row) {
        if (entries.put(entry.designation(), entry) != null) {
            throw row.fault(entry.designation() + " stands twice; leave one out");
        }
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

    /** What the keys of the sources stand for. */
    static final class Citations {
        private @Nullable Map<String, String> byKey;

        synchronized String of(Row row, String column) {
            Map<String, String> known = byKey;
            if (known == null) {
                known = read();
                byKey = known;
            }
            String citation = known.get(row.text(column));
            if (citation == null) {
                throw row.fault("source \"" + row.text(column) + "\" is not a key of sources.csv; add it there");
            }
            return citation;
        }

        private static Map<String, String> read() {
            Map<String, String> citations = new LinkedHashMap<>();
            for (Row row : CsvResource.read(CatalogueReader.class, "sources.csv", "key", "citation")
                    .rows()) {
                if (citations.put(row.text("key"), row.text("citation")) != null) {
                    throw row.fault(row.text("key") + " stands twice; leave one out");
                }
            }
            return citations;
        }
    }
}
