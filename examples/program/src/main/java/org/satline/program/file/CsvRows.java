package org.satline.program.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.RuntimeJsonMappingException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;

/**
 * The rows of a CSV file, one at a time, cells by column name in any order. Strict about the header: an unknown, missing or
 * repeated column is an error, and so is a cell of more than 10 000 characters or a row of more than 100 000 bytes. A row with too few or
 * too many cells is handed out with its fault named. For one thread.
 */
public final class CsvRows implements Iterator<CsvRow>, AutoCloseable {
    private static final int LONGEST_CELL = 10_000;

    private final Path file;
    private final MappingIterator<String[]> rows;
    private final List<String> header;

    private CsvRows(Path file, MappingIterator<String[]> rows, List<String> header) {
        this.file = file;
        this.rows = rows;
        this.header = header;
    }

    /**
     * Opens a file and checks its header.
     *
     * @param file the file, UTF-8
     * @param required columns that have to be there
     * @param optional columns that may be missing
     * @return the rows, to be closed
     * @throws BadInputException if the file cannot be read or its header is wrong
     */
    public static CsvRows of(Path file, List<String> required, List<String> optional) {
        if (Files.isDirectory(file)) {
            throw new BadInputException(file + ": is a folder; name a CSV file");
        }
        try {
            MappingIterator<String[]> rows = CsvMapper.builder(CsvFactory.builder()
                            .streamReadConstraints(StreamReadConstraints.builder()
                                    .maxStringLength(LONGEST_CELL)
                                    .build())
                            .build())
                    .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                    .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                    .build()
                    .readerFor(String[].class)
                    .readValues(new BoundedRows(Files.newInputStream(file)));
            CsvRows opened = new CsvRows(file, rows, new ArrayList<>());
            try {
                opened.readHeader(required, optional);
                return opened;
            } catch (BadInputException e) {
                opened.close();
                throw e;
            }
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + WholeFile.reason(e) + ")");
        }
    }

    private void readHeader(List<String> required, List<String> optional) {
        List<String> allowed = new ArrayList<>(required);
        allowed.addAll(optional);
        if (!hasNext()) {
            throw new BadInputException(file + ": is empty; its first line has to be " + String.join(",", required));
        }
        Set<String> seen = new HashSet<>();
        for (String cell : nextCells()) {
            String column = cell.strip();
            if (!allowed.contains(column) && (column.indexOf(';') >= 0 || column.indexOf('\t') >= 0)) {
                String separator = column.indexOf(';') >= 0 ? "semicolons" : "tabulators";
                throw new BadInputException(file + ":1: the columns look separated by " + separator
                        + "; separate them by commas, and write decimals with a point");
            }
            if (!allowed.contains(column)) {
                throw new BadInputException(
                        file + ":1: unknown column " + Shown.quoted(column) + "; allowed: " + allowed);
            }
            if (!seen.add(column)) {
                throw new BadInputException(file + ":1: column " + Shown.quoted(column) + " stands there twice");
            }
            header.add(column);
        }
        for (String column : required) {
            if (!seen.contains(column)) {
                throw new BadInputException(
                        file + ":1: column " + Shown.quoted(column) + " is missing; required: " + required);
            }
        }
    }

    @Override
    public boolean hasNext() {
        try {
            return rows.hasNextValue();
        } catch (IOException e) {
            throw broken(e);
        }
    }

    @Override
    public CsvRow next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        long line = line();
        String[] cells = nextCells();
        Map<String, String> byName = new HashMap<>();
        for (int i = 0; i < Math.min(cells.length, header.size()); i++) {
            byName.put(header.get(i), cells[i]);
        }
        return new CsvRow(
                line, byName, cells.length == header.size() ? Optional.empty() : Optional.of(shapeOf(line, cells)));
    }

    private String shapeOf(long line, String[] cells) {
        return "line " + line + " has " + cells.length + (cells.length == 1 ? " cell" : " cells") + ", the header has "
                + header.size();
    }

    private String[] nextCells() {
        try {
            return rows.nextValue();
        } catch (IOException e) {
            throw broken(e);
        } catch (RuntimeJsonMappingException e) {
            throw new BadInputException(file + ": " + Shown.line(String.valueOf(e.getMessage())));
        }
    }

    private long line() {
        return rows.getParser().currentLocation().getLineNr();
    }

    private BadInputException broken(IOException e) {
        if (e instanceof JsonProcessingException broken) {
            JsonLocation at = broken.getLocation();
            String place = at == null ? "" : ":" + at.getLineNr();
            return new BadInputException(file + place + ": broken CSV: " + Shown.line(broken.getOriginalMessage())
                    + "; nothing was written");
        }
        return new BadInputException(file + ": cannot be read (" + WholeFile.reason(e) + ")");
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
