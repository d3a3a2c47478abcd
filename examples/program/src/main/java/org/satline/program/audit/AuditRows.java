package org.satline.program.audit;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.audit.AuditOutcome;
import org.satline.audit.AuditOutcome.NotComparable;
import org.satline.audit.AuditOutcome.Reason;
import org.satline.audit.AuditReport;
import org.satline.audit.AuditRow;
import org.satline.audit.AuditSummary;
import org.satline.audit.Auditor;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvRow;
import org.satline.quantity.Length;

/** Has the answers of another calculator audited, row by row as a file holds them. */
public final class AuditRows {
    /** Columns that the file has to have. */
    public static final List<String> REQUIRED =
            List.of("id", "refrigerant", "quantity", "temperature_K", "pressure_Pa", "answer", "unit");

    /** Columns that it may have. */
    public static final List<String> OPTIONAL = List.of("altitude_m", "tolerance");

    /** All rows are held at once, since a cause is looked for over all of them. */
    private static final int MOST_ROWS = 200_000;

    private AuditRows() {}

    /**
     * Audits rows.
     *
     * @param file name of the file that they come from
     * @param cells rows with the columns of {@link #REQUIRED} and any of {@link #OPTIONAL}
     * @param auditor who compares
     * @return one outcome for each row, those with unreadable cells included
     * @throws BadInputException if there are no rows, or more than 200 000
     */
    public static AuditReport audited(String file, Iterator<CsvRow> cells, Auditor auditor) {
        List<AuditRow> rows = new ArrayList<>();
        List<Optional<String>> faults = new ArrayList<>();
        while (cells.hasNext()) {
            CsvRow row = cells.next();
            if (rows.size() == MOST_ROWS) {
                throw new BadInputException(file + ": has more than " + MOST_ROWS + " rows; split it");
            }
            try {
                row.fault().ifPresent(fault -> {
                    throw new IllegalArgumentException(fault + "; give each cell, empty where it has no value");
                });
                rows.add(read(row));
                faults.add(Optional.empty());
            } catch (IllegalArgumentException e) {
                rows.add(asFarAsReadable(row));
                // a row of the wrong length names its line by itself
                String line = row.fault().isPresent() ? "" : "line " + row.line() + ": ";
                faults.add(Optional.of(line + e.getMessage()));
            }
        }
        if (rows.isEmpty()) {
            throw new BadInputException(file + ": has no rows below its header; there is nothing to audit");
        }
        return merged(rows, faults, auditor);
    }

    /** The report on the readable rows, with the others put back in their places. */
    private static AuditReport merged(List<AuditRow> rows, List<Optional<String>> faults, Auditor auditor) {
        List<AuditRow> readable = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (faults.get(i).isEmpty()) {
                readable.add(rows.get(i));
            }
        }
        AuditReport report = auditor.audit(readable);
        List<AuditOutcome> outcomes = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < rows.size(); i++) {
            Optional<String> fault = faults.get(i);
            outcomes.add(
                    fault.isPresent()
                            ? new NotComparable(rows.get(i), Reason.ROW_UNREADABLE, fault.get())
                            : report.outcomes().get(next++));
        }
        AuditSummary s = report.summary();
        int unreadable = rows.size() - readable.size();
        return new AuditReport(
                outcomes,
                new AuditSummary(
                        s.within(),
                        s.outside(),
                        s.notComparable() + unreadable,
                        s.worst(),
                        s.biases(),
                        s.causes(),
                        s.unexplained()));
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
