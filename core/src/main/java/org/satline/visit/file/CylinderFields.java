package org.satline.visit.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Valve;
import org.satline.cylinder.Weighing;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.filling.Provenance;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.measurement.WeighingScale;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Refrigerant;
import org.satline.visit.HookUpFacts;
import org.satline.visit.HookUpFacts.HoseOnSite;
import org.satline.visit.Instruments;

/** Reads a cylinder: {@code cylinder}, or one of {@code cylinders}. */
final class CylinderFields {
    static final List<String> NAMES = Stream.concat(
                    Stream.of(Stamp.values()).map(Stamp::field),
                    Stream.of(
                            "name",
                            "role",
                            "valve",
                            "inverted",
                            "holding",
                            "temperature",
                            "pressure",
                            "scaleReading",
                            "grossBefore",
                            "hanging",
                            "hoseContents",
                            "fillRules",
                            "warmest",
                            "atRest",
                            "owner",
                            "provenance",
                            "hoses"))
            .distinct()
            .toList();

    private static final Map<String, Role> ROLES = Map.of("receiver", Role.RECEIVER, "source", Role.SOURCE);
    private static final Map<String, CylinderValve> VALVES = Map.of(
            "recovery-vapour", new CylinderValve(Optional.of(Role.RECEIVER), Valve.VAPOUR),
            "recovery-liquid", new CylinderValve(Optional.of(Role.RECEIVER), Valve.LIQUID),
            "source-vapour", new CylinderValve(Optional.of(Role.SOURCE), Valve.VAPOUR),
            "source-liquid", new CylinderValve(Optional.of(Role.SOURCE), Valve.LIQUID),
            "vapour", new CylinderValve(Optional.empty(), Valve.VAPOUR),
            "liquid", new CylinderValve(Optional.empty(), Valve.LIQUID));
    private static final Map<String, Provenance> PROVENANCES = Map.of(
            "new", Provenance.NEW,
            "reclaimed", Provenance.RECLAIMED,
            "recovered", Provenance.RECOVERED,
            "mixed-recovered", Provenance.MIXED_RECOVERED);
    /** What a hose is said to hold may be this many times what its size allows: bores are seldom known well; our choice. */
    private static final double MOST_OF_GEOMETRY = 3;

    private static final double LARGEST_KG = 10_000;
    /** Hoses with their valves weigh less; common practice, no source. */
    private static final double MOST_HANGING_KG = 3;

    /** A valve of the file: which cylinder it is on, where its word says so, and what it leads to. */
    private record CylinderValve(Optional<Role> role, Valve valve) {}

    private CylinderFields() {}

    static Cylinder read(
            FieldReader fields, Atmosphere site, Instruments with, Refrigerant inSystem, List<HoseOnSite> hoses) {
        String name = fields.optional("name", "recovery cylinder no. 4", TextFields::line)
                .orElse(fields.path());
        CylinderValve valve = fields.choice("valve", VALVES);
        CylinderStamps stamps = stamps(fields);
        Optional<Refrigerant> label = fields.optional("holding", "R-410A", TextFields::refrigerant);
        Reading<Temperature> temperature = fields.value(
                "temperature", "84 degF", text -> with.thermometer().read(Temperature.parse(text), fields.path()));
        Optional<Reading<Pressure>> pressure = fields.optional(
                "pressure", "252 psig", text -> with.suctionGauge().read(TextFields.gauge(text, site), site));
        Temperature warmest =
                fields.optional("warmest", "130 degF", Temperature::parse).orElse(FillQuestion.USUAL_MAXIMUM);
        var rules = fields.optional("fillRules", "us", FillRules.standard()::jurisdiction)
                .orElseGet(FillRules.standard()::defaultJurisdiction);
        return fields.made(() -> new Cylinder(
                name,
                fields.path(),
                role(fields, valve),
                valve.valve(),
                fields.flag("inverted").orElse(false),
                stamps,
                label,
                fields.optionalChoice("provenance", PROVENANCES),
                fields.optional("owner", "the sailing club", TextFields::line),
                temperature,
                pressure,
                fields.flag("atRest").orElse(true),
                weighing(fields, with),
                warmest,
                rules,
                hoseContents(fields, inSystem, temperature.value(), hoses)));
    }

    /** As stated, else by the word of the valve; the two never contradict each other. */
    private static Role role(FieldReader fields, CylinderValve valve) {
        Optional<Role> stated = fields.optionalChoice("role", ROLES);
        if (stated.isEmpty() && valve.role().isEmpty()) {
            throw fields.refused("role", "is missing; say receiver or source, or take a valve word that says it");
        }
        if (stated.isPresent() && valve.role().isPresent() && !stated.equals(valve.role())) {
            throw fields.refused(
                    "role",
                    "\"" + word(ROLES, stated.get()) + "\" contradicts the valve \"" + word(VALVES, valve)
                            + "\"; correct one of the two");
        }
        return stated.or(valve::role).orElseThrow();
    }

