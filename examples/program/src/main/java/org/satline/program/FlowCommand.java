package org.satline.program;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.satline.program.question.Asked;
import org.satline.program.question.FlowQuestion;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers which of two pressures flows into which. */
@Command(
        name = "flow",
        description = "Which of two pressures flows into which. Example: flow 118psig 252psig",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class FlowCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FIRST", description = "One pressure, such as 118psig.")
    private String first = "";

    @Parameters(index = "1", paramLabel = "SECOND", description = "The other one.")
    private String second = "";

    @Option(names = "--first", paramLabel = "POINT", description = "What the first is, such as low-side-port.")
    private Optional<String> firstPoint = Optional.empty();

    @Option(
            names = "--second",
            paramLabel = "POINT",
            description = "What the second is, such as recovery-cylinder-vapour-valve.")
    private Optional<String> secondPoint = Optional.empty();

    @Option(
            names = "--gauge-error",
            paramLabel = "PRESSURE",
            defaultValue = "3.5psi",
            description = "How far off each gauge may be; 3.5psi by default (California Energy Code, RA3.2).")
    private String error = "3.5psi";

    @Mixin
    private ReplyPrinter printer = new ReplyPrinter();

    /** Made by the command line library. */
    FlowCommand() {}

    @Override
    public Integer call() {
        return printer.print((air, wording) -> FlowQuestion.of(
                new FlowQuestion.End(
                        Asked.read(
                                "FIRST",
                                first,
                                text -> Pressure.parse(text, air).gauge(air)),
                        firstPoint.map(FlowQuestion::point)),
                new FlowQuestion.End(
                        Asked.read(
                                "SECOND",
                                second,
                                text -> Pressure.parse(text, air).gauge(air)),
                        secondPoint.map(FlowQuestion::point)),
                Asked.read("--gauge-error", error, PressureDifference::parse),
                air,
                wording));
    }
}
