package org.satline.resource;

import java.util.ArrayList;
import java.util.List;

/** Cuts the text of a CSV file into cells (RFC 4180) and counts lines. Not thread-safe; used once. */
final class CsvScanner {
    /** Bounds of a file, a row and a cell: well above every table here, and low enough to keep a broken file from filling the memory. */
    static final int MOST_BYTES = 16_000_000;

    private static final int MOST_CELLS = 200;
    private static final int MOST_CHARACTERS = 10_000;

    private final String name;
    private final String text;
    /** The same characters: reading them from an array is several times as fast before the code is compiled. */
    private final char[] chars;

    private int at;
    /** Line on which the row read last starts, and the line at which reading stands. */
    private int rowLine = 1;

    private int line = 1;
    private final List<String> cells = new ArrayList<>();
    private final List<Integer> rowLines = new ArrayList<>();

    CsvScanner(String name, String text) {
        this.name = name;
        this.text = text;
        this.chars = text.toCharArray();
    }

    /** Passes the comment lines of the head and returns the header row. */
    String[] header() {
        if (text.startsWith("\uFEFF")) {
            throw new ResourceFormatException(name, 1, "starts with a byte order mark; save it without");
        }
        while (at < chars.length && chars[at] == '#') {
            int end = text.indexOf('\n', at);
            at = end < 0 ? chars.length : end + 1;
            line++;
        }
        if (at >= chars.length) {
            throw new ResourceFormatException(name, line, "has no header row; name the columns");
        }
        return row();
    }

    List<String[]> rows(int width) {
        List<String[]> rows = new ArrayList<>();
        while (at < chars.length) {
            String[] row = row();
            if (row.length != width) {
                throw new ResourceFormatException(
                        name,
                        rowLine,
                        "has " + row.length + (row.length == 1 ? " cell" : " cells") + ", expected " + width);
            }
            rows.add(row);
            rowLines.add(rowLine);
        }
        return rows;
    }

    List<Integer> rowLines() {
        return rowLines;
    }

    /** Line on which the row read last starts. */
    int line() {
        return rowLine;
    }

    private String[] row() {
        rowLine = line;
        cells.clear();
        do {
            String cell = at < chars.length && chars[at] == '"' ? quoted() : plain();
            if (cell.length() > MOST_CHARACTERS || cells.size() == MOST_CELLS) {
                throw new ResourceFormatException(
                        name,
                        rowLine,
                        "has more than " + MOST_CELLS + " cells or a cell of more than " + MOST_CHARACTERS
                                + " characters; split it");
            }
            cells.add(cell);
        } while (separator());
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            throw new ResourceFormatException(name, rowLine, "is an empty line; remove it");
        }
        return cells.toArray(new String[0]);
    }

    private String plain() {
        int start = at;
        int end = start;
        for (; end < chars.length; end++) {
            char c = chars[end];
            if (c == ',' || c == '\n' || c == '\r') {
                break;
            }
            if (c == '"') {
                throw new ResourceFormatException(
                        name, line, "quote inside a cell; quote the whole cell and double the inner quote");
            }
        }
        at = end;
        if (at > start && (chars[start] <= ' ' || chars[at - 1] <= ' ')) {
            throw new ResourceFormatException(
                    name,
                    line,
                    "blank around cell \"" + text.substring(start, Math.min(at, start + 60))
                            + "\"; remove or quote it");
        }
        return text.substring(start, at);
    }

    private String quoted() {
        int opened = line;
        int start = at + 1;
        boolean doubled = false;
        for (int end = start; end < chars.length; end++) {
            char c = chars[end];
            if (c == '\n') {
                line++;
            } else if (c == '"' && end + 1 < chars.length && chars[end + 1] == '"') {
                doubled = true;
                end++;
            } else if (c == '"') {
                at = end + 1;
                String cell = text.substring(start, end);
                return doubled ? cell.replace("\"\"", "\"") : cell;
            }
        }
        throw new ResourceFormatException(name, opened, "quote is not closed; add the closing quote");
    }

    /** Passes what ends a cell; true if another cell follows in the row. */
    private boolean separator() {
        if (at >= chars.length) {
            return false;
        }
        char c = chars[at++];
        if (c == ',') {
            return true;
        }
        if (c == '\r' && at < chars.length && chars[at] == '\n') {
            c = chars[at++];
        }
        if (c == '\n') {
            line++;
            return false;
        }
        throw new ResourceFormatException(
                name,
                line,
                c == '\r' ? "carriage return alone; end lines with a line feed" : "text after a closing quote");
    }
}
