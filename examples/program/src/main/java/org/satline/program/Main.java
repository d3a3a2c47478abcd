package org.satline.program;

import java.io.BufferedOutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.List;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.resource.ResourceFormatException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

/** The program: finds the command, runs it, and turns whatever goes wrong into one line and an exit status. */
@Command(
        name = "satline",
        description = "Refrigerant properties, charge checks and cylinder limits from published equations.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            VisitCommand.class,
            CylinderCommand.class,
            PressureCommand.class,
            SuperheatCommand.class,
            SubcoolingCommand.class,
            FlowCommand.class,
            PointsCommand.class,
            FillsCommand.class,
            VerdictsCommand.class,
            TableCommand.class,
            AuditCommand.class,
            PictureCommand.class,
            ScoreCommand.class,
            ExerciseCommand.class,
            SelfTestCommand.class
        },
        exitCodeListHeading = "Exit status:%n",
        exitCodeList = {
            "0:all was computed",
            "1:the output is whole, but some rows of it could not be computed; each says why",
            "2:the command line or a file cannot be used; nothing was written",
            "3:a fault of the program itself",
            "4:audit found answers outside their tolerance"
        },
        footer = {"", "It computes and advises; it does not replace licensed practice. Local codes come first."})
public final class Main implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    /** Made by the command line library. */
    Main() {}

    /**
     * Runs the program and ends the process.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.setProperty("java.awt.headless", "true"); // pictures are drawn without a screen
        StandardOutput output = StandardOutput.ofProcess();
        PrintWriter out = new PrintWriter(new BufferedOutputStream(output), false, Charset.defaultCharset());
        PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());
        int status = run(out, err, args);
        out.flush();
        if (output.isIncomplete()) {
            err.println("satline: the answer could not be written to standard output; what arrived there is not whole");
            status = ExitStatus.BAD_INPUT;
        }
        err.flush();
        System.exit(status);
    }

    /**
     * Runs the program.
     *
     * @param out receives the answer
     * @param err receives one line if something is wrong
     * @param args the command line
     * @return exit status
     */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(110)
                .setUsageHelpAutoWidth(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler((e, given) -> wrongUse(err, e))
                .setExecutionExceptionHandler((e, command, parsed) -> failed(err, e));
        try {
            return line.execute(args);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return failed(err, e);
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given");
    }

    private static int wrongUse(PrintWriter err, ParameterException e) {
        CommandLine command = e.getCommandLine();
        // An option that is not known hides behind the complaint about the ones that are missing.
        List<String> unknown = command.getUnmatchedArguments();
        String message = unknown.isEmpty()
                ? Shown.message(String.valueOf(e.getMessage()))
                : "unknown option, command or extra argument " + Shown.quoted(unknown.get(0));
        err.println("satline: " + message + "; see '" + command.getCommandSpec().qualifiedName() + " --help'");
        return ExitStatus.BAD_INPUT;
    }

    private static int failed(PrintWriter err, Throwable e) {
        String message = Shown.message(e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
        if (e instanceof BadInputException || e instanceof ResourceFormatException) {
            err.println("satline: " + message);
            return ExitStatus.BAD_INPUT;
        }
        err.println("satline: fault of the program, please report it: "
                + e.getClass().getSimpleName() + ": " + message);
        return ExitStatus.INTERNAL_FAULT;
    }
}
