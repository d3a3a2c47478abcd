package org.satline.program;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.filling.Stamp;
import org.satline.program.question.Asked;
import org.satline.program.question.CylinderQuestion;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers how much a cylinder may hold and the most it may weigh. */
@Command(
        name = "cylinder",
        description = {
            "How much a cylinder may hold and the most it may weigh. Example:",
            "  cylinder R-410A --tare 27.4lb --water-capacity 47.7lb --specification DOT-4BW400",
            "Without its stamps the number is that of the rules that could be applied, and the answer says that the law is not tested."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class CylinderCommand implements Callable<Integer> {
    @Parameters(paramLabel = "REFRIGERANT", description = "What shall go in, such as R-410A.")
    private String refrigerant = "";

    @Option(names = "--tare", required = true, paramLabel = "MASS", description = "Stamped TW, such as 27.4lb.")
    private String tare = "";

    @Option(
            names = "--water-capacity",
            required = true,
            paramLabel = "MASS",
            description = "Stamped WC, such as 47.7lb; or litres, such as 21.6l.")
    private String capacity = "";

    @Option(
            names = "--warmest",
            paramLabel = "TEMPERATURE",
            description = "Of the warmest place it will stand in; 130degF by default.")
    private Optional<String> warmest = Optional.empty();

    @Option(names = "--specification", paramLabel = "MARK", description = "The mark, such as DOT-4BW400.")
    private Optional<String> specification = Optional.empty();

    @Option(
            names = "--service-pressure",
            paramLabel = "PRESSURE",
            description = "Where stamped apart from the mark, such as 400psig.")
    private Optional<String> servicePressure = Optional.empty();

    @Option(names = "--test-pressure", paramLabel = "PRESSURE", description = "Such as 42barg.")
    private Optional<String> testPressure = Optional.empty();

    @Option(names = "--retest-due", paramLabel = "DATE", description = "Last day of filling, such as 2029-04-30.")
    private Optional<String> retestDue = Optional.empty();

    @Option(names = "--date", paramLabel = "DATE", description = "The day of filling, such as 2026-07-14.")
    private Optional<String> date = Optional.empty();

    @Option(
            names = "--refillable",
            arity = "1",
            paramLabel = "true|false",
            description = "Whether it may be refilled, where the mark is not known.")
    private Optional<Boolean> refillable = Optional.empty();

    @Option(
            names = "--flammable-mark",
            arity = "1",
            paramLabel = "true|false",
            description = "Whether it is marked for flammable gas.")
    private Optional<Boolean> flammable = Optional.empty();

    @Option(names = "--rules", paramLabel = "SET", description = "Set of rules: us (default) or adr.")
    private Optional<String> rules = Optional.empty();

    @Mixin
    private ReplyPrinter printer = new ReplyPrinter();

    /** Made by the command line library. */
    CylinderCommand() {}

    @Override
    public Integer call() {
        return printer.print((air, wording) -> CylinderQuestion.of(question(), wording));
    }

    private FillQuestion question() {
        FillQuestion question = FillQuestion.of(stamps(), Asked.curve(refrigerant));
        if (warmest.isPresent()) {
            question = question.warmestAt(Asked.read("--warmest", warmest.get(), Temperature::parse));
        }
        if (date.isPresent()) {
            question = question.on(Asked.read("--date", date.get(), CylinderCommand::day));
        }
        if (rules.isPresent()) {
            question = question.under(Asked.read("--rules", rules.get(), FillRules.standard()::jurisdiction));
        }
        return question;
    }

    private CylinderStamps stamps() {
        Mass empty = Asked.read("--tare", tare, Mass::parse);
        CylinderStamps stamps = Asked.read(
                "--water-capacity",
                capacity,
                text -> Asked.waterCapacity(text) instanceof Volume volume
                        ? CylinderStamps.of(empty, volume)
                        : CylinderStamps.of(empty, Mass.parse(text)));
        stamps = stamped(
                stamps,
                Stamp.SPECIFICATION,
                specification.map(each -> Asked.read("--specification", each, CylinderSpecification::parse)));
        stamps = stamped(
                stamps,
                Stamp.SERVICE_PRESSURE,
                servicePressure.map(each -> Asked.read("--service-pressure", each, GaugePressure::parse)));
        stamps = stamped(
                stamps,
                Stamp.TEST_PRESSURE,
                testPressure.map(each -> Asked.read("--test-pressure", each, GaugePressure::parse)));
        stamps = stamped(
                stamps,
                Stamp.RETEST_DUE,
                retestDue.map(each -> Asked.read("--retest-due", each, CylinderCommand::day)));
        stamps = stamped(stamps, Stamp.REFILLABLE, refillable);
        return stamped(stamps, Stamp.FLAMMABLE_MARK, flammable);
    }

    private static CylinderStamps stamped(CylinderStamps stamps, Stamp stamp, Optional<?> value) {
        return value.isPresent() ? stamps.with(stamp, value.get()) : stamps;
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("is no date; write year, month and day like 2026-07-14", e);
        }
    }
}
