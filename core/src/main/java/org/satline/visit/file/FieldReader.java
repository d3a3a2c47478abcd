package org.satline.visit.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.satline.explanation.Coded;
import org.satline.visit.FieldException;

/** Reads fields strictly: an unknown or missing field and a value of another type are errors that name the path of the field. Immutable. */
final class FieldReader {
    private static final int LONGEST_SHOWN = 60;
    private static final int MOST_ITEMS = 1000;

    private final String path;
    private final FieldValue.Fields fields;
    private final List<String> allowed;

    private FieldReader(String path, FieldValue value, List<String> allowed) {
        this.path = path;
        this.allowed = List.copyOf(allowed);
        if (!(value instanceof FieldValue.Fields found)) {
            throw bad(path, "is " + kind(value) + "; an object is expected: { \"" + allowed.get(0) + "\": ... }");
        }
        this.fields = found;
        for (String name : found.values().keySet()) {
            if (!allowed.contains(name)) {
                throw bad(at(plain(name)), "unknown field; allowed here: " + String.join(", ", allowed));
            }
        }
    }

    static FieldReader of(FieldValue.Fields root, List<String> allowed) {
        return new FieldReader("", root, allowed);
    }

    boolean has(String field) {
        return child(field).isPresent();
    }

    /** Where the reader stands, such as {@code cylinders[1]}; empty at the root. */
    String path() {
        return path;
    }

    FieldReader object(String field, List<String> names) {
        return optionalObject(field, names)
                .orElseThrow(() -> missing(field, "an object with " + String.join(", ", names)));
    }

    Optional<FieldReader> optionalObject(String field, List<String> names) {
        return child(field).map(value -> new FieldReader(at(field), value, names));
    }

    /** Objects by names that the person chooses among {@code keys}, such as ports. */
    Map<String, FieldReader> objectsByName(String field, List<String> keys, List<String> names) {
        Map<String, FieldReader> found = new java.util.LinkedHashMap<>();
        optionalObject(field, keys)
                .ifPresent(each ->
                        keys.stream().filter(each::has).forEach(key -> found.put(key, each.object(key, names))));
        return found;
    }

