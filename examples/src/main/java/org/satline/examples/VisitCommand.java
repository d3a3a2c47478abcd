package org.satline.examples;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.satline.examples.file.BadInputException;
import org.satline.examples.visit.ExplainPage;
import org.satline.examples.visit.VisitPage;
import org.satline.examples.visit.VisitReader;
import org.satline.visit.VisitInput;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import picocli.CommandLine.Command;
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
        footer = {"", "The file is JSON; examples/README.md describes it and examples/samples holds one."})
final class VisitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The visit, a JSON file.")
    private Path file = Path.of("");

    @Option(names = "--explain", description = "Print how each number was found: formula, numbers with units, source.")
    private boolean explain;

    /** Made by the command line library. */
    VisitCommand() {}

    @Override
    public Integer call() {
        VisitReport report = reported(VisitReader.read(file));
        // Laid out whole before the first line goes out, so that a fault leaves no half page.
        String page = VisitPage.of(report) + (explain ? ExplainPage.of(report.steps()) : "");
        PrintWriter out = spec.commandLine().getOut();
        out.print(page);
        out.flush();
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
