package org.satline.program.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One JSON object, read strictly: unknown fields, missing fields and values of another type are errors that name the file and
 * the path of the field. Immutable.
 */
public final class JsonFields {
    private final Path file;
    private final String path;
    private final JsonNode node;
    private final List<String> allowed;

    private JsonFields(Path file, String path, JsonNode node, List<String> allowed) {
        this.file = file;
        this.path = path;
        this.node = node;
        this.allowed = allowed;
        if (!node.isObject()) {
            throw bad(path, "is " + kind(node) + "; an object is expected: { \"" + allowed.get(0) + "\": ... }");
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!allowed.contains(name)) {
                throw bad(at(name), "unknown field; allowed here: " + String.join(", ", allowed));
            }
        }
    }

    /**
     * Reads a file that holds one object.
     *
     * @param file the file, UTF-8
     * @param allowed names of the fields that may stand in it
     * @return the object
     * @throws BadInputException if the file cannot be read, is no JSON, or holds another field
     */
    public static JsonFields of(Path file, List<String> allowed) {
        if (Files.isDirectory(file)) {
            throw new BadInputException(file + ": is a folder; name a JSON file");
        }
        JsonMapper mapper = JsonMapper.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
        try (InputStream stream = Files.newInputStream(file)) {
            JsonNode node = mapper.readTree(stream);
            if (node == null || node.isMissingNode()) {
                throw new BadInputException(file + ": is empty; a JSON object is expected");
            }
            return new JsonFields(file, "", node, List.copyOf(allowed));
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String place = at == null ? "" : ":" + at.getLineNr() + ":" + at.getColumnNr();
            throw new BadInputException(file + place + ": broken JSON: " + complaint(e));
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + WholeFile.reason(e) + ")");
        }
    }

    /**
     * Tells whether a field is there.
     *
     * @param field its name
     * @return false if it is missing
     */
    public boolean has(String field) {
        return node.has(field);
    }

    /**
     * Reads an object that has to be there.
     *
     * @param field its name
     * @param fields names of the fields that may stand in it
     * @return the object
     */
    public JsonFields object(String field, List<String> fields) {
        return optionalObject(field, fields)
                .orElseThrow(() -> missing(field, "an object with " + String.join(", ", fields)));
    }

    /**
     * Reads an object.
     *
     * @param field its name
     * @param fields names of the fields that may stand in it
     * @return the object, empty if it is missing
     */
    public Optional<JsonFields> optionalObject(String field, List<String> fields) {
        return child(field).map(child -> new JsonFields(file, at(field), child, List.copyOf(fields)));
    }

    /**
     * Reads a list of objects.
     *
     * @param field its name
     * @param fields names of the fields that may stand in each
     * @return the objects, none if the field is missing
     */
    public List<JsonFields> objects(String field, List<String> fields) {
        List<JsonFields> list = new ArrayList<>();
        child(field).ifPresent(child -> {
            if (!child.isArray()) {
                throw bad(at(field), "is " + kind(child) + "; a list is expected: [ { ... } ]");
            }
            for (int i = 0; i < child.size(); i++) {
                list.add(new JsonFields(file, at(field) + "[" + i + "]", child.get(i), List.copyOf(fields)));
            }
        });
        return List.copyOf(list);
    }

    /**
     * Reads a text that has to be there, and makes a value of it.
     *
     * @param field its name
     * @param example what a good text looks like
     * @param reader makes the value; an {@link IllegalArgumentException} of it becomes the error of this field
     * @param <T> type of the value
     * @return the value
     */
    public <T> T value(String field, String example, Function<String, T> reader) {
        return optionalValue(field, example, reader).orElseThrow(() -> missing(field, "\"" + example + "\""));
    }

    /**
     * Reads a text and makes a value of it.
     *
     * @param field its name
     * @param example what a good text looks like
     * @param reader makes the value; an {@link IllegalArgumentException} of it becomes the error of this field
     * @param <T> type of the value
     * @return the value, empty if the field is missing
     */
    public <T> Optional<T> optionalValue(String field, String example, Function<String, T> reader) {
        return child(field).map(child -> {
            if (!child.isTextual()) {
                throw bad(at(field), "is " + kind(child) + "; a text in quotes is expected, like \"" + example + "\"");
            }
            try {
                return reader.apply(child.textValue());
            } catch (BadInputException e) {
                throw e;
            } catch (IllegalArgumentException e) {
                String message = Shown.line(String.valueOf(e.getMessage()));
                String text = child.textValue();
                throw bad(at(field), message.contains(text) ? message : Shown.quoted(text) + ": " + message);
            }
        });
    }

    /**
     * Reads one of a few words.
     *
     * @param field its name
     * @param choices value for each word
     * @param <T> type of the value
     * @return the value, empty if the field is missing
     */
    public <T> Optional<T> optionalChoice(String field, Map<String, T> choices) {
        String words = String.join(", ", choices.keySet().stream().sorted().toList());
        return optionalValue(
                field, choices.keySet().stream().sorted().findFirst().orElseThrow(), word -> {
                    T choice = choices.get(word);
                    if (choice == null) {
                        throw new IllegalArgumentException(Shown.quoted(word) + " is not known; allowed: " + words);
                    }
                    return choice;
                });
    }

    /**
     * Reads one of a few words that has to be there.
     *
     * @param field its name
     * @param choices value for each word
     * @param <T> type of the value
     * @return the value
     */
    public <T> T choice(String field, Map<String, T> choices) {
        return optionalChoice(field, choices)
                .orElseThrow(() -> missing(
                        field,
                        "one of "
                                + String.join(
                                        ", ", choices.keySet().stream().sorted().toList())));
    }

    /**
     * Reads true or false.
     *
     * @param field its name
     * @return the value, empty if the field is missing
     */
    public Optional<Boolean> optionalFlag(String field) {
        return child(field).map(child -> {
            if (!child.isBoolean()) {
                throw bad(at(field), "is " + kind(child) + "; true or false is expected, without quotes");
            }
            return child.booleanValue();
        });
    }

    /**
     * Makes the error of a field that this class cannot judge by itself.
     *
     * @param field its name
     * @param what what is wrong and what is allowed
     * @return the exception, to be thrown
     */
    public BadInputException refused(String field, String what) {
        return bad(at(field), Shown.line(what));
    }

    /**
     * Makes the error of this whole object.
     *
     * @param what what is wrong and what is allowed
     * @return the exception, to be thrown
     */
    public BadInputException refused(String what) {
        return bad(path, Shown.line(what));
    }

    /** The parser's words without its remarks on where its text came from and on its own settings. */
    private static String complaint(JsonProcessingException e) {
        return Shown.line(e.getOriginalMessage())
                .replaceAll("\\[Source: [^;\\]]*; (line: \\d+, column: \\d+)]", "$1")
                .replaceAll("\\s*\\(`[^`]*`[^)]*\\)", "");
    }

    private Optional<JsonNode> child(String field) {
        if (!allowed.contains(field)) {
            throw new IllegalStateException("field " + at(field) + " is read but not declared");
        }
        return Optional.ofNullable(node.get(field));
    }

    private BadInputException missing(String field, String expected) {
        return bad(at(field), "is missing; expected " + expected);
    }

    private BadInputException bad(String where, String what) {
        return new BadInputException(file + ": " + (where.isEmpty() ? "" : Shown.line(where) + ": ") + what);
    }

    private String at(String field) {
        return path.isEmpty() ? field : path + "." + field;
    }

    private static String kind(JsonNode node) {
        return switch (node.getNodeType()) {
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            case NULL -> "null";
            case BOOLEAN -> "true or false";
            case NUMBER -> "the bare number " + node.asText();
            case STRING -> "the text " + Shown.quoted(node.textValue());
            default -> "something else";
        };
    }
}
