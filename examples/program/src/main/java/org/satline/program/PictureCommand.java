package org.satline.program;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.satline.json.JsonFields;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.program.file.TextFile;
import org.satline.program.pictures.ComparisonPicture;
import org.satline.program.pictures.CylinderPicture;
import org.satline.program.pictures.FilledCylinder;
import org.satline.program.pictures.GlidePicture;
import org.satline.program.pictures.Picture;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.pictures.PressureEnthalpyPicture;
import org.satline.program.pictures.PressureTemperaturePicture;
import org.satline.program.pictures.TableErrorPicture;
import org.satline.program.pictures.TemperatureEntropyPicture;
import org.satline.program.print.PictureFile;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.Visit;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.VisitFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws one picture of a refrigerant into a file. */
@Command(
        name = "picture",
        description = {
            "Draws one picture as SVG, PNG or PDF, fit for print in black and white, with units and sources:",
            "  pressure-temperature  saturation pressure against temperature; with --visit its readings",
            "  pressure-enthalpy     dome, isotherms, lines of constant entropy, density and quality; with --visit the cycle of its readings",
            "  temperature-entropy   dome, isobars and lines of constant quality",
            "  comparison            saturation pressures of two to six refrigerants on one sheet",
            "  glide                 temperature glide of a blend against pressure",
            "  cylinder              pressure and liquid level of a closed cylinder against temperature",
            "  table-error           error of the stored saturation table against temperature"
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class PictureCommand implements Callable<Integer> {
    private static final String KINDS =
            "pressure-temperature, pressure-enthalpy, temperature-entropy, comparison, glide, cylinder, table-error";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "KIND", description = "One of the above.")
    private String kind = "";

    @Parameters(
            index = "1",
            arity = "0..*",
            paramLabel = "REFRIGERANT",
            description = "Such as R-410A; several for comparison; left out with --visit.")
    private List<String> refrigerants = new ArrayList<>();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT",
            description = "The file to write: .svg, .png or .pdf.")
    private Path out = Path.of("");

    @Option(names = "--units", defaultValue = "SI", description = "SI (degC, kPa; default) or US (degF, psia).")
    private UnitSystem system = UnitSystem.SI;

    @Mixin
    private LanguageOption language = new LanguageOption();

    private PictureUnits units = PictureUnits.SI;

    @Option(
            names = "--visit",
            paramLabel = "FILE",
            description = "A visit, as for the command visit; its refrigerant, readings and cylinder are drawn.")
    private Optional<Path> visit = Optional.empty();

    @Option(
            names = "--water-capacity",
            paramLabel = "MASS",
            description = "For cylinder: the stamp, such as \"47.7 lb\".")
    private Optional<String> waterCapacity = Optional.empty();

    @Option(names = "--contents", paramLabel = "MASS", description = "For cylinder: what is in it, such as \"14 lb\".")
    private Optional<String> contents = Optional.empty();

    @Option(
            names = "--service-pressure",
            paramLabel = "PRESSURE",
            description = "For cylinder: its marked service pressure, absolute, such as \"2900 kPa\".")
    private Optional<String> servicePressure = Optional.empty();

    @Option(
            names = "--test-pressure",
            paramLabel = "PRESSURE",
            description = "For cylinder: its marked test pressure, absolute, such as \"5600 kPa\".")
    private Optional<String> testPressure = Optional.empty();

    @Option(
            names = "--fill-limit",
            paramLabel = "MASS",
            description = "For cylinder: the most that it may hold by the fill rules, such as \"42 lb\".")
    private Optional<String> fillLimit = Optional.empty();

    @Option(
            names = "--altitude",
            paramLabel = "HEIGHT",
            description =
                    "For pressure-temperature: a second scale of gauge pressures at this height, such as \"310 m\".")
    private Optional<String> altitude = Optional.empty();

    /** Made by the command line library. */
    PictureCommand() {}

    @Override
    public Integer call() {
        PictureFile.named(out);
        units = PictureUnits.of(system, language.language());
        visit.ifPresent(file -> TextFile.checkApart(file, out));
        Picture picture;
        try {
            picture = drawn();
        } catch (BadInputException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
        PictureFile.write(out, picture.sheet());
        PrintWriter page = spec.commandLine().getOut();
        page.println(units.written(picture.title(), Shown.line(out.toString())));
        // a console may know no degree sign
        picture.notes().forEach(note -> page.println(note.replace("\u00b0", "deg")));
        page.flush();
        return ExitStatus.DONE;
    }

    private Picture drawn() {
        Optional<Visit> read = visit.map(PictureCommand::read);
        if (read.isPresent() == !refrigerants.isEmpty()) {
            throw new BadInputException("name either a refrigerant, such as R-410A, or --visit with a file");
        }
        boolean stated = Stream.of(waterCapacity, contents, servicePressure, testPressure, fillLimit)
                .anyMatch(Optional::isPresent);
        if (stated && (read.isPresent() || !kind.equals("cylinder"))) {
            throw new BadInputException(
                    "--water-capacity, --contents, --fill-limit and marked pressures are for the picture cylinder of a refrigerant; leave them out here");
        }
        if (kind.equals("comparison")) {
            return ComparisonPicture.of(
                    refrigerants.stream().map(PictureCommand::curve).toList(), units);
        }
        if (refrigerants.size() > 1) {
            throw new BadInputException(
                    "the picture " + kind + " is of one refrigerant; choose comparison for several");
        }
        return read.map(this::ofVisit).orElseGet(() -> of(curve(refrigerants.get(0))));
    }

    private static Visit read(Path file) {
        try {
            return VisitFile.read(JsonFields.read(TextFile.read(file)));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }

    private static SaturationCurve curve(String name) {
        return SaturationCurves.of(Catalogue.standard().find(name));
    }

    private Picture ofVisit(Visit input) {
        SaturationCurve curve = SaturationCurves.of(input.system().refrigerant());
        return switch (kind) {
            case "pressure-temperature" ->
                PressureTemperaturePicture.of(curve, input.readings(), units)
                        .orElseThrow(() -> new BadInputException(
                                "the visit holds no pressure together with the temperature of its line"));
            case "pressure-enthalpy" -> PressureEnthalpyPicture.of(curve, input.readings(), units);
            case "cylinder" ->
                CylinderPicture.of(VisitReporter.report(input), units)
                        .orElseThrow(() -> new BadInputException(
                                "the visit holds no cylinder whose contents are known by weight"));
            default -> of(curve);
        };
    }

    private Picture of(SaturationCurve curve) {
        return switch (kind) {
            case "pressure-temperature" ->
                altitude.map(height -> PressureTemperaturePicture.of(
                                curve, units, Atmosphere.atAltitude(Length.parse(height))))
                        .orElseGet(() -> PressureTemperaturePicture.of(curve, units));
            case "temperature-entropy" -> TemperatureEntropyPicture.of(curve, units);
            case "pressure-enthalpy" -> PressureEnthalpyPicture.of(curve, units);
            case "glide" -> GlidePicture.of(curve, units);
            case "cylinder" -> CylinderPicture.of(curve, cylinder(), units);
            case "table-error" -> TableErrorPicture.of(curve.refrigerant(), units);
            default -> throw new BadInputException("there is no picture \"" + kind + "\"; choose one of " + KINDS);
        };
    }

    private FilledCylinder cylinder() {
        if (waterCapacity.isEmpty() || contents.isEmpty()) {
            throw new BadInputException(
                    "the picture cylinder needs --water-capacity and --contents, such as \"47.7 lb\" and \"14 lb\"");
        }
        return FilledCylinder.stamped(
                        Mass.parse(waterCapacity.get()),
                        Mass.parse(contents.get()),
                        servicePressure.map(Pressure::parse))
                .with(fillLimit.map(Mass::parse), testPressure.map(Pressure::parse));
    }
}
