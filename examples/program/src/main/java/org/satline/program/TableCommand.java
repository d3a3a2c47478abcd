package org.satline.program;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.satline.program.file.BadInputException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;
import org.satline.tables.Certificate;
import org.satline.tables.PageUnits;
import org.satline.tables.TablePage;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a saturation table for the wall or a handbook. */
@Command(
        name = "table",
        description = {
            "Prints a saturation table: pressures, densities, enthalpies and entropies at even steps of temperature, with source, reference state"
                    + " and certificate in the head."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class TableCommand implements Callable<Integer> {
    /** Form of the page. */
    enum Form {
        TEXT,
        CSV
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "REFRIGERANT", description = "Such as R-410A.")
    private String refrigerant = "";

    @Option(
            names = "--from",
            defaultValue = "-40",
            paramLabel = "T",
            description = "First temperature; -40 by default.")
    private double from;

    @Option(names = "--to", defaultValue = "60", paramLabel = "T", description = "Last temperature; 60 by default.")
    private double to;

    @Option(names = "--step", defaultValue = "5", paramLabel = "T", description = "Spacing; 5 by default.")
    private double step;

    @Option(names = "--units", defaultValue = "SI", description = "SI (degC, kPa; default) or US (degF, psia).")
    private PageUnits units = PageUnits.SI;

    @Option(names = "--form", defaultValue = "TEXT", description = "TEXT (aligned; default) or CSV.")
    private Form form = Form.TEXT;

    @Option(
            names = "--errors",
            description =
                    "Print the certificate alone: the largest error of the stored table for each property and region.")
    private boolean errors;

    /** Made by the command line library. */
    TableCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try {
            Refrigerant found = Catalogue.standard().find(refrigerant);
            if (errors) {
                out.print(Certificate.of(found)
                        .map(Certificate::toText)
                        .orElseThrow(() -> new BadInputException("no table of " + found.designation()
                                + " is stored; its answers come from the equation, if it has one")));
                out.flush();
                return ExitStatus.DONE;
            }
            TablePage page = TablePage.of(SaturationCurves.of(found), units, from, to, step);
            out.print(form == Form.CSV ? page.toCsv() : page.toText());
            out.flush();
            return ExitStatus.DONE;
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }
}
