package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;

/**
 * A few rows of a printed table, enough to find what the question needs.
 *
 * @param title what the table shows
 * @param head column heads with units
 * @param rows numbers as printed
 * @param source where the figures come from
 */
record TableExtract(String title, List<String> head, List<List<String>> rows, String source) {
    TableExtract {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(source, "source");
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
