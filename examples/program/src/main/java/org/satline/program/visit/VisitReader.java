package org.satline.program.visit;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import org.satline.charge.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.PressureInstrument;
import org.satline.measurement.Reading;
import org.satline.measurement.Thermometer;
import org.satline.program.file.BadInputException;
import org.satline.program.file.JsonFields;
import org.satline.program.file.Shown;
import org.satline.program.visit.InstrumentReader.Instruments;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.step.CopperTube;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;
import org.satline.visit.LineSet;
import org.satline.visit.ServicedSystem;
import org.satline.visit.Site;
import org.satline.visit.VisitInput;

/** Reads the file of a visit, strictly: every fault is one line that names the file, the field, the value and what is allowed. */
public final class VisitReader {
    private static final List<String> FIELDS = List.of(
            "title",
            "date",
            "site",
            "system",
            "instruments",
            "readings",
            "conditions",
            "moved",
            "openPorts",
            "cylinder");
    private static final List<String> SITE = List.of("name", "altitude", "barometer");
    private static final List<String> SYSTEM = List.of(
            "name", "refrigerant", "metering", "targetSuperheat", "targetSubcooling", "fullCharge", "owner", "lineSet");
    private static final List<String> LINE_SET = List.of("liquidTube", "suctionTube", "covered", "actual");
    private static final List<String> READINGS = List.of(
            "suctionPressure",
            "suctionLine",
            "liquidPressure",
            "liquidLine",
            "returnDryBulb",
            "returnWetBulb",
            "supplyDryBulb",
            "outdoorAir",
            "dischargeLine",
            "suctionDrop",
            "liquidDrop");
    private static final List<String> PORT = List.of("port", "pressure");
    /** Ports of a system that a hose can hang on. */
    static final Map<String, PointKind> PORTS = Map.of(
            "high-side-liquid", PointKind.HIGH_SIDE_LIQUID_PORT,
            "high-side-vapour", PointKind.HIGH_SIDE_VAPOUR_PORT,
            "low-side", PointKind.LOW_SIDE_PORT);

    private VisitReader() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @return the visit
     * @throws org.satline.program.file.BadInputException if anything in it cannot be used
     */
    public static VisitInput read(Path file) {
        JsonFields root = JsonFields.of(file, FIELDS);
        try {
            return visit(root);
        } catch (BadInputException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw root.refused(String.valueOf(e.getMessage()));
        }
    }

    private static VisitInput visit(JsonFields root) {
        Site site = site(root.object("site", SITE));
        ServicedSystem system = system(root.object("system", SYSTEM));
        Instruments instruments = InstrumentReader.read(root.object("instruments", InstrumentReader.FIELDS));
        SaturationCurve curve = SaturationCurves.of(system.refrigerant());
        SystemReadings readings = readings(root.object("readings", READINGS), site.atmosphere(), instruments, curve);
        return new VisitInput(
                root.value("title", "what the visit is about", VisitReader::words),
                root.optionalValue("date", "2026-07-14", VisitReader::date),
                site,
                system,
                readings,
                ConditionsReader.conditions(root, site.atmosphere(), instruments),
                ConditionsReader.moved(root),
                root.has("openPorts")
                        ? statedPorts(root.objects("openPorts", PORT), site.atmosphere(), instruments)
                        : portsOf(readings),
                root.optionalObject("cylinder", CylinderReader.FIELDS)
                        .map(fields -> CylinderReader.read(fields, site.atmosphere(), instruments)));
    }

    private static Site site(JsonFields fields) {
        String name = fields.value("name", "boathouse", VisitReader::words);
        if (fields.has("altitude") == fields.has("barometer")) {
            throw fields.refused("give either altitude, such as \"310 m\", or barometer, such as \"97.6 kPa\"");
        }
        return fields.has("altitude")
                ? fields.value("altitude", "310 m", text -> Site.atAltitude(name, Length.parse(text)))
                : fields.value("barometer", "97.6 kPa", text -> Site.byBarometer(name, Pressure.parse(text)));
    }

    private static ServicedSystem system(JsonFields fields) {
        try {
            return readSystem(fields);
        } catch (BadInputException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw fields.refused(String.valueOf(e.getMessage()));
        }
    }

    private static LineSet lineSet(JsonFields fields) {
        CopperTube liquid = fields.value("liquidTube", "3/8", VisitReader::tube);
        CopperTube suction = fields.value("suctionTube", "3/4", VisitReader::tube);
        Length covered = fields.value("covered", "15 ft", Length::parse);
        return fields.value("actual", "40 ft", text -> new LineSet(liquid, suction, covered, Length.parse(text)));
    }

    private static CopperTube tube(String text) {
        return CopperTube.of(text, CopperTube.Temper.ANNEALED);
    }

