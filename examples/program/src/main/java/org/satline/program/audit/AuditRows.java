package org.satline.program.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.audit.AuditReport;
import org.satline.audit.AuditSource.Entry;
import org.satline.audit.AuditSummary;
import org.satline.audit.Auditor;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditRow;
import org.satline.program.file.CsvRow;
import org.satline.quantity.Length;

/** Rows of answers as a file or a person's clipboard holds them. */
public final class AuditRows {
    /** Columns that there have to be. */
    public static final List<String> REQUIRED =
            List.of("id", "refrigerant", "quantity", "temperature_K", "pressure_Pa", "answer", "unit");

    /** Columns that there may be. */
    public static final List<String> OPTIONAL = List.of("altitude_m", "tolerance");

    private AuditRows() {}

    /**
     * Audits rows that are held in memory.
     *
     * @param rows rows with the columns of {@link #REQUIRED} and any of {@link #OPTIONAL}
     * @param auditor who compares
     * @return one outcome for each row, those with unreadable cells included
     */
    public static AuditReport audited(List<CsvRow> rows, Auditor auditor) {
        List<AuditOutcome> outcomes = new ArrayList<>();
        AuditSummary summary = auditor.audit(
                taker -> rows.forEach(row -> taker.accept(entry(row))), audited -> outcomes.add(audited.outcome()));
        return new AuditReport(outcomes, summary);
    }

    /**
     * Reads one row.
     *
     * @param row the cells
     * @return the row, with what cannot be read in it
     */
    public static Entry entry(CsvRow row) {
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
