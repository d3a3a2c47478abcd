package org.satline.program.answers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.satline.audit.AuditSource;
import org.satline.program.audit.AuditRows;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvRows;
import org.satline.program.file.Progress;

/** The answers of another calculator, row by row as a file holds them; each reading opens the file anew. */
public final class AuditFile implements AuditSource {
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
        try (CsvRows rows = CsvRows.of(file, AuditRows.REQUIRED, AuditRows.OPTIONAL)) {
            while (rows.hasNext()) {
                taker.accept(AuditRows.entry(rows.next()));
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
}
