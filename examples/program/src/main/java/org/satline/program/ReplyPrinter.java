package org.satline.program;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.BiFunction;
import org.satline.program.file.BadInputException;
import org.satline.program.question.Asked;
import org.satline.program.question.Reply;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Wording;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the single questions share: the air a gauge is read in, the form of the answer, and its printing. */
final class ReplyPrinter {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--altitude",
            paramLabel = "LENGTH",
            description = "Where a gauge is read, such as 310m or 1000ft; sea level by default.")
    private Optional<String> altitude = Optional.empty();

    @Option(
            names = "--barometer",
            paramLabel = "PRESSURE",
            description = "The pressure of the air on site in place of the altitude, such as 97.6kPa.")
    private Optional<String> barometer = Optional.empty();

    @Option(names = "--si", description = "SI units first.")
    private boolean si;

    @Option(names = "--json", description = "Print the answer as JSON, numbers in SI.")
    private boolean json;

    @Mixin
    private LanguageOption language = new LanguageOption();

    /** Made by the command line library. */
    ReplyPrinter() {}

    /** Prints the answer; what a room of core refuses is bad input here. */
    int print(BiFunction<Atmosphere, Wording, Reply> question) {
        Wording wording = ProgramWording.of(language.language(), si ? UnitSystem.SI : UnitSystem.US);
        Reply reply;
        try {
            reply = question.apply(Asked.air(altitude, barometer), wording);
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? reply.json(wording) : reply.text(wording));
        out.flush();
        return reply.given() ? ExitStatus.DONE : ExitStatus.SOME_ROWS_REFUSED;
    }
}
