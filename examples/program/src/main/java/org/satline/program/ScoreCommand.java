package org.satline.program;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.satline.program.file.BadInputException;
import org.satline.program.proof.Proof;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints what verdict and advice are worth on simulated visits. */
@Command(
        name = "score",
        description = {
            "Simulates service visits with known truth and prints how often the verdict is right, how reliable its probabilities are, and how the advice"
                    + " on the next step compares with equal shots and with one correction."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class ScoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--visits", defaultValue = "2000", paramLabel = "N", description = "How many; 2000 by default.")
    private int visits;

    @Option(
            names = "--seed",
            defaultValue = "1",
            paramLabel = "N",
            description = "Same seed, same visits; 1 by default.")
    private long seed;

    /** Made by the command line library. */
    ScoreCommand() {}

    @Override
    public Integer call() {
        try {
            String page = Proof.page(visits, seed);
            PrintWriter out = spec.commandLine().getOut();
            out.print(page);
            out.flush();
            return ExitStatus.DONE;
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }
}
