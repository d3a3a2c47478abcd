package org.satline.program;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.program.file.TextFile;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.report.VisitHtml;
import org.satline.program.visit.ExplainPage;
import org.satline.program.visit.VisitPage;
import org.satline.program.visit.VisitReader;
import org.satline.visit.VisitInput;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads one service visit and prints one page about it. */
@Command(
        name = "visit",
        description = {
            "Reads one service visit and prints one page: saturation temperatures, superheat and subcooling, charge level with its reasons, what to"
                    + " do next, room and stop weight of the cylinder, which way refrigerant would flow, cautions."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "The file is JSON; examples/program/README.md describes it and examples/program/samples holds one."
        })
final class VisitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "The visit, a JSON file.")
    private Path file = Path.of("");

    @Mixin
    private VisitPrompt prompt = new VisitPrompt();

    @Option(names = "--explain", description = "Print how each number was found: formula, numbers with units, source.")
    private boolean explain;

    @Option(
            names = "--html",
            paramLabel = "OUT.html",
            description =
                    "Write the report with pictures and the derivation of each number as one HTML file, instead of printing the page.")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--units",
            defaultValue = "US",
            description = "Units of the pictures in the HTML file: US (degF, psia; default) or SI (degC, kPa).")
    private PictureUnits units = PictureUnits.US;

    /** Made by the command line library. */
    VisitCommand() {}

    @Override
    public Integer call() {
        Optional<Path> whole = prompt.readied(file);
        if (whole.isEmpty()) {
            return ExitStatus.SOME_ROWS_REFUSED;
        }
        file = whole.get();
        VisitReport report = reported(VisitReader.read(file));
        if (html.isPresent()) {
            return written(report, html.get());
        }
        // Laid out whole before the first line goes out, so that a fault leaves no half page.
        String page = VisitPage.of(report) + (explain ? ExplainPage.of(report.steps()) : "");
        PrintWriter out = spec.commandLine().getOut();
        out.print(page);
        out.flush();
        return ExitStatus.DONE;
    }

    private int written(VisitReport report, Path out) {
        TextFile.checkApart(file, out);
        TextFile.write(out, VisitHtml.of(report, units));
        PrintWriter page = spec.commandLine().getOut();
        page.println("report of the visit, written to " + Shown.line(out.toString()));
        page.println("charge: " + report.diagnosis().label().replace('-', ' '));
        page.flush();
        return ExitStatus.DONE;
    }

    private VisitReport reported(VisitInput visit) {
        try {
            return VisitReporter.report(visit);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }
}
