package org.satline.program.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.Function;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

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
        try (CsvOutput output = CsvOutput.of(in, out, header)) {
            answers.forEachOrdered(output::add);
            return output.commit();
        }
    }
}
