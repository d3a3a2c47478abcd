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
import java.util.Iterator;
import java.util.List;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.satline.program.page.Escape;

/** Runs a CSV file through a function row by row, without holding it in memory, into an output that is whole or absent. */
public final class CsvReport {
    private CsvReport() {}

    /**
     * How many rows there were.
     *
     * @param rows all rows
     * @param refused those that could not be computed
     * @param quoted cells that a spreadsheet would have run as a formula and that begin with an apostrophe now
     */
    public record Count(long rows, long refused, long quoted) {}

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

    /**
     * Answers each row of the input.
     *
     * @param rows the input, open; stays open
     * @param in the path of the input, to see that the output is another file
     * @param out the output
     * @param header names of the output's columns
     * @param answer what to write for a row
     * @return how many rows were answered and refused
     * @throws BadInputException if input or output cannot be used; the output is then left as it was
     */
    public static Count write(
            CsvRows rows, Path in, Path out, List<String> header, Function<CsvRow, CsvAnswer> answer) {
        return write(
                in,
                out,
                header,
                StreamSupport.stream(Spliterators.spliteratorUnknownSize(rows, Spliterator.ORDERED), false)
                        .map(answer));
    }

    /**
     * Writes answers.
     *
     * @param in the path of the input, to see that the output is another file
     * @param out the output
     * @param header names of the output's columns
     * @param answers what to write, in order
     * @return how many rows were answered and refused
     * @throws BadInputException if the output cannot be used; it is then left as it was
     */
    public static Count write(Path in, Path out, List<String> header, Stream<CsvAnswer> answers) {
        CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true).setLineSeparator("\n");
        header.forEach(schema::addColumn);
        try (WholeFile whole = WholeFile.besides(in, out)) {
            long count = 0;
            long refused = 0;
            long quoted = 0;
            try (SequenceWriter writer = CsvMapper.builder()
                    .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                    .build()
                    .writer(schema.build())
                    .writeValues(new OutputStreamWriter(
                            new BufferedOutputStream(new LeftOpen(whole.stream())), StandardCharsets.UTF_8))) {
                for (Iterator<CsvAnswer> each = answers.iterator(); each.hasNext(); ) {
                    CsvAnswer row = each.next();
                    writer.write(row.cells().stream().map(Escape::cell).toList());
                    quoted += row.cells().stream().filter(Escape::isFormula).count();
                    count++;
                    refused += row.computed() ? 0 : 1;
                }
            }
            whole.commit();
            return new Count(count, refused, quoted);
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
    }
}
