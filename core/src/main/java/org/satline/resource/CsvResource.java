package org.satline.resource;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;

/**
 * A small table read from a CSV file in the jar. Immutable, thread-safe.
 *
 * <p>Form: UTF-8; comment lines that start with {@code #} at the head of the file only; then one header row; then the data. Cells are
 * separated by commas and may be quoted as in RFC 4180. Columns are found by name, in any order. Everything else is refused with file
 * and line: an unknown, missing or repeated column, a row with too few or too many cells, an empty line, blanks around a cell, a
 * stray quote, a number that is not finite.
 *
 * <p>It is written for a cold virtual machine: no regular expressions, no reflection, no lambdas.
 */
public final class CsvResource {
    /** Stands where bytes were not UTF-8. */
    private static final char REPLACEMENT = '\uFFFD';

    private static final String[] NONE = {};

    private final String name;
    /** Position of each column; a hash map finds it with one comparison, which counts before the code is compiled. */
    private final Map<String, Integer> columns = new LinkedHashMap<>();

    private final String[] optional;
    private final List<Row> rows;

    private CsvResource(String name, String[] columns, String[] optional, List<String[]> cells, List<Integer> lines) {
        this.name = name;
        this.optional = optional;
        for (int i = 0; i < columns.length; i++) {
            this.columns.put(columns[i], i);
        }
        Row[] all = new Row[cells.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = new Row(this, cells.get(i), lines.get(i));
        }
        this.rows = List.of(all);
    }

    /**
     * Reads a CSV file that lies beside a class.
     *
     * @param neighbour a class in the package of the file
     * @param name file name, relative to that package
     * @param columns the names of all columns, in any order
     * @return the table
     * @throws ResourceFormatException if the file is missing, cannot be read or does not have the documented form
     */
    public static CsvResource read(Class<?> neighbour, String name, String... columns) {
        Parts.required("neighbour name columns", neighbour, name, columns);
        return parse(name, SealedResources.core().bytes(neighbour, name), columns);
    }

    /**
     * Same from the bytes of a file.
     *
     * @param name file name, for messages
     * @param utf8 whole file
     * @param columns the names of all columns, in any order
     * @return the table
     * @throws ResourceFormatException if the file does not have the documented form
     */
    public static CsvResource parse(String name, byte[] utf8, String... columns) {
        return parse(name, utf8, columns, NONE);
    }

    /**
     * Same where some columns may be left out; their cells are then empty.
     *
     * @param name file name, for messages
     * @param utf8 whole file
     * @param columns the names of the columns that must be there
     * @param optional the names of those that may be
     * @return the table
     * @throws ResourceFormatException if the file does not have the documented form
     */
    public static CsvResource parse(String name, byte[] utf8, String[] columns, String[] optional) {
        Parts.required("name utf8 columns optional", name, utf8, columns, optional);
        if (utf8.length > CsvScanner.MOST_BYTES) {
            throw new ResourceFormatException(
                    name, 0, "has " + utf8.length + " bytes; at most " + CsvScanner.MOST_BYTES + " are read");
        }
        CsvScanner scanner = new CsvScanner(name, decode(name, utf8));
        String[] header = scanner.header();
        checkHeader(name, scanner.line(), header, columns, optional);
        return new CsvResource(name, header, optional, scanner.rows(header.length), scanner.rowLines());
    }

    static String decode(String name, byte[] utf8) {
        String text = new String(utf8, StandardCharsets.UTF_8);
        return text.indexOf(REPLACEMENT) < 0 ? text : decodeStrictly(name, utf8);
    }

