package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.program.pictures.Picture;

/**
 * A few rows of a printed table, enough to find what the question needs.
 *
 * @param title what the table shows
 * @param head column heads with units
 * @param rows numbers as printed
 * @param source where the figures come from
 * @param chart the same as a picture, where the question is to be read from one
 */
record TableExtract(String title, List<String> head, List<List<String>> rows, String source, Optional<Picture> chart) {
    TableExtract {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(chart, "chart");
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The same, to be read from a picture. */
    TableExtract drawn(Picture picture) {
        return new TableExtract(title, head, rows, source, Optional.of(picture));
    }
}
