package org.satline.program;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.satline.program.fills.FillAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes limits of cylinders in bulk. */
@Command(
        name = "fills",
        description = {
            "Computes how much cylinders may hold, in bulk.",
            "Columns in, in any order: id,refrigerant,water_capacity_kg,tare_kg,rule,maximum_temperature_K (a cell may be empty).",
            "Optional columns: service_pressure_Pa_gauge,test_pressure_Pa_gauge,specification,flammable_mark,refillable,",
            "  retest_due,fill_date,jurisdiction (us, adr).",
            "Columns out: id,refrigerant,rule,maximum_contents_kg,maximum_gross_kg,note,allowed_contents_kg.",
            "allowed_contents_kg is the smallest of what the rule and its jurisdiction allow, empty where nothing may be filled in or a",
            "  test that applies could not be made for want of data; the note then says what to supply.",
            "maximum_contents_kg is what one rule says alone, whatever was not tested, and can be more. Go by allowed_contents_kg.",
            "An empty rule means the strictest of the jurisdiction (us unless given), which is then named."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Weigh by the scale, never by feel. Local codes and the stamps on the cylinder come first."})
final class FillsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..1", paramLabel = "IN.csv", description = "The rows to answer.")
    private Optional<Path> in = Optional.empty();

    @Option(names = "--out", paramLabel = "OUT.csv", description = "Where the answers go; replaced if it exists.")
    private Optional<Path> out = Optional.empty();

    @Option(names = "--rules", description = "List the rules, one a line: name, inequality, citation.")
    private boolean rules;

    /** Made by the command line library. */
    FillsCommand() {}

    @Override
    public Integer call() {
        FillAnswers answers = new FillAnswers();
        if (rules) {
            if (in.isPresent() || out.isPresent()) {
                throw wrong("--rules takes neither IN.csv nor --out");
            }
            PrintWriter console = spec.commandLine().getOut();
            answers.rules().forEach(console::println);
            return ExitStatus.DONE;
        }
        return BulkRun.of(
                spec,
                in.orElseThrow(() -> wrong("IN.csv is missing")),
                out.orElseThrow(() -> wrong("--out=OUT.csv is missing")),
                FillAnswers.INPUT,
                FillAnswers.OPTIONAL,
                FillAnswers.OUTPUT,
                answers::answer);
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