    /** Several times as slow before the code is compiled, so only where the text may hold what is not UTF-8. */
    private static String decodeStrictly(String name, byte[] utf8) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(utf8))
                    .toString();
        } catch (CharacterCodingException e) {
            ResourceFormatException broken = new ResourceFormatException(name, 0, "is not UTF-8; save it as UTF-8");
            broken.initCause(e);
            throw broken;
        }
    }

    private static void checkHeader(String name, int line, String[] header, String[] expected, String[] optional) {
        for (int i = 0; i < header.length; i++) {
            if (indexOf(expected, header[i]) < 0 && indexOf(optional, header[i]) < 0) {
                throw new ResourceFormatException(
                        name,
                        line,
                        "unknown column " + PlainText.quoted(header[i]) + "; expected " + String.join(", ", expected));
            }
            if (indexOf(header, header[i]) != i) {
                throw new ResourceFormatException(
                        name, line, "column " + PlainText.quoted(header[i]) + " stands twice; leave one out");
            }
        }
        for (String column : expected) {
            if (indexOf(header, column) < 0) {
                throw new ResourceFormatException(name, line, "column \"" + column + "\" is missing; add it");
            }
        }
    }

    private static int indexOf(String[] names, String wanted) {
        for (int i = 0; i < names.length; i++) {
            if (names[i].equals(wanted)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Returns the name of the file.
     *
     * @return name as it was asked for
     */
    public String name() {
        return name;
    }

    /**
     * Returns the data rows.
     *
     * @return rows in the order of the file, unmodifiable
     */
    public List<Row> rows() {
        return rows;
    }

    /** One data row. Immutable, thread-safe. */
    public static final class Row {
        private final CsvResource table;
        private final String[] cells;
        private final int line;

        private Row(CsvResource table, String[] cells, int line) {
            this.table = table;
            this.cells = cells;
            this.line = line;
        }

        /**
         * Returns where the row starts in the file.
         *
         * @return line number, counted from 1
         */
        public int line() {
            return line;
        }

        /**
         * Tells whether a cell is empty.
         *
         * @param column name of the column
         * @return true if nothing stands in the cell
         */
        public boolean isEmpty(String column) {
            return cell(column).isEmpty();
        }

        /**
         * Returns a cell as it stands.
         *
         * @param column name of the column
         * @return the text, without quotes; may be empty
         */
        public String cell(String column) {
            Integer i = table.columns.get(Objects.requireNonNull(column, "column"));
            if (i == null) {
                if (indexOf(table.optional, column) >= 0) {
                    return "";
                }
                throw new IllegalArgumentException(table.name + " has no column \"" + column + "\"; its columns are "
                        + String.join(", ", table.columns.keySet()));
            }
            return cells[i];
        }

        /**
         * Returns a cell that must not be empty.
         *
         * @param column name of the column
         * @return the text
         * @throws ResourceFormatException if the cell is empty
         */
        public String text(String column) {
            String text = cell(column);
            if (text.isEmpty()) {
                throw fault(column + " is empty; give a value");
            }
            return text;
        }

        /**
         * Returns a number.
         *
         * @param column name of the column
         * @return the number, finite
         * @throws ResourceFormatException if the cell is empty or not a finite decimal number
         */
        public double number(String column) {
            return decimal(column, 0);
        }

        /**
         * Returns a number that is printed in per cent, as a fraction: 68.9 gives exactly the double 0.689.
         *
         * @param column name of the column
         * @return the fraction, finite
         * @throws ResourceFormatException if the cell is empty or not a finite decimal number
         */
        public double percent(String column) {
            // moving the decimal point in the text avoids the rounding of a second division
            return decimal(column, 2);
        }

        /**
         * Returns a number if there is one.
         *
         * @param column name of the column
         * @return the number, finite; nothing if the cell is empty
         * @throws ResourceFormatException if the cell is neither empty nor a finite decimal number
         */
        public OptionalDouble optionalNumber(String column) {
            return isEmpty(column) ? OptionalDouble.empty() : OptionalDouble.of(number(column));
        }

        /**
         * Makes the exception that says what is wrong in this row; the caller throws it.
         *
         * @param problem what is wrong and what to do; lower-case start, no full stop
         * @return exception that names file and line
         */
        public ResourceFormatException fault(String problem) {
            return new ResourceFormatException(table.name, line, problem);
        }

        private double decimal(String column, int shift) {
            String text = text(column);
            if (text.length() > DecimalText.MOST_CHARACTERS) {
                throw fault(column + " has " + text.length() + " characters; a number has at most "
                        + DecimalText.MOST_CHARACTERS);
            }
            double value = DecimalText.parse(text, shift);
            if (Double.isNaN(value)) {
                throw fault(column + " \"" + text + "\" is not a number; "
                        + (text.indexOf(',') >= 0 ? "use a point as decimal mark" : "give a finite decimal number"));
            }
            return value;
        }
    }
}
