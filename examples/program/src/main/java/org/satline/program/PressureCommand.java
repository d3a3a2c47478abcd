package org.satline.program;

import java.util.concurrent.Callable;
import org.satline.program.question.Asked;
import org.satline.program.question.PressureQuestion;
import org.satline.quantity.Temperature;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Answers which pressure stands in a cylinder at its temperature. */
@Command(
        name = "pressure",
        description = "Which pressure stands in a cylinder at its temperature. Example: pressure R-410A 84degF",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class PressureCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "REFRIGERANT", description = "What is in it, such as R-410A.")
    private String refrigerant = "";

    @Parameters(index = "1", paramLabel = "TEMPERATURE", description = "Of the cylinder, such as 84degF.")
    private String temperature = "";

    @Mixin
    private ReplyPrinter printer = new ReplyPrinter();

    /** Made by the command line library. */
    PressureCommand() {}

    @Override
    public Integer call() {
        return printer.print((air, wording) -> PressureQuestion.of(
                Asked.curve(refrigerant), Asked.read("TEMPERATURE", temperature, Temperature::parse), air, wording));
    }
}