    private static ServicedSystem readSystem(JsonFields fields) {
        return new ServicedSystem(
                fields.value("name", "split air conditioner", VisitReader::words),
                fields.value("refrigerant", "R-410A", VisitReader::refrigerant),
                fields.value("metering", "expansion-valve", MeteringDevice::ofLabel),
                fields.optionalValue("targetSuperheat", "12 degF", TemperatureDifference::parse),
                fields.optionalValue("targetSubcooling", "10 degF", TemperatureDifference::parse),
                fields.optionalValue("fullCharge", "3.2 kg", Mass::parse),
                fields.optionalValue("owner", "the sailing club", VisitReader::words),
                fields.optionalObject("lineSet", LINE_SET).map(VisitReader::lineSet));
    }

    private static SystemReadings readings(
            JsonFields fields, Atmosphere site, Instruments with, SaturationCurve curve) {
        SystemReadings.Builder readings = SystemReadings.builder();
        fields.optionalValue("suctionPressure", "118 psig", text -> reading(text, site, with.suctionGauge(), curve))
                .ifPresent(readings::suctionPressure);
        fields.optionalValue("liquidPressure", "388 psig", text -> reading(text, site, with.liquidGauge(), curve))
                .ifPresent(readings::liquidPressure);
        BiFunction<String, String, Optional<Reading<Temperature>>> pipe = (field, where) -> fields.optionalValue(
                field,
                "53 degF",
                text -> probe(with.thermometer(), where)
                        .readOnPipe(Temperature.parse(text), where, with.pipeContactK()));
        pipe.apply("suctionLine", "suction line").ifPresent(readings::suctionLine);
        pipe.apply("liquidLine", "liquid line").ifPresent(readings::liquidLine);
        pipe.apply("dischargeLine", "discharge line").ifPresent(readings::dischargeLine);
        BiFunction<String, String, Optional<Reading<Temperature>>> air = (field, where) -> fields.optionalValue(
                field, "78 degF", text -> probe(with.thermometer(), where).read(Temperature.parse(text), where));
        air.apply("returnDryBulb", "return air, dry bulb").ifPresent(readings::returnDryBulb);
        air.apply("returnWetBulb", "return air, wet bulb").ifPresent(readings::returnWetBulb);
        air.apply("supplyDryBulb", "supply air").ifPresent(readings::supplyDryBulb);
        air.apply("outdoorAir", "condenser air").ifPresent(readings::condenserAir);
        fields.optionalValue("suctionDrop", "2 psi", text -> readings.suctionDrop(PressureDifference.parse(text)));
        fields.optionalValue("liquidDrop", "2 psi", PressureDifference::parse).ifPresent(readings::liquidDrop);
        return readings.build();
    }

    /**
     * A probe of its own at each place. A calibration error shared between a line and the air would cancel in superheat less target, which nobody has
     * measured; taken as independent it does not.
     */
    static Thermometer probe(Thermometer kind, String where) {
        return new Thermometer(kind.name() + " at " + where, kind.accuracy(), kind.resolutionK());
    }

    /** Asks the curve at once, so that a pressure outside of it is refused with the name of its field. */
    static Reading<Pressure> reading(String text, Atmosphere site, PressureInstrument gauge, SaturationCurve curve) {
        Reading<Pressure> reading = gauge.read(gaugePressure(text, site), site);
        Objects.requireNonNull(curve.glide(reading.value()), "glide");
        return reading;
    }

    /** An absolute figure is taken back to what the gauge would have shown, since its error goes by that. */
    static GaugePressure gaugePressure(String text, Atmosphere site) {
        return Pressure.parse(text, site).gauge(site);
    }

    private static List<ConnectionPoint> statedPorts(List<JsonFields> ports, Atmosphere site, Instruments with) {
        List<ConnectionPoint> points = new ArrayList<>();
        for (JsonFields fields : ports) {
            PointKind kind = fields.choice("port", PORTS);
            PressureInstrument gauge = kind == PointKind.LOW_SIDE_PORT ? with.suctionGauge() : with.liquidGauge();
            Reading<Pressure> reading =
                    fields.value("pressure", "118 psig", text -> gauge.read(gaugePressure(text, site), site));
            points.add(point(kind, reading));
        }
        return points;
    }

    private static List<ConnectionPoint> portsOf(SystemReadings readings) {
        List<ConnectionPoint> points = new ArrayList<>();
        readings.pressure(Place.LIQUID_PRESSURE).ifPresent(reading -> points.add(point(PointKind.HIGH_SIDE_LIQUID_PORT, reading)));
        readings.pressure(Place.SUCTION_PRESSURE).ifPresent(reading -> points.add(point(PointKind.LOW_SIDE_PORT, reading)));
        return points;
    }

    private static ConnectionPoint point(PointKind kind, Reading<Pressure> reading) {
        return new ConnectionPoint(kind, reading, List.of());
    }

    /** Asks for the curve at once, so that a refrigerant without an equation is refused with the name of its field. */
    static Refrigerant refrigerant(String text) {
        return SaturationCurves.of(Catalogue.standard().find(text)).refrigerant();
    }

    static String words(String text) {
        if (text.isBlank() || text.length() > 200) {
            throw new IllegalArgumentException(
                    Shown.quoted(text) + " has " + text.length() + " characters, allowed [1, 200]");
        }
        return Shown.line(text);
    }

    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    Shown.quoted(text) + " is no date; write year, month and day like \"2026-07-14\"", e);
        }
    }
}