    List<FieldReader> objects(String field, List<String> names) {
        Optional<FieldValue> value = child(field);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof FieldValue.Items items)) {
            throw bad(at(field), "is " + kind(value.get()) + "; a list is expected: [ { ... } ]");
        }
        if (items.values().size() > MOST_ITEMS) {
            throw bad(at(field), "holds " + items.values().size() + " items, at most " + MOST_ITEMS + " are read");
        }
        List<FieldReader> list = new ArrayList<>();
        for (int i = 0; i < items.values().size(); i++) {
            list.add(new FieldReader(at(field) + "[" + i + "]", items.values().get(i), names));
        }
        return List.copyOf(list);
    }

    <T> T value(String field, String example, Function<String, T> reader) {
        return optional(field, example, reader).orElseThrow(() -> missing(field, "\"" + example + "\""));
    }

    <T> Optional<T> optional(String field, String example, Function<String, T> reader) {
        return child(field).map(value -> {
            if (!(value instanceof FieldValue.Text text)) {
                throw bad(at(field), "is " + kind(value) + "; a text in quotes is expected, like \"" + example + "\"");
            }
            return made(at(field), text.value(), () -> reader.apply(text.value()));
        });
    }

    /** One of the words of an enum. */
    <E extends Enum<E> & Coded> Optional<E> optionalWord(String field, List<E> choices) {
        List<String> words = choices.stream().map(FieldReader::fileWord).toList();
        return optional(
                field,
                words.get(0),
                text -> choices.stream()
                        .filter(each -> fileWord(each).equals(text))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(
                                quoted(text) + " is not known; allowed: " + String.join(", ", words))));
    }

    /** A list of such words, each once. */
    <E extends Enum<E> & Coded> List<E> words(String field, List<E> choices) {
        Optional<FieldValue> value = child(field);
        if (value.isEmpty()) {
            return List.of();
        }
        Map<String, E> allowed = choices.stream()
                .collect(Collectors.toMap(FieldReader::fileWord, each -> each, (a, b) -> a, LinkedHashMap::new));
        String expected = "expected a list of " + String.join(", ", allowed.keySet());
        if (!(value.get() instanceof FieldValue.Items items)) {
            throw bad(at(field), "is " + kind(value.get()) + "; " + expected);
        }
        List<E> found = new ArrayList<>();
        for (FieldValue item : items.values()) {
            if (!(item instanceof FieldValue.Text text) || !allowed.containsKey(text.value())) {
                throw bad(at(field), "holds " + kind(item) + "; " + expected);
            }
            E word = Objects.requireNonNull(allowed.get(text.value()));
            if (found.contains(word)) {
                throw bad(at(field), "holds " + kind(item) + " twice; name it once");
            }
            found.add(word);
        }
        return List.copyOf(found);
    }

    <E extends Enum<E> & Coded> E word(String field, List<E> choices) {
        return optionalWord(field, choices)
                .orElseThrow(() -> missing(
                        field,
                        "one of "
                                + String.join(
                                        ", ",
                                        choices.stream()
                                                .map(FieldReader::fileWord)
                                                .toList())));
    }

    /** One of a few words with their values. */
    <T> Optional<T> optionalChoice(String field, Map<String, T> choices) {
        List<String> words = choices.keySet().stream().sorted().toList();
        return optional(field, words.get(0), text -> {
            T choice = choices.get(text);
            if (choice == null) {
                throw new IllegalArgumentException(
                        quoted(text) + " is not known; allowed: " + String.join(", ", words));
            }
            return choice;
        });
    }

    <T> T choice(String field, Map<String, T> choices) {
        return optionalChoice(field, choices)
                .orElseThrow(() -> missing(
                        field,
                        "one of "
                                + String.join(
                                        ", ", choices.keySet().stream().sorted().toList())));
    }

    Optional<Boolean> flag(String field) {
        return child(field).map(value -> {
            if (!(value instanceof FieldValue.Flag flag)) {
                throw bad(at(field), "is " + kind(value) + "; true or false is expected, without quotes");
            }
            return flag.value();
        });
    }

    /** A small whole number. */
    Optional<Integer> count(String field, List<Integer> choices) {
        return child(field).map(value -> {
            if (!(value instanceof FieldValue.Plain number)
                    || choices.stream().noneMatch(each -> each == number.value())) {
                throw bad(at(field), "is " + kind(value) + "; one of " + choices + " is expected, without quotes");
            }
            return (int) number.value();
        });
    }

    /** Makes something of several fields at once; what it refuses is said of this object. */
    <T> T made(java.util.function.Supplier<T> maker) {
        return made(path, "", maker);
    }

    FieldException refused(String field, String problem) {
        return bad(at(field), problem);
    }

    FieldException refused(String problem) {
        return bad(path, problem);
    }

    private static <T> T made(String where, String text, java.util.function.Supplier<T> maker) {
        try {
            return maker.get();
        } catch (FieldException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            String message = plain(String.valueOf(e.getMessage()));
            FieldException bad =
                    bad(where, text.isEmpty() || message.contains(text) ? message : quoted(text) + ": " + message);
            bad.initCause(e);
            throw bad;
        }
    }

    private Optional<FieldValue> child(String field) {
        if (!allowed.contains(field)) {
            throw new IllegalStateException("field " + at(field) + " is read but not declared");
        }
        return Optional.ofNullable(fields.values().get(field));
    }

    private FieldException missing(String field, String expected) {
        return bad(at(field), "is missing; expected " + expected);
    }

    private static FieldException bad(String where, String problem) {
        return new FieldException(where, problem);
    }

    private String at(String field) {
        return path.isEmpty() ? field : path + "." + field;
    }

    /** {@code HIGH_SIDE_LIQUID} is {@code high-side-liquid} in a file. */
    static String fileWord(Enum<?> constant) {
        StringBuilder word = new StringBuilder();
        for (char c : constant.name().toCharArray()) {
            word.append(c == '_' ? '-' : Character.toLowerCase(c));
        }
        return word.toString();
    }

    static String quoted(String value) {
        String line = plain(value);
        return '"' + (line.length() > LONGEST_SHOWN ? line.substring(0, LONGEST_SHOWN) + "..." : line) + '"';
    }

    /** On one line, without what a terminal or a page would obey instead of show. */
    static String plain(String text) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c <= '~') {
                line.append(c);
                continue;
            }
            int type = Character.getType(c);
            boolean shown = type != Character.CONTROL
                    && type != Character.FORMAT
                    && type != Character.LINE_SEPARATOR
                    && type != Character.PARAGRAPH_SEPARATOR
                    && type != Character.SURROGATE
                    && type != Character.UNASSIGNED;
            if (shown) {
                line.append(c);
            } else if (line.length() > 0 && line.charAt(line.length() - 1) != ' ') {
                line.append(' ');
            }
        }
        return line.toString().strip();
    }

    private static String kind(FieldValue value) {
        if (value instanceof FieldValue.Text text) {
            return "the text " + quoted(text.value());
        }
        if (value instanceof FieldValue.Plain number) {
            return "the bare number " + number.value();
        }
        return value instanceof FieldValue.Items
                ? "a list"
                : value instanceof FieldValue.Fields
                        ? "an object"
                        : value instanceof FieldValue.Flag ? "true or false" : "null";
    }
}
