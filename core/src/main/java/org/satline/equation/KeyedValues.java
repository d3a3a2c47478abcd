package org.satline.equation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/** A file of rows {@code key,value}: each required key once, each optional one at most once, and no other. */
final class KeyedValues {
    private static final String VALUE = "value";

    private final String name;
    private final Map<String, Row> rows = new LinkedHashMap<>();

    KeyedValues(CsvResource table, List<String> required, List<String> optional) {
        name = table.name();
        for (Row row : table.rows()) {
            String key = row.text("key");
            if (!required.contains(key) && !optional.contains(key)) {
                throw row.fault("key \"" + key + "\" is not known; the keys are " + required + " and " + optional);
            }
            if (rows.put(key, row) != null) {
                throw row.fault("key " + key + " stands twice; leave one out");
            }
        }
        for (String key : required) {
            row(key);
        }
    }

    private Row row(String key) {
        Row row = rows.get(key);
        if (row == null) {
            throw new ResourceFormatException(name, 0, "key " + key + " is missing; add it");
        }
        return row;
    }

    String text(String key) {
        return row(key).text(VALUE);
    }

    @Nullable
    String optionalText(String key) {
        return rows.containsKey(key) ? text(key) : null;
    }

    double number(String key) {
        return row(key).number(VALUE);
    }

    /** A number that must lie in a range, both ends included. */
    double number(String key, double lowest, double highest) {
        double value = number(key);
        if (!(value >= lowest && value <= highest)) {
            throw fault(key, "is " + row(key).cell(VALUE) + ", expected " + lowest + " to " + highest);
        }
        return value;
    }

    ResourceFormatException fault(String key, String problem) {
        return row(key).fault(key + " " + problem);
    }
}
