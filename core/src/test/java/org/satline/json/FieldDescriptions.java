package org.satline.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a field means, as the Javadoc of its record says. */
final class FieldDescriptions {
    private static final Path SOURCES = Path.of("src", "main", "java");

    private FieldDescriptions() {}

    /** The text behind {@code @param} of a component. */
    static String of(Class<?> record, String component) {
        Matcher doc = Pattern.compile(
                        "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*(?://[^\\n]*\\s*)?)*"
                                + "(?:public |private |static |protected )*record " + record.getSimpleName() + "\\b",
                        Pattern.DOTALL)
                .matcher(source(record));
        if (!doc.find()) {
            throw new IllegalStateException(record + " has no Javadoc");
        }
        Matcher param = Pattern.compile("@param " + component + "\\s+((?:(?!\\n\\s*\\* @).)*)", Pattern.DOTALL)
                .matcher(doc.group(1));
        if (!param.find()) {
            throw new IllegalStateException(record + " does not say what " + component + " is; add @param");
        }
        return param.group(1)
                .replaceAll("\\n\\s*\\*", " ")
                .replaceAll("\\{@(?:code|link|value|linkplain) ([^}]*)\\}", "$1")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static String source(Class<?> record) {
        Class<?> outermost = record;
        while (outermost.getEnclosingClass() != null) {
            outermost = outermost.getEnclosingClass();
        }
        try {
            return Files.readString(SOURCES.resolve(outermost.getName().replace('.', '/') + ".java"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
