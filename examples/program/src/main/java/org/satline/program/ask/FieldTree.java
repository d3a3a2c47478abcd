package org.satline.program.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.visit.file.FieldValue;

/** Reads and changes fields by path, such as {@code cylinder.hoses[0].length}. Stateless, thread-safe. */
final class FieldTree {
    static final FieldValue.Fields EMPTY = new FieldValue.Fields(Map.of());

    private FieldTree() {}

    static Optional<FieldValue> get(FieldValue.Fields fields, String path) {
        Optional<FieldValue> found = Optional.of(fields);
        for (String name : names(path)) {
            found = found.flatMap(value -> child(value, name));
        }
        return found;
    }

    static Optional<String> text(FieldValue.Fields fields, String path) {
        return get(fields, path)
                .filter(FieldValue.Text.class::isInstance)
                .map(value -> ((FieldValue.Text) value).value());
    }

    static boolean has(FieldValue.Fields fields, String path) {
        return get(fields, path).isPresent();
    }

    static FieldValue.Fields put(FieldValue.Fields fields, String path, FieldValue value) {
        return (FieldValue.Fields) put(Optional.of(fields), names(path), 0, value);
    }

    static FieldValue.Fields put(FieldValue.Fields fields, String path, String text) {
        return put(fields, path, new FieldValue.Text(text));
    }

    static FieldValue.Fields without(FieldValue.Fields fields, String name) {
        Map<String, FieldValue> kept = new LinkedHashMap<>(fields.values());
        kept.remove(name);
        return new FieldValue.Fields(kept);
    }

    /** Fields of {@code over} on top of those of {@code under}, object by object; lists and values are replaced. */
    static FieldValue.Fields merged(FieldValue.Fields under, FieldValue.Fields over) {
        Map<String, FieldValue> all = new LinkedHashMap<>(under.values());
        over.values().forEach((name, value) -> {
            FieldValue below = all.get(name);
            all.put(
                    name,
                    below instanceof FieldValue.Fields low && value instanceof FieldValue.Fields high
                            ? merged(low, high)
                            : value);
        });
        return new FieldValue.Fields(all);
    }

    private static FieldValue put(Optional<FieldValue> at, List<String> names, int depth, FieldValue value) {
        if (depth == names.size()) {
            return value;
        }
        String name = names.get(depth);
        Optional<FieldValue> below = at.flatMap(each -> child(each, name));
        FieldValue changed = put(below, names, depth + 1, value);
        if (index(name) >= 0) {
            List<FieldValue> items =
                    new ArrayList<>(at.orElse(null) instanceof FieldValue.Items list ? list.values() : List.of());
            if (index(name) < items.size()) {
                items.set(index(name), changed);
            } else {
                items.add(changed);
            }
            return new FieldValue.Items(items);
        }
        Map<String, FieldValue> fields =
                new LinkedHashMap<>(at.orElse(null) instanceof FieldValue.Fields object ? object.values() : Map.of());
        fields.put(name, changed);
        return new FieldValue.Fields(fields);
    }

    private static Optional<FieldValue> child(FieldValue value, String name) {
        if (value instanceof FieldValue.Items items) {
            int index = index(name);
            return index >= 0 && index < items.values().size()
                    ? Optional.of(items.values().get(index))
                    : Optional.empty();
        }
        return value instanceof FieldValue.Fields fields
                ? Optional.ofNullable(fields.values().get(name))
                : Optional.empty();
    }

    private static int index(String name) {
        return name.startsWith("[") ? Integer.parseInt(name.substring(1, name.length() - 1)) : -1;
    }

    private static List<String> names(String path) {
        return List.of(path.replace("[", ".[").split("\\.", -1));
    }
}
