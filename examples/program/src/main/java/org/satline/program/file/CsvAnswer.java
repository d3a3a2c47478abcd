package org.satline.program.file;

import java.util.List;

/**
 * One row of the output of a bulk command. Immutable.
 *
 * @param cells in the order of the output's header
 * @param computed whether the row could be computed
 */
public record CsvAnswer(List<String> cells, boolean computed) {
    /** {@inheritDoc} */
    public CsvAnswer {
        cells = List.copyOf(cells);
    }
}
