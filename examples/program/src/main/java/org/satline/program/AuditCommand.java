package org.satline.program;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.satline.audit.AuditSummary;
import org.satline.audit.Auditor;
import org.satline.program.answers.AuditFile;
import org.satline.program.answers.AuditOutputs;
import org.satline.program.audit.AuditPage;
import org.satline.program.audit.CaloricZero;
import org.satline.program.audit.RowNotes;
import org.satline.program.file.Progress;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares answers of another calculator with ours. */
@Command(
        name = "audit",
        description = {
            "Compares answers of another calculator with the equations and names the likely cause of differences.",
            "Columns in, in any order (a cell may be empty): id,refrigerant,quantity,temperature_K,pressure_Pa,answer,unit",
            "Optional columns: altitude_m (gauge units count from the standard atmosphere there; sea level by default),",
            "  tolerance (in the unit of the answer; by default the stated uncertainty of our value and the rounding of the answer).",
            "temperature_K and pressure_Pa (absolute) say what was asked; quantities are those that the",
            "command points finds on a line or of one phase: pressures, temperatures, glide, density, enthalpy, entropy,",
            "isobaric_heat_capacity and speed_of_sound.",
            "The unit is any that the library reads, gauge units included."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        exitCodeListHeading = "Exit status:%n",
        exitCodeList = {
            "0:every answer is within its tolerance",
            "1:none is outside, but some rows could not be compared",
            "2:the command line or a file cannot be used; nothing was written",
            "3:a fault of the program itself",
            "4:some answers are outside their tolerance"
        })
final class AuditCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE.csv", description = "The answers.")
    private Path file = Path.of("");

    @Option(names = "--csv", paramLabel = "OUT.csv", description = "Writes every row with our value and the outcome.")
    private @Nullable Path csv;

    @Option(names = "--json", paramLabel = "OUT.json", description = "Writes the whole audit, with all steps.")
    private @Nullable Path json;

    @Option(
            names = "--zero",
            defaultValue = "IIR",
            description =
                    "Where enthalpy and entropy of the answers count from: IIR (default), MINUS_40 (saturated liquid at"
                            + " -40 degC is 0) or BOILING (saturated liquid at its normal boiling point is 0).")
    private CaloricZero zero = CaloricZero.IIR;

    /** Made by the command line library. */
    AuditCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        RowNotes notes = new RowNotes();
        AuditSummary summary = audited(notes);
        out.print(AuditPage.of(file.toString(), summary, notes));
        out.flush();
        return status(summary);
    }

    private AuditSummary audited(RowNotes notes) {
        AuditFile rows = new AuditFile(file, new Progress(spec.commandLine().getErr()));
        try (AuditOutputs outputs = AuditOutputs.of(file, Optional.ofNullable(csv), Optional.ofNullable(json))) {
            AuditSummary summary = Auditor.of(zero.state()).audit(rows, row -> {
                notes.add(row);
                outputs.add(row);
            });
            outputs.commit(summary).ifPresent(count -> BulkRun.tellQuoted(spec, Objects.requireNonNull(csv), count));
            return summary;
        }
    }

    private static int status(AuditSummary summary) {
        if (summary.outside() > 0) {
            return ExitStatus.ANSWERS_OUTSIDE;
        }
        return summary.notComparable() > 0 ? ExitStatus.SOME_ROWS_REFUSED : ExitStatus.DONE;
    }
}
