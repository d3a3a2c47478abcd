package org.satline.program;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.satline.explanation.Finding;
import org.satline.json.JsonFields;
import org.satline.program.file.BadInputException;
import org.satline.program.file.TextFile;
import org.satline.program.page.PageText;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.report.VisitHtml;
import org.satline.program.visit.Detail;
import org.satline.program.visit.VisitPage;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.UnitSystem;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.ReportFields;
import org.satline.visit.file.VisitFile;
import org.satline.wording.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads one service visit and says what to do next. */
@Command(
        name = "visit",
        description = {
            "Reads one service visit and says what to do next: the lines that matter, the plan step by step, what is to be supplied, and why."
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

    @Option(
            names = "--full",
            description =
                    "Print everything else too: readings, conditions, each fill rule beside the others, the closed cylinder,"
                            + " sources, all cautions.")
    private boolean full;

    @Option(
            names = "--explain",
            description =
                    "Print what --full prints, the rules that do not apply, and how each number was found: formula, numbers with"
                            + " units, source.")
    private boolean explain;

    @Option(
            names = "--json",
            paramLabel = "OUT.json",
            description = "Write the report as JSON too, for other programs; its schema is in the core jar.")
    private Optional<Path> json = Optional.empty();

    @Option(
            names = "--html",
            paramLabel = "OUT.html",
            description = "Write the page with its pictures as one HTML file too.")
    private Optional<Path> html = Optional.empty();

    @Option(
            names = "--units",
            defaultValue = "US",
            description =
                    "Units that stand first, and those of the pictures: US (degF, psig, lb; default) or SI (degC, kPa, kg).")
    private UnitSystem units = UnitSystem.US;

    @Mixin
    private LanguageOption language = new LanguageOption();

    /** Made by the command line library. */
    VisitCommand() {}

    @Override
    public Integer call() {
        Wording wording = ProgramWording.of(language.language(), units);
        Optional<Path> whole = prompt.readied(file, wording);
        if (whole.isEmpty()) {
            return ExitStatus.SOME_ROWS_REFUSED;
        }
        file = whole.get();
        json.ifPresent(out -> TextFile.checkApart(file, out));
        html.ifPresent(out -> TextFile.checkApart(file, out));
        VisitReport report = reported(read(), wording);
        Detail detail = explain ? Detail.EXPLAINED : full ? Detail.FULL : Detail.SHORT;
        // Laid out whole before the first line goes out, so that a fault leaves no half page.
        String page = PageText.of(VisitPage.blocks(report, wording, detail));
        html.ifPresent(out -> TextFile.write(
                out, VisitHtml.of(report, wording, detail, PictureUnits.of(units, language.language()))));
        json.ifPresent(out -> TextFile.write(out, JsonFields.write(ReportFields.of(report)) + "\n"));
        print(page);
        return ExitStatus.DONE;
    }

    private FieldValue.Fields read() {
        String text = TextFile.read(file);
        try {
            return JsonFields.read(text);
        } catch (IllegalArgumentException e) {
            throw unusable(e);
        }
    }

    private VisitReport reported(FieldValue.Fields fields, Wording wording) {
        try {
            return VisitReporter.report(VisitFile.read(fields));
        } catch (IllegalArgumentException e) {
            List<Finding> dangers = VisitFile.dangersInReadablePart(fields);
            if (!dangers.isEmpty()) {
                print(PageText.of(VisitPage.dangers(dangers, wording)));
            }
            throw unusable(e);
        }
    }

    private BadInputException unusable(IllegalArgumentException e) {
        return new BadInputException(file + ": " + e.getMessage());
    }

    private void print(String page) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(page);
        out.flush();
    }
}
