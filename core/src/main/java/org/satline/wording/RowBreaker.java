package org.satline.wording;

import java.util.ArrayList;
import java.util.List;

/** Breaks a text into rows at blanks. */
final class RowBreaker {
    private static final String MORE = " ...";

    private RowBreaker() {}

    /** Rows of at most so many columns; what does not fit into the most rows ends in dots, at a word. */
    static List<String> rows(String text, int columns, int most) {
        List<String> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            String fitting = word.length() <= columns ? word : word.substring(0, columns - MORE.length()) + MORE;
            if (row.length() > 0 && row.length() + 1 + fitting.length() > columns) {
                rows.add(row.toString());
                row.setLength(0);
            }
            row.append(row.length() == 0 ? "" : " ").append(fitting);
        }
        rows.add(row.toString());
        return rows.size() <= most ? rows : cut(rows, columns, Math.max(1, most));
    }

    private static List<String> cut(List<String> rows, int columns, int most) {
        List<String> kept = new ArrayList<>(rows.subList(0, most));
        String last = kept.get(most - 1);
        while (last.length() + MORE.length() > columns && last.lastIndexOf(' ') > 0) {
            last = last.substring(0, last.lastIndexOf(' '));
        }
        kept.set(most - 1, last + MORE);
        return kept;
    }
}
