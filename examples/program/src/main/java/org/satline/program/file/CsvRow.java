package org.satline.program.file;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One row of a CSV file, cells by column name. Immutable.
 *
 * @param line line of the file on which the row starts, from 1
 * @param cells cell by column name; columns that the file lacks are missing
 * @param fault what is wrong with the shape of the row, if anything
 */
public record CsvRow(long line, Map<String, String> cells, Optional<String> fault) {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

    /**
     * Copies the cells.
     *
     * @param line line of the file on which the row starts, from 1
     * @param cells cell by column name; columns that the file lacks are missing
     * @param fault what is wrong with the shape of the row, if anything
     */
    public CsvRow {
        cells = Map.copyOf(cells);
    }

    /**
     * Returns a cell as it stands, spaces included.
     *
     * @param column name of the column
     * @return the cell, empty text where the file lacks it
     */
    public String raw(String column) {
        return cells.getOrDefault(column, "");
    }

    /**
     * Returns a cell without outer spaces.
     *
     * @param column name of the column
     * @return the text, empty where the cell is
     */
    public Optional<String> text(String column) {
        return Optional.of(raw(column).strip()).filter(cell -> !cell.isEmpty());
    }

    /**
     * Returns a cell that has to be there.
     *
     * @param column name of the column
     * @return the text without outer spaces
     * @throws IllegalArgumentException if the cell is empty
     */
    public String required(String column) {
        return text(column).orElseThrow(() -> new IllegalArgumentException(column + " is empty; fill it in"));
    }

    /**
     * Returns a cell as a number.
     *
     * @param column name of the column
     * @return a finite number, empty where the cell is
     * @throws IllegalArgumentException if the cell is not a finite decimal number
     */
    public Optional<Double> number(String column) {
        return text(column).map(cell -> {
            double value = DECIMAL.matcher(cell).matches() ? Double.parseDouble(cell) : Double.NaN;
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(column + " " + Shown.quoted(cell)
                        + " is not a finite decimal number; write it like 293.15 or 1.2e5");
            }
            return value;
        });
    }
}
