package org.satline.program;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvReport;
import org.satline.program.file.CsvRow;
import org.satline.program.file.CsvRows;
import org.satline.program.file.Shown;
import org.satline.refrigerant.Catalogue;
import picocli.CommandLine.Model.CommandSpec;

/** What the bulk commands have in common: rows in, answers out, and what to tell at the end. */
final class BulkRun {
    private BulkRun() {}

    static int of(
            CommandSpec spec,
            Path in,
            Path out,
            List<String> required,
            List<String> optional,
            List<String> header,
            Function<CsvRow, CsvAnswer> answer) {
        try (CsvRows rows = CsvRows.of(in, required, optional)) {
            return told(spec, out, CsvReport.write(rows, in, out, header, answer));
        } catch (IOException e) {
            throw new BadInputException(in + ": cannot be closed");
        }
    }

    /** Says where an output differs from the input because a spreadsheet would have run it. */
    static void tellQuoted(CommandSpec spec, Path out, CsvReport.Count count) {
        if (count.quoted() > 0) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "satline: " + count.quoted() + " cells of " + Shown.line(out.toString())
                                    + " begin with an apostrophe that is not in the input: a spreadsheet would have run them as formulas");
        }
    }

    private static int told(CommandSpec spec, Path out, CsvReport.Count count) {
        tellQuoted(spec, out, count);
        if (count.refused() == 0) {
            spec.commandLine()
                    .getOut()
                    .println(count.rows() + " rows computed from data "
                            + Catalogue.standard().dataVersion() + ", written to " + Shown.line(out.toString()));
            return ExitStatus.DONE;
        }
        spec.commandLine()
                .getErr()
                .println("satline: " + count.refused() + " of " + count.rows()
                        + " rows could not be computed; the column note of " + Shown.line(out.toString())
                        + " says why");
        return ExitStatus.SOME_ROWS_REFUSED;
    }
}
