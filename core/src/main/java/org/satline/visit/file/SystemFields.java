package org.satline.visit.file;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.SystemFeature;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.Thermometer;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;
import org.satline.step.CopperTube;
import org.satline.visit.Instruments;
import org.satline.visit.LineSet;
import org.satline.visit.ServicedSystem;
import org.satline.visit.Site;
import org.satline.visit.SystemBuild;
import org.satline.visit.SystemMode;

/** Reads the parts {@code site}, {@code system} and {@code readings}. */
final class SystemFields {
    static final List<String> SITE = List.of("name", "altitude", "barometer");
    static final List<String> SYSTEM = List.of(
            "name",
            "refrigerant",
            "metering",
            "targetSuperheat",
            "targetSubcooling",
            "fullCharge",
            "owner",
            "lineSet",
            "mode",
            "features",
            "makersTestMode",
            "evacuated");
    static final List<String> READINGS =
            List.of(Place.values()).stream().map(Place::field).toList();
    private static final List<String> LINE_SET = List.of("liquidTube", "suctionTube", "covered", "actual");
    /** Words of the trade for the two kinds of metering device. */
    private static final Map<String, MeteringDevice> METERING = metering();

    private SystemFields() {}

    private static Map<String, MeteringDevice> metering() {
        Map<String, MeteringDevice> words = new HashMap<>();
        for (String word : List.of(
                "expansion-valve", "thermostatic-expansion-valve", "electronic-expansion-valve", "txv", "tev", "eev")) {
            words.put(word, MeteringDevice.EXPANSION_VALVE);
        }
        for (String word : List.of("fixed-orifice", "orifice", "piston", "capillary", "capillary-tube")) {
            words.put(word, MeteringDevice.FIXED_ORIFICE);
        }
        return Map.copyOf(words);
    }

    static Site site(FieldReader fields) {
        String name = fields.optional("name", "boathouse", TextFields::line).orElse("");
        if (fields.has("altitude") == fields.has("barometer")) {
            throw fields.refused("give either altitude, such as \"310 m\", or barometer, such as \"97.6 kPa\"");
        }
        return fields.has("altitude")
                ? fields.value("altitude", "310 m", text -> Site.atAltitude(name, Length.parse(text)))
                : fields.value("barometer", "97.6 kPa", text -> Site.byBarometer(name, Pressure.parse(text)));
    }

    static ServicedSystem system(FieldReader fields) {
        String name = fields.optional("name", "split air conditioner", TextFields::line)
                .orElse("");
        var refrigerant = fields.value("refrigerant", "R-410A", TextFields::refrigerant);
        MeteringDevice metering = fields.optionalChoice("metering", METERING)
                .orElseThrow(() ->
                        fields.refused("metering", "is missing; expected \"expansion-valve\" or \"fixed-orifice\""));
        Optional<TemperatureDifference> superheat =
                fields.optional("targetSuperheat", "12 degF", TemperatureDifference::parse);
        Optional<TemperatureDifference> subcooling =
                fields.optional("targetSubcooling", "10 degF", TemperatureDifference::parse);
        Optional<Mass> charge = fields.optional("fullCharge", "3.2 kg", Mass::parse);
        Optional<String> owner = fields.optional("owner", "the sailing club", TextFields::line);
        Optional<LineSet> lineSet = fields.optionalObject("lineSet", LINE_SET).map(SystemFields::lineSet);
        SystemMode mode =
                fields.optionalWord("mode", List.of(SystemMode.values())).orElse(SystemMode.COOLING);
        SystemBuild build = new SystemBuild(
                fields.words("features", List.of(SystemFeature.values())),
                fields.flag("makersTestMode"),
                fields.flag("evacuated").orElse(false));
        return fields.made(() -> new ServicedSystem(
                name, refrigerant, metering, superheat, subcooling, charge, owner, lineSet, mode, build));
    }

    private static LineSet lineSet(FieldReader fields) {
        CopperTube liquid = fields.value("liquidTube", "3/8", SystemFields::tube);
        CopperTube suction = fields.value("suctionTube", "3/4", SystemFields::tube);
        Length covered = fields.value("covered", "15 ft", Length::parse);
        return fields.value("actual", "40 ft", text -> new LineSet(liquid, suction, covered, Length.parse(text)));
    }

    private static CopperTube tube(String text) {
        return CopperTube.of(text, CopperTube.Temper.ANNEALED);
    }

    static SystemReadings readings(FieldReader fields, Atmosphere site, Instruments with, SaturationCurve curve) {
        SystemReadings.Builder readings = SystemReadings.builder();
        for (Place place : Place.values()) {
            fields.optional(place.field(), place.example(), text -> readings.put(place, read(place, text, site, with)));
            if (place.kind() == Place.Kind.PRESSURE && fields.has(place.field())) {
                // asks the curve at once, so that a pressure outside of it is refused with the name of its field
                fields.optional(
                        place.field(),
                        place.example(),
                        text -> curve.glide(
                                readings.build().pressure(place).orElseThrow().value()));
            }
        }
        return readings.build();
    }

    private static Reading<?> read(Place place, String text, Atmosphere site, Instruments with) {
        return switch (place.kind()) {
            case PRESSURE -> gauge(place, with).read(TextFields.gauge(text, site), site);
            case PIPE ->
                probe(with.thermometer(), place.field())
                        .readOnPipe(
                                Temperature.parse(text),
                                place.field(),
                                with.pipeContact().kelvins());
            case AIR -> probe(with.thermometer(), place.field()).read(Temperature.parse(text), place.field());
            case DROP -> Reading.exact(PressureDifference.parse(text));
        };
    }

    private static org.satline.measurement.PressureInstrument gauge(Place place, Instruments with) {
        return place == Place.SUCTION_PRESSURE ? with.suctionGauge() : with.liquidGauge();
    }

    /**
     * A probe of its own at each place. A calibration error shared between a line and the air would cancel in superheat less target, which
     * nobody has measured; taken as independent it does not.
     */
    static Thermometer probe(Thermometer kind, String where) {
        return new Thermometer(kind.name() + " at " + where, kind.accuracy(), kind.resolutionK());
    }
}
