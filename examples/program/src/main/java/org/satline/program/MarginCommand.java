package org.satline.program;

import java.util.concurrent.Callable;
import org.satline.charge.margin.Criterion;
import org.satline.program.question.Asked;
import org.satline.program.question.MarginQuestion;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Answers how large superheat or subcooling is by one pressure and one line temperature. */
abstract class MarginCommand implements Callable<Integer> {
    private final Criterion criterion;

    @Parameters(index = "0", paramLabel = "REFRIGERANT", description = "What is in the system, such as R-410A.")
    private String refrigerant = "";

    @Parameters(index = "1", paramLabel = "PRESSURE", description = "At the port of the line, such as 118psig.")
    private String pressure = "";

    @Parameters(index = "2", paramLabel = "TEMPERATURE", description = "Of the line at the port, such as 53degF.")
    private String temperature = "";

    @Mixin
    private ReplyPrinter printer = new ReplyPrinter();

    MarginCommand(Criterion criterion) {
        this.criterion = criterion;
    }

    @Override
    public Integer call() {
        return printer.print((air, wording) -> MarginQuestion.of(
                criterion,
                Asked.curve(refrigerant),
                Asked.read(
                        "PRESSURE", pressure, text -> Pressure.parse(text, air).gauge(air)),
                Asked.read("TEMPERATURE", temperature, Temperature::parse),
                air,
                wording));
    }
}
