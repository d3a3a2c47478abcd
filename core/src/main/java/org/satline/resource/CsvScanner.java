package org.satline.resource;

import java.util.ArrayList;
import java.util.List;

/** Cuts the text of a CSV file into cells (RFC 4180) and counts lines. Not thread-safe; used once. */
final class CsvScanner {
    private final String name;
    private final String text;
    private int at;
    /** Line on which the row read last starts, and the line at which reading stands. */
    private int rowLine = 1;

    private int line = 1;
    private final List<String> cells = new ArrayList<>();
    private final List<Integer> rowLines = new ArrayList<>();

    CsvScanner(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /** Passes the comment lines of the head and returns the header row. */
    String[] header() {
        if (text.startsWith("\uFEFF")) {
            throw new ResourceFormatException(name, 1, "starts with a byte order mark; save it without");
        }
        while (at < text.length() && text.charAt(at) == '#') {
            int end = text.indexOf('\n', at);
            at = end < 0 ? text.length() : end + 1;
            line++;
        }
        if (at >= text.length()) {
            throw new ResourceFormatException(name, line, "has no header row; name the columns");
        }
        return row();
    }

    List<String[]> rows(int width) {
        List<String[]> rows = new ArrayList<>();
        while (at < text.length()) {
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
            cells.add(at < text.length() && text.charAt(at) == '"' ? quoted() : plain());
        } while (separator());
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            throw new ResourceFormatException(name, rowLine, "is an empty line; remove it");
        }
        return cells.toArray(new String[0]);
    }

    private String plain() {
        int start = at;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == ',' || c == '\n' || c == '\r') {
                break;
            }
            if (c == '"') {
                throw new ResourceFormatException(
                        name, line, "quote inside a cell; quote the whole cell and double the inner quote");
            }
            at++;
        }
        if (at > start && (text.charAt(start) <= ' ' || text.charAt(at - 1) <= ' ')) {
            throw new ResourceFormatException(
                    name, line, "blank around cell \"" + text.substring(start, at) + "\"; remove or quote it");
        }
        return text.substring(start, at);
    }

    private String quoted() {
        int opened = line;
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                line += c == '\n' ? 1 : 0;
                cell.append(c);
            } else if (at < text.length() && text.charAt(at) == '"') {
                cell.append('"');
                at++;
            } else {
                return cell.toString();
            }
        }
        throw new ResourceFormatException(name, opened, "quote is not closed; add the closing quote");
    }

    /** Passes what ends a cell; true if another cell follows in the row. */
    private boolean separator() {
        if (at >= text.length()) {
            return false;
        }
        char c = text.charAt(at++);
        if (c == ',') {
            return true;
        }
        if (c == '\r' && at < text.length() && text.charAt(at) == '\n') {
            c = text.charAt(at++);
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
