package org.satline.page;

import java.io.Serial;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.program.audit.AuditRows;
import org.satline.program.file.CsvRow;

/** Rows as they are pasted: cells between commas, or between tabulators as spreadsheets copy them; quoted cells as RFC 4180 has them. */
final class PastedRows {
    private PastedRows() {}

    /** The first line does not name the columns. */
    static final class HeaderException extends IllegalArgumentException {
        @Serial
        private static final long serialVersionUID = 1L;

        /** Which text of the page says what is wrong. */
        final String key;

        /** The column that is meant. */
        final String column;

        HeaderException(String key, String column) {
            super(key + ": " + column);
            this.key = key;
            this.column = column;
        }
    }

    /**
     * Reads rows.
     *
     * @param text lines, the first with the names of the columns
     * @return one row for each other line that is not empty
     * @throws HeaderException if the first line lacks a column, has an unknown one or one twice
     */
    static List<CsvRow> of(String text) {
        // spreadsheets put a byte order mark before what they save
        List<Line> lines = lines(text.startsWith("\ufeff") ? text.substring(1) : text);
        if (lines.isEmpty()) {
            throw new HeaderException("audit.missing", AuditRows.REQUIRED.get(0));
        }
        List<String> header = lines.get(0).cells().stream().map(String::strip).toList();
        check(header);
        List<CsvRow> rows = new ArrayList<>();
        for (Line line : lines.subList(1, lines.size())) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < Math.min(header.size(), line.cells().size()); i++) {
                cells.put(header.get(i), line.cells().get(i));
            }
            int found = line.cells().size();
            rows.add(new CsvRow(
                    line.number(),
                    cells,
                    found == header.size()
                            ? Optional.empty()
                            : Optional.of("line " + line.number() + " has " + found + " cells, the header has "
                                    + header.size())));
        }
        return rows;
    }

    private static void check(List<String> header) {
        Set<String> seen = new HashSet<>();
        for (String column : header) {
            if (!AuditRows.REQUIRED.contains(column) && !AuditRows.OPTIONAL.contains(column)) {
                throw new HeaderException("audit.unknown", column);
            } else if (!seen.add(column)) {
                throw new HeaderException("audit.twice", column);
            }
        }
        for (String column : AuditRows.REQUIRED) {
            if (!seen.contains(column)) {
                throw new HeaderException("audit.missing", column);
            }
        }
    }

    private record Line(int number, List<String> cells) {}

    private static List<Line> lines(String text) {
        int end = text.indexOf('\n');
        char between = (end < 0 ? text : text.substring(0, end)).indexOf('\t') < 0 ? ',' : '\t';
        List<Line> lines = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int line = 1;
        int began = 1;
        String whole = text.endsWith("\n") ? text : text + "\n";
        for (int i = 0; i < whole.length(); i++) {
            char c = whole.charAt(i);
            line += c == '\n' ? 1 : 0;
            if (quoted && c == '"' && whole.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"' && (quoted || cell.length() == 0)) {
                quoted = !quoted;
            } else if (!quoted && (c == between || c == '\n')) {
                cells.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    keep(lines, began, cells);
                    cells = new ArrayList<>();
                    began = line;
                }
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        if (quoted) {
            cells.add(cell.toString());
            keep(lines, began, cells);
        }
        return lines;
    }

    private static void keep(List<Line> lines, int number, List<String> cells) {
        if (cells.size() > 1 || !cells.get(0).isBlank()) {
            lines.add(new Line(number, List.copyOf(cells)));
        }
    }
}
