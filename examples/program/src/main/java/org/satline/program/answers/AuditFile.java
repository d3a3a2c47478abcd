package org.satline.program.answers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.satline.audit.AuditRow;
import org.satline.audit.AuditSource;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvRow;
import org.satline.program.file.CsvRows;
import org.satline.program.file.Progress;
import org.satline.quantity.Length;

/** The answers of another calculator, row by row as a file holds them; each reading opens the file anew. */
public final class AuditFile implements AuditSource {
    /** Columns that the file has to have. */
    private static final List<String> REQUIRED =
            List.of("id", "refrigerant", "quantity", "temperature_K", "pressure_Pa", "answer", "unit");

    /** Columns that it may have. */
    private static final List<String> OPTIONAL = List.of("altitude_m", "tolerance");

    private final Path file;
    private final Progress progress;
    private long known = -1;

    /**
     * Names a file.
     *
     * @param file the file, which has to be readable twice
     * @param progress told of each row
     */
    public AuditFile(Path file, Progress progress) {
        this.file = file;
        this.progress = progress;
    }

    /**
     * Hands out all rows.
     *
     * @throws BadInputException if the file cannot be read, has no rows or another number of rows than at the first reading
     */
    @Override
    public void read(Consumer<Entry> taker) {
        progress.begin(known < 0 ? "read" : "compared and counted");
        long count = 0;
        try (CsvRows rows = CsvRows.of(file, REQUIRED, OPTIONAL)) {
            while (rows.hasNext()) {
                taker.accept(entry(rows.next()));
                progress.row();
                count++;
            }
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be closed");
        }
        if (count == 0) {
            throw new BadInputException(file + ": has no rows below its header; there is nothing to audit");
        }
        if (known >= 0 && count != known) {
            throw new BadInputException(
                    file + ": had " + known + " rows, then " + count + "; it is read twice and has to stay as it is");
        }
        known = count;
    }

    private static Entry entry(CsvRow row) {
        try {
            row.fault().ifPresent(fault -> {
                throw new IllegalArgumentException(fault + "; give each cell, empty where it has no value");
            });
            return new Entry(read(row), Optional.empty());
        } catch (IllegalArgumentException e) {
            // a row of the wrong length names its line by itself
            String line = row.fault().isPresent() ? "" : "line " + row.line() + ": ";
            return new Entry(asFarAsReadable(row), Optional.of(line + e.getMessage()));
        }
    }

    private static AuditRow read(CsvRow row) {
        return new AuditRow(
                row.raw("id"),
                row.required("refrigerant"),
                row.required("quantity"),
                number(row, "temperature_K"),
                number(row, "pressure_Pa"),
                row.required("answer"),
                row.required("unit"),
                row.number("altitude_m").map(Length::ofMetres),
                number(row, "tolerance"));
    }

    private static AuditRow asFarAsReadable(CsvRow row) {
        return new AuditRow(
                row.raw("id"),
                row.raw("refrigerant"),
                row.raw("quantity"),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                row.raw("answer"),
                row.raw("unit"),
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static OptionalDouble number(CsvRow row, String column) {
        return row.number(column).stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
