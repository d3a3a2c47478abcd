package org.satline.visit.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.satline.charge.OperatingConditions;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.CylinderCheck;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.measurement.Place;
import org.satline.measurement.PressureInstrument;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;
import org.satline.visit.FieldException;
import org.satline.visit.HookUpFacts.HoseOnSite;
import org.satline.visit.Instruments;
import org.satline.visit.MovedSoFar;
import org.satline.visit.ServicedSystem;
import org.satline.visit.Site;
import org.satline.visit.SystemDanger;
import org.satline.visit.Visit;

/** Reads the fields of a visit file, strictly: every fault names its field, its value and what is allowed. Stateless, thread-safe. */
public final class VisitFile {
    private static final List<String> NAMES = List.of(
            "title",
            "date",
            "site",
            "system",
            "instruments",
            "readings",
            "conditions",
            "moved",
            "openPorts",
            "cylinder",
            "cylinders",
            "connected",
            "manifold",
            "ports",
            "vacuumPump",
            "recoveryMachine",
            "time",
            "kit",
            "history");
    private static final List<String> OPEN_PORT = List.of("port", "pressure");

    private VisitFile() {}

    /**
     * Reads a visit.
     *
     * @param fields the fields of the file
     * @return the visit
     * @throws FieldException if anything in it cannot be used
     */
    public static Visit read(FieldValue.Fields fields) {
        Objects.requireNonNull(fields, "fields");
        FieldReader root = FieldReader.of(fields, NAMES);
        RecordFields.check(root);
        Site site = SystemFields.site(root.object("site", SystemFields.SITE));
        ServicedSystem system = SystemFields.system(root.object("system", SystemFields.SYSTEM));
        Instruments with = InstrumentFields.read(root.object("instruments", InstrumentFields.NAMES));
        Atmosphere air = site.atmosphere();
        SaturationCurve curve = SaturationCurves.of(system.refrigerant());
        SystemReadings readings =
                SystemFields.readings(root.object("readings", SystemFields.READINGS), air, with, curve);
        List<FieldReader> cylinderFields = cylinders(root);
        List<Cylinder> cylinders = new ArrayList<>();
        for (FieldReader each : cylinderFields) {
            cylinders.add(CylinderFields.read(each, air, with, system.refrigerant(), CylinderFields.hoses(each)));
        }
        Optional<String> connected = root.optional("connected", "recovery cylinder no. 4", TextFields::line)
                .or(() -> root.has("cylinder") ? Optional.of(cylinders.get(0).name()) : Optional.empty());
        return root.made(() -> new Visit(
                root.optional("title", "what the visit is about", TextFields::line)
                        .orElse(""),
                root.optional("date", "2026-07-14", TextFields::date),
                site,
                system,
                readings,
                root.optionalObject("conditions", ConditionFields.CONDITIONS)
                        .map(each -> ConditionFields.conditions(each, air, with))
                        .orElseGet(OperatingConditions::unknown),
                root.optionalObject("moved", ConditionFields.MOVED)
                        .map(ConditionFields::moved)
                        .orElseGet(MovedSoFar::nothing),
                root.has("openPorts") ? openPorts(root, air, with) : portsOf(readings),
                cylinders,
                connected,
                HookUpFields.read(root, hosesOf(cylinderFields, cylinders, connected))));
    }

    /**
     * What is dangerous in a file that cannot be read as a whole: each cylinder that can be read by itself is checked, and the pressure of
     * the system.
     *
     * @param fields the fields of the file
     * @return findings of severity {@link Severity#DANGER_NOW}; empty where there is none, or nothing could be read
     */
    public static List<Finding> dangersInReadablePart(FieldValue.Fields fields) {
        if (!fields.values().containsKey("cylinder")
                && !fields.values().containsKey("cylinders")
                && text(fields, "readings", Place.LIQUID_PRESSURE.field()).isEmpty()) {
            return List.of();
        }
        PartsRead parts = readable(fields);
        List<Finding> dangers = new ArrayList<>(ofSystem(fields, parts).stream().toList());
        for (FieldValue.Fields each : parts.cylinders()) {
            try {
                FieldReader reader = FieldReader.of(each, CylinderFields.NAMES);
                Cylinder cylinder =
                        CylinderFields.read(reader, parts.air(), parts.with(), parts.refrigerant(), List.of());
                CheckedCylinder checked = CylinderCheck.of(
                        cylinder, SaturationCurves.of(parts.refrigerant()), parts.air(), Optional.empty());
                dangers.addAll(checked.of(Severity.DANGER_NOW));
            } catch (IllegalArgumentException unreadable) {
                // nothing can be said of this one; the refusal of the file names its fault
            }
        }
        return List.copyOf(dangers);
    }

