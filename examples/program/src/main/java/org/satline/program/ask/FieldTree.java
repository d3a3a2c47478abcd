package org.satline.program.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.visit.file.FieldValue;

/** Reads and changes fields by path, such as {@code cylinder.hoses[0].length}. Stateless, thread-safe. */
public final class FieldTree {
    /** No fields. */
    public static final FieldValue.Fields EMPTY = new FieldValue.Fields(Map.of());

    private FieldTree() {}

    /**
     * What stands under a path.
     *
     * @param fields the fields
     * @param path names, separated by points, an index in brackets
     * @return the value, where there is one
     */
    public static Optional<FieldValue> get(FieldValue.Fields fields, String path) {
        Optional<FieldValue> found = Optional.of(fields);
        for (String name : names(path)) {
            found = found.flatMap(value -> child(value, name));
        }
        return found;
    }

    /**
     * The text that stands under a path.
     *
     * @param fields the fields
     * @param path names, separated by points, an index in brackets
     * @return the text, where there is one
     */
    public static Optional<String> text(FieldValue.Fields fields, String path) {
        return get(fields, path)
                .filter(FieldValue.Text.class::isInstance)
                .map(value -> ((FieldValue.Text) value).value());
    }

    /**
     * Whether something stands under a path.
     *
     * @param fields the fields
     * @param path names, separated by points, an index in brackets
     * @return true if it does
     */
    public static boolean has(FieldValue.Fields fields, String path) {
        return get(fields, path).isPresent();
    }

    /**
     * The fields with a value under a path; what is missing on the way is made.
     *
     * @param fields the fields
     * @param path names, separated by points, an index in brackets
     * @param value the value
     * @return other fields
     */
    public static FieldValue.Fields put(FieldValue.Fields fields, String path, FieldValue value) {
        return (FieldValue.Fields) put(Optional.of(fields), names(path), 0, value);
    }

    /**
     * Same for a text.
     *
     * @param fields the fields
     * @param path names, separated by points, an index in brackets
     * @param text the text
     * @return other fields
     */
    public static FieldValue.Fields put(FieldValue.Fields fields, String path, String text) {
        return put(fields, path, new FieldValue.Text(text));
    }

    /**
     * The fields without one of them.
     *
     * @param fields the fields
     * @param name name of a field, no path
     * @return other fields
     */
    public static FieldValue.Fields without(FieldValue.Fields fields, String name) {
        Map<String, FieldValue> kept = new LinkedHashMap<>(fields.values());
        kept.remove(name);
        return new FieldValue.Fields(kept);
    }

    /**
     * Fields on top of others, object by object; lists and values are replaced.
     *
     * @param under the fields below
     * @param over the fields on top
     * @return other fields
     */
    public static FieldValue.Fields merged(FieldValue.Fields under, FieldValue.Fields over) {
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
