package org.satline.resource;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.satline.quantity.Parts;

/**
 * A printed two-way table in whole steps, some of its cells a dash. Values between printed cells by linear interpolation in both
 * directions; nothing across a dash or outside. Immutable, thread-safe.
 */
public final class PrintedGrid {
    /**
     * A reading that close to a printed line is on it: a unit conversion may not push a printed cell across its edge. In units of the
     * table.
     */
    private static final double SNAP = 0.005;

    private final double[] rows;
    private final double[] columns;
    /** NaN for a dash; never leaves this class. */
    private final double[][] values;

    private PrintedGrid(double[] rows, double[] columns, double[][] values) {
        this.rows = rows;
        this.columns = columns;
        this.values = values;
    }

    /** What the table says at a point. */
    public sealed interface Lookup permits Value, Outside, Dash {}

    /**
     * A value.
     *
     * @param value interpolated between printed cells
     * @param rowSlope its change by one unit down the rows
     * @param columnSlope its change by one unit along the columns
     */
    public record Value(double value, double rowSlope, double columnSlope) implements Lookup {
        /** {@inheritDoc} */
        public Value {
            Parts.numbers("value rowSlope columnSlope", value, rowSlope, columnSlope);
        }
    }

    /** The point lies outside the table. */
    public record Outside() implements Lookup {}

    /** The point touches a dash. */
    public record Dash() implements Lookup {}

    /**
     * Reads a table whose first column is called {@code row} and whose others are called by their figure.
     *
     * @param neighbour class in whose package the resource stands
     * @param resource its name
     * @param firstColumn figure of the first column
     * @param lastColumn figure of the last column
     * @param step from column to column
     * @return the table
     * @throws ResourceFormatException if it is broken
     */
    public static PrintedGrid read(Class<?> neighbour, String resource, int firstColumn, int lastColumn, int step) {
        Parts.required("neighbour resource", neighbour, resource);
        double[] columns = IntStream.rangeClosed(0, (lastColumn - firstColumn) / step)
                .mapToDouble(j -> firstColumn + (double) step * j)
                .toArray();
        String[] names = new String[columns.length + 1];
        names[0] = "row";
        for (int j = 0; j < columns.length; j++) {
            names[j + 1] = Integer.toString((int) columns[j]);
        }
        List<CsvResource.Row> printed =
                CsvResource.read(neighbour, resource, names).rows();
        double[] rows = new double[printed.size()];
        double[][] values = new double[rows.length][columns.length];
        for (int i = 0; i < rows.length; i++) {
            CsvResource.Row row = printed.get(i);
            rows[i] = row.number("row");
            if (i > 0 && !(rows[i] > rows[i - 1])) {
                throw row.fault("rows must rise");
            }
            for (int j = 0; j < columns.length; j++) {
                values[i][j] = row.cell(names[j + 1]).equals("-") ? Double.NaN : row.number(names[j + 1]);
            }
        }
        return new PrintedGrid(rows, columns, values);
    }

    /**
     * The first row.
     *
     * @return its figure
     */
    public double firstRow() {
        return rows[0];
    }

    /**
     * The last row.
     *
     * @return its figure
     */
    public double lastRow() {
        return rows[rows.length - 1];
    }

    /**
     * The first column.
     *
     * @return its figure
     */
    public double firstColumn() {
        return columns[0];
    }

    /**
     * The last column.
     *
     * @return its figure
     */
    public double lastColumn() {
        return columns[columns.length - 1];
    }

    /**
     * What the table says at a point.
     *
     * @param rowReading figure down the rows
     * @param columnReading figure along the columns
     * @return a value, or why there is none
     */
    public Lookup at(double rowReading, double columnReading) {
        double row = snapped(rowReading, rows);
        double column = snapped(columnReading, columns);
        if (!holds(row, column)) {
            return new Outside();
        }
        double value = interpolated(row, column);
        if (Double.isNaN(value)) {
            return new Dash();
        }
        return new Value(
                value,
                slope(row, rows, r -> interpolated(r, column)),
                slope(column, columns, c -> interpolated(row, c)));
    }

    private boolean holds(double row, double column) {
        return row >= firstRow() && row <= lastRow() && column >= firstColumn() && column <= lastColumn();
    }

    private double interpolated(double row, double column) {
        int i = below(row, rows);
        int j = below(column, columns);
        // A weight of zero must not touch the neighbour: it may be a dash or not exist.
        double low = alongColumns(i, j, column);
        return row == rows[i]
                ? low
                : low + (alongColumns(i + 1, j, column) - low) * (row - rows[i]) / (rows[i + 1] - rows[i]);
    }

    private double alongColumns(int i, int j, double column) {
        double left = values[i][j];
        return column == columns[j]
                ? left
                : left + (values[i][j + 1] - left) * (column - columns[j]) / (columns[j + 1] - columns[j]);
    }

    /** Slope between the printed lines around a point; on a printed line over both neighbours, or over the one that is printed. */
    private static double slope(double at, double[] lines, java.util.function.DoubleUnaryOperator value) {
        int i = below(at, lines);
        double low = at;
        double high = at;
        if (at != lines[i]) {
            low = lines[i];
            high = lines[i + 1];
        } else {
            if (i > 0 && !Double.isNaN(value.applyAsDouble(lines[i - 1]))) {
                low = lines[i - 1];
            }
            if (i + 1 < lines.length && !Double.isNaN(value.applyAsDouble(lines[i + 1]))) {
                high = lines[i + 1];
            }
        }
        return high > low ? (value.applyAsDouble(high) - value.applyAsDouble(low)) / (high - low) : 0;
    }

    /**
     * The printed cells that a value comes from.
     *
     * @param rowReading figure down the rows, within the table
     * @param columnReading figure along the columns, within the table
     * @return row, column and figure of each
     */
    public String cells(double rowReading, double columnReading) {
        double row = snapped(rowReading, rows);
        double column = snapped(columnReading, columns);
        if (!holds(row, column)) {
            throw new IllegalArgumentException("row " + rowReading + ", column " + columnReading
                    + " is outside the printed table; ask at() first");
        }
        int i = below(row, rows);
        int j = below(column, columns);
        StringBuilder text = new StringBuilder();
        for (int r = i; r <= (row == rows[i] ? i : i + 1); r++) {
            for (int c = j; c <= (column == columns[j] ? j : j + 1); c++) {
                text.append(text.length() == 0 ? "" : ", ")
                        .append(String.format(Locale.ROOT, "(%.0f, %.0f): %s", rows[r], columns[c], values[r][c]));
            }
        }
        return text.toString();
    }

    private static int below(double at, double[] lines) {
        int found = Arrays.binarySearch(lines, at);
        return found >= 0 ? found : -found - 2;
    }

    private static double snapped(double at, double[] lines) {
        for (double line : lines) {
            if (Math.abs(at - line) <= SNAP) {
                return line;
            }
        }
        return at;
    }
}