    private static <T> String word(Map<String, T> words, T value) {
        return words.entrySet().stream()
                .filter(each -> each.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static CylinderStamps stamps(FieldReader fields) {
        Mass tare = fields.value("tare", "27.4 lb", Mass::parse);
        CylinderStamps stamps = fields.value("waterCapacity", "47.7 lb", text -> capacity(tare, text));
        for (Stamp stamp : Stamp.values()) {
            if (stamp == Stamp.TARE || stamp == Stamp.WATER_CAPACITY) {
                continue;
            }
            CylinderStamps before = stamps;
            if (stamp.type() == Boolean.class) {
                stamps = fields.flag(stamp.field())
                        .map(flag -> before.with(stamp, flag))
                        .orElse(before);
            } else {
                stamps = fields.optional(
                                stamp.field(), stamp.example(), text -> before.with(stamp, parsed(stamp, text)))
                        .orElse(before);
            }
        }
        return stamps;
    }

    private static Object parsed(Stamp stamp, String text) {
        if (stamp.type() == CylinderSpecification.class) {
            return CylinderSpecification.parse(text);
        } else if (stamp.type() == GaugePressure.class) {
            return GaugePressure.parse(text);
        } else if (stamp.type() == Mass.class) {
            return Mass.parse(text);
        }
        return TextFields.date(text);
    }

    /** A mass of water, or a volume in litres. */
    private static CylinderStamps capacity(Mass tare, String text) {
        return text.strip().matches("[0-9.]+ ?(?:[lL]|litres?|liters?)")
                ? CylinderStamps.of(tare, Volume.parse(text))
                : CylinderStamps.of(tare, Mass.parse(text));
    }

    private static Optional<Weighing> weighing(FieldReader fields, Instruments with) {
        if (!fields.has("scaleReading")) {
            return Optional.empty(); // what the scale shows is then asked for
        }
        WeighingScale scale = with.scale()
                .orElseThrow(() -> fields.refused("scaleReading", "stands there, but instruments.scale does not"));
        Mass hanging = fields.optional("hanging", "0.4 lb", text -> hanging(Mass.parse(text)))
                .orElse(Mass.ZERO);
        if (!fields.has("grossBefore")) {
            Mass shown = fields.value("scaleReading", "41.35 lb", text -> bounded(Mass.parse(text)));
            return Optional.of(new Weighing.Gross(weighed(shown, scale, Mass.ZERO, shown), hanging));
        }
        Mass before = fields.value("grossBefore", "41.35 lb", text -> bounded(Mass.parse(text)));
        MassDifference since = fields.value("scaleReading", "-0.55 lb", MassDifference::parse);
        if (!(before.kilograms() + since.kilograms() > 0)) {
            throw fields.refused(
                    "scaleReading",
                    "\"" + since + "\" takes more off than the " + before + " that stood there before; check the sign");
        }
        double u = scale.standardUncertaintyOfChangeKg(Mass.ZERO, Mass.ofKilograms(Math.abs(since.kilograms())));
        return Optional.of(new Weighing.SinceZero(
                weighed(before, scale, Mass.ZERO, before), Reading.of(since, u, scale.name()), hanging));
    }

    /** What hangs is taken off the weight: more than hoses weigh would pass for room. */
    private static Mass hanging(Mass mass) {
        if (!(mass.kilograms() <= MOST_HANGING_KG)) {
            throw new IllegalArgumentException(
                    mass + " is outside [0, 3] kg; hoses and their valves weigh less: check its unit");
        }
        return mass;
    }

    private static Mass bounded(Mass mass) {
        if (!(mass.kilograms() <= LARGEST_KG)) {
            throw new IllegalArgumentException(mass + " is outside [0, 10000] kg; check its unit");
        }
        return mass;
    }

    private static Reading<Mass> weighed(Mass shown, WeighingScale scale, Mass from, Mass to) {
        return Reading.of(shown, scale.standardUncertaintyOfChangeKg(from, to), scale.name());
    }

    /** As stated, else what the hoses hold full of liquid. */
    private static Mass hoseContents(
            FieldReader fields, Refrigerant inSystem, Temperature temperature, List<HoseOnSite> hoses) {
        Mass byGeometry = HookUpFacts.liquidIn(hoses, inSystem, temperature);
        Optional<Mass> stated = fields.optional("hoseContents", "0.2 lb", Mass::parse);
        if (stated.isPresent()
                && !hoses.isEmpty()
                && stated.get().kilograms() > MOST_OF_GEOMETRY * byGeometry.kilograms() + 0.05) {
            throw fields.refused(
                    "hoseContents",
                    stated.get() + " is more than hoses of that size hold, at most " + byGeometry
                            + " of liquid; check its unit, and bore and length of the hoses");
        }
        return stated.orElse(byGeometry);
    }

    /** Hoses of each reader, beside it. */
    static List<HoseOnSite> hoses(FieldReader fields) {
        return new ArrayList<>(HookUpFields.hoses(fields));
    }
}
