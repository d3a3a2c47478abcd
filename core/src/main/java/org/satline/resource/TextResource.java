package org.satline.resource;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;

/**
 * Texts under keys, read from a file in the jar. Immutable, thread-safe.
 *
 * <p>Form: UTF-8; one text a line, {@code key = text}, with one space on each side of the equals sign; comment lines that start with
 * {@code #} and empty lines between them. A key has letters, digits, points and hyphens. Nothing is escaped and no line goes on in the
 * next. Everything else is refused with file and line: a repeated key, an empty text, blanks around a key or a text, a control character.
 */
public final class TextResource {
    private static final String BETWEEN = " = ";

    private final String name;
    private final List<Entry> entries;

    /**
     * One text.
     *
     * @param key the key
     * @param text the text, not empty
     * @param line where it is in the file, counted from 1
     */
    public record Entry(String key, String text, int line) {
        /** {@inheritDoc} */
        public Entry {
            Parts.required("key text", key, text);
        }
    }

    private TextResource(String name, List<Entry> entries) {
        this.name = name;
        this.entries = List.copyOf(entries);
    }

    /**
     * Reads a file that lies beside a class.
     *
     * @param neighbour a class in the package of the file
     * @param name file name, relative to that package
     * @return the texts; nothing where there is no such file
     * @throws ResourceFormatException if the file cannot be read or does not have the documented form
     */
    public static Optional<TextResource> find(Class<?> neighbour, String name) {
        Parts.required("neighbour name", neighbour, name);
        if (SealedResources.core().lists(neighbour, name)) {
            return Optional.of(parse(name, SealedResources.core().bytes(neighbour, name)));
        }
        // a language that somebody added stands in no manifest
        try (InputStream in = neighbour.getResourceAsStream(name)) {
            if (in == null) {
                return Optional.empty();
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            for (int next = in.read(); next >= 0; next = in.read()) {
                bytes.write(next);
            }
            return Optional.of(parse(name, bytes.toByteArray()));
        } catch (IOException e) {
            ResourceFormatException broken = new ResourceFormatException(name, 0, "cannot be read: " + e.getMessage());
            broken.initCause(e);
            throw broken;
        }
    }

    /** Same from the bytes of a file. */
    static TextResource parse(String name, byte[] utf8) {
        String text = CsvResource.decode(name, utf8);
        List<Entry> entries = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        int line = 0;
        for (int at = 0; at < text.length(); ) {
            int end = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at);
            line++;
            if (end > at && text.charAt(at) != '#') {
                Entry entry = entry(name, line, text.substring(at, end));
                Integer earlier = lines.putIfAbsent(entry.key(), line);
                if (earlier != null) {
                    throw new ResourceFormatException(
                            name, line, entry.key() + " is there already in line " + earlier + "; leave one out");
                }
                entries.add(entry);
            }
            at = end + 1;
        }
        return new TextResource(name, entries);
    }

    private static Entry entry(String name, int line, String text) {
        int between = text.indexOf(BETWEEN);
        if (between < 0) {
            throw new ResourceFormatException(name, line, "is no text under a key; write it as key = text");
        }
        String key = text.substring(0, between);
        String value = text.substring(between + BETWEEN.length());
        if (!isKey(key)) {
            throw new ResourceFormatException(
                    name, line, "key " + PlainText.quoted(key) + " has other than letters, digits, points and hyphens");
        }
        if (value.isEmpty() || !value.equals(value.strip())) {
            throw new ResourceFormatException(
                    name, line, "the text of " + key + " is empty or has blanks around it; write it without them");
        }
        for (int i = 0; i < value.length(); i++) {
            if (Character.isISOControl(value.charAt(i))) {
                throw new ResourceFormatException(
                        name, line, "the text of " + key + " has a control character; lines end with a line feed only");
            }
        }
        return new Entry(key, value, line);
    }

    private static boolean isKey(String key) {
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
            if (!(letter || (c >= '0' && c <= '9') || c == '.' || c == '-')) {
                return false;
            }
        }
        return !key.isEmpty();
    }

    /**
     * Returns the name of the file.
     *
     * @return name as it was asked for
     */
    public String name() {
        return name;
    }

    /**
     * Returns the texts.
     *
     * @return in the order of the file, unmodifiable
     */
    public List<Entry> entries() {
        return entries;
    }

    /**
     * Makes the exception that says what is wrong with a text; the caller throws it.
     *
     * @param entry the text
     * @param problem what is wrong and what to do; lower-case start, no full stop
     * @return exception that names file and line
     */
    public ResourceFormatException fault(Entry entry, String problem) {
        return new ResourceFormatException(name, entry.line(), entry.key() + ": " + problem);
    }
}