    private static Optional<Finding> ofSystem(FieldValue.Fields fields, PartsRead parts) {
        return text(fields, "readings", Place.LIQUID_PRESSURE.field())
                .filter(unused -> refrigerant(fields).isPresent())
                .flatMap(text -> readable(() -> Pressure.parse(text, parts.air())))
                .flatMap(read -> SystemDanger.of(read, SaturationCurves.of(parts.refrigerant()), parts.air(), ""));
    }

    private static Optional<Refrigerant> refrigerant(FieldValue.Fields fields) {
        return text(fields, "system", "refrigerant").flatMap(text -> readable(() -> TextFields.refrigerant(text)));
    }

    private static Optional<String> text(FieldValue.Fields fields, String part, String field) {
        return fields.values().get(part) instanceof FieldValue.Fields found
                        && found.values().get(field) instanceof FieldValue.Text text
                ? Optional.of(text.value())
                : Optional.empty();
    }

    private static <T> Optional<T> readable(Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    /** What a cylinder is checked with, as far as the file gives it. */
    private record PartsRead(
            List<FieldValue.Fields> cylinders, Atmosphere air, Instruments with, Refrigerant refrigerant) {}

    private static PartsRead readable(FieldValue.Fields fields) {
        List<FieldValue.Fields> cylinders = new ArrayList<>();
        FieldValue one = fields.values().get("cylinder");
        if (one instanceof FieldValue.Fields found) {
            cylinders.add(found);
        }
        if (fields.values().get("cylinders") instanceof FieldValue.Items items) {
            items.values().stream()
                    .filter(FieldValue.Fields.class::isInstance)
                    .map(FieldValue.Fields.class::cast)
                    .forEach(cylinders::add);
        }
        Atmosphere air = part(fields, "site", SystemFields.SITE, SystemFields::site)
                .map(Site::atmosphere)
                .orElse(Atmosphere.standard());
        Instruments with = part(fields, "instruments", InstrumentFields.NAMES, InstrumentFields::read)
                .orElseGet(UsualInstruments::get);
        Refrigerant refrigerant = refrigerant(fields).orElseGet(() -> TextFields.refrigerant("R-134a"));
        return new PartsRead(cylinders, air, with, refrigerant);
    }

    private static <T> Optional<T> part(
            FieldValue.Fields fields,
            String name,
            List<String> names,
            java.util.function.Function<FieldReader, T> reader) {
        return fields.values().get(name) instanceof FieldValue.Fields found
                ? readable(() -> reader.apply(FieldReader.of(found, names)))
                : Optional.empty();
    }

    private static List<FieldReader> cylinders(FieldReader root) {
        if (root.has("cylinder") && root.has("cylinders")) {
            throw root.refused(
                    "cylinders", "stands beside cylinder; put all of them into cylinders and name the connected one");
        }
        if (root.has("connected") && !root.has("cylinders")) {
            throw root.refused("connected", "stands there, but cylinders does not; list the cylinders");
        }
        return Stream.concat(
                        root.optionalObject("cylinder", CylinderFields.NAMES).stream(),
                        root.objects("cylinders", CylinderFields.NAMES).stream())
                .toList();
    }

    private static List<HoseOnSite> hosesOf(
            List<FieldReader> fields, List<Cylinder> cylinders, Optional<String> connected) {
        for (int i = 0; i < cylinders.size(); i++) {
            if (connected.equals(Optional.of(cylinders.get(i).name()))) {
                return CylinderFields.hoses(fields.get(i));
            }
        }
        return List.of();
    }

    private static List<ConnectionPoint> openPorts(FieldReader root, Atmosphere air, Instruments with) {
        List<ConnectionPoint> points = new ArrayList<>();
        for (FieldReader fields : root.objects("openPorts", OPEN_PORT)) {
            PointKind kind = fields.choice("port", HookUpFields.PORTS);
            PressureInstrument gauge = kind == PointKind.LOW_SIDE_PORT ? with.suctionGauge() : with.liquidGauge();
            points.add(fields.value(
                    "pressure",
                    "118 psig",
                    text -> new ConnectionPoint(kind, gauge.read(TextFields.gauge(text, air), air), List.of())));
        }
        return points;
    }

    private static List<ConnectionPoint> portsOf(SystemReadings readings) {
        List<ConnectionPoint> points = new ArrayList<>();
        readings.pressure(Place.LIQUID_PRESSURE)
                .ifPresent(read -> points.add(new ConnectionPoint(PointKind.HIGH_SIDE_LIQUID_PORT, read, List.of())));
        readings.pressure(Place.SUCTION_PRESSURE)
                .ifPresent(read -> points.add(new ConnectionPoint(PointKind.LOW_SIDE_PORT, read, List.of())));
        return points;
    }
}
