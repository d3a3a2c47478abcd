package org.satline.program.answers;

import java.nio.file.Path;
import java.util.Optional;
import org.satline.audit.AuditSummary;
import org.satline.audit.AuditedRow;
import org.satline.program.audit.AuditCells;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvOutput;
import org.satline.program.file.CsvReport.Count;

/** The files that an audit writes, where they are wanted. For one thread. */
public final class AuditOutputs implements AutoCloseable {
    private final Optional<CsvOutput> csv;
    private final Optional<AuditJson> json;

    private AuditOutputs(Optional<CsvOutput> csv, Optional<AuditJson> json) {
        this.csv = csv;
        this.json = json;
    }

    /**
     * Opens the outputs.
     *
     * @param in the input, to see that they are other files
     * @param csv rows as CSV, if wanted
     * @param json everything as JSON, if wanted
     * @return the outputs, to be closed
     * @throws BadInputException if one cannot be used
     */
    public static AuditOutputs of(Path in, Optional<Path> csv, Optional<Path> json) {
        Optional<CsvOutput> cells = csv.map(path -> CsvOutput.of(in, path, AuditCells.OUTPUT));
        try {
            return new AuditOutputs(cells, json.map(path -> AuditJson.of(in, path)));
        } catch (BadInputException e) {
            cells.ifPresent(CsvOutput::close);
            throw e;
        }
    }

    /**
     * Writes a row.
     *
     * @param row the row
     */
    public void add(AuditedRow row) {
        csv.ifPresent(output -> output.add(AuditCells.of(row)));
        json.ifPresent(output -> output.add(row));
    }

    /**
     * Puts the files in their places.
     *
     * @param summary the summary
     * @return counts of the CSV file, if it was wanted
     */
    public Optional<Count> commit(AuditSummary summary) {
        json.ifPresent(output -> output.commit(summary));
        return csv.map(CsvOutput::commit);
    }

    /** Drops what was not committed. */
    @Override
    public void close() {
        csv.ifPresent(CsvOutput::close);
        json.ifPresent(AuditJson::close);
    }
}
