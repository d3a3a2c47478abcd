package org.satline.wording;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The string literals of a Java file, each with the code before it in its statement. */
final class SourceText {
    /** A literal; {@code statement} is the code from the statement's start up to it, with other literals emptied. */
    record Literal(Path file, int line, String text, String statement) {}

    private SourceText() {}

    /** Literals of all main sources of core under a package, given as {@code safety}; all of core for an empty name. */
    static List<Literal> literals(String room) {
        return literalsUnder(Path.of("src/main/java/org/satline").resolve(room));
    }

    /** The literals of every file below a folder. */
    static List<Literal> literalsUnder(Path root) {
        List<Literal> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                found.addAll(literals(file, Files.readString(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    static List<Literal> literals(Path file, String source) {
        List<Literal> found = new ArrayList<>();
        StringBuilder statement = new StringBuilder();
        int line = 1;
        for (int i = 0; i < source.length(); i++) {
            char c = source.charAt(i);
            int end = i;
            if (source.startsWith("//", i)) {
                end = source.indexOf('\n', i) - 1;
            } else if (source.startsWith("/*", i)) {
                end = source.indexOf("*/", i) + 1;
            } else if (source.startsWith("\"\"\"", i)) {
                end = source.indexOf("\"\"\"", i + 3) + 2;
                found.add(new Literal(file, line, source.substring(i + 3, end - 2), statement.toString()));
                statement.append("\"\"");
            } else if (c == '"' || c == '\'') {
                end = closing(source, i);
                if (c == '"') {
                    found.add(new Literal(file, line, source.substring(i + 1, end), statement.toString()));
                    statement.append("\"\"");
                }
            } else if (c == ';' || c == '{' || c == '}') {
                statement.setLength(0);
            } else {
                statement.append(c);
            }
            line += (int) source.substring(i, end + 1)
                    .chars()
                    .filter(each -> each == '\n')
                    .count();
            i = end;
        }
        return found;
    }

    private static int closing(String source, int open) {
        int at = open + 1;
        while (source.charAt(at) != source.charAt(open)) {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        return at;
    }
}
