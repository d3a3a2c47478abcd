package org.satline.program.file;

import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.satline.program.file.CsvReport.Count;
import org.satline.program.page.Escape;

/** A CSV file that is written row by row and is whole or absent. For one thread. */
public final class CsvOutput implements AutoCloseable {
    private final Path out;
    private final WholeFile whole;
    private final SequenceWriter writer;
    private long rows;
    private long refused;
    private long quoted;

    /** A writer that is closed must not close the draft: what it wrote is forced to the disk first. */
    private static final class LeftOpen extends FilterOutputStream {
        LeftOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    private CsvOutput(Path out, WholeFile whole, SequenceWriter writer) {
        this.out = out;
        this.whole = whole;
        this.writer = writer;
    }

    /**
     * Opens an output.
     *
     * @param in the path of the input, to see that the output is another file
     * @param out the output
     * @param header names of the output's columns
     * @return the output, to be closed
     * @throws BadInputException if the output cannot be used
     */
    public static CsvOutput of(Path in, Path out, List<String> header) {
        CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true).setLineSeparator("\n");
        header.forEach(schema::addColumn);
        WholeFile whole = WholeFile.besides(in, out);
        try {
            SequenceWriter writer = CsvMapper.builder()
                    .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                    .build()
                    .writer(schema.build())
                    .writeValues(new OutputStreamWriter(
                            new BufferedOutputStream(new LeftOpen(whole.stream())), StandardCharsets.UTF_8));
            return new CsvOutput(out, whole, writer);
        } catch (IOException e) {
            dropped(out, whole);
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
    }

    /**
     * Writes a row.
     *
     * @param row its cells
     * @throws BadInputException if it cannot be written
     */
    public void add(CsvAnswer row) {
        try {
            writer.write(row.cells().stream().map(Escape::cell).toList());
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
        quoted += row.cells().stream().filter(Escape::isFormula).count();
        rows++;
        refused += row.computed() ? 0 : 1;
    }

    /**
     * Puts the whole file in its place.
     *
     * @return how many rows there were
     * @throws BadInputException if it cannot be written; what stood there before is left
     */
    public Count commit() {
        try {
            writer.close();
            whole.commit();
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
        return new Count(rows, refused, quoted);
    }

    /** Drops the draft unless it was committed. */
    @Override
    public void close() {
        dropped(out, whole);
    }

    private static void dropped(Path out, WholeFile whole) {
        try {
            whole.close();
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be closed");
        }
    }
}
