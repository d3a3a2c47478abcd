package org.satline.program;

import java.util.concurrent.Callable;
import org.satline.charge.margin.Criterion;
import org.satline.program.question.Asked;
import org.satline.program.question.MarginQuestion;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Answers how large the subcooling of one pressure and one line temperature is. */
@Command(
        name = "subcooling",
        description =
                "How far the liquid line stands below the bubble point. Example: subcooling R-410A 388psig 98degF",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SubcoolingCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "REFRIGERANT", description = "What is in the system, such as R-410A.")
    private String refrigerant = "";

    @Parameters(index = "1", paramLabel = "PRESSURE", description = "At the port of the liquid line, such as 388psig.")
    private String pressure = "";

    @Parameters(
            index = "2",
            paramLabel = "TEMPERATURE",
            description = "Of the liquid line at the port, such as 98degF.")
    private String temperature = "";

    @Mixin
    private ReplyPrinter printer = new ReplyPrinter();

    /** Made by the command line library. */
    SubcoolingCommand() {}

    @Override
    public Integer call() {
        return printer.print((air, wording) -> MarginQuestion.of(
                Criterion.SUBCOOLING,
                Asked.curve(refrigerant),
                Asked.read(
                        "PRESSURE", pressure, text -> Pressure.parse(text, air).gauge(air)),
                Asked.read("TEMPERATURE", temperature, Temperature::parse),
                air,
                wording));
    }
}
