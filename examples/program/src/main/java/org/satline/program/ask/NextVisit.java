package org.satline.program.ask;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Weighing;
import org.satline.explanation.Figure;
import org.satline.measurement.Reading;
import org.satline.program.page.Printed;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.visit.NextAction;
import org.satline.visit.Visit;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;
import org.satline.wording.NumberPrinter;
import org.satline.wording.Wording;

/**
 * New readings on top of an earlier visit: what has moved by the two weighings, and the readings before kept as history. Immutable.
 *
 * @param visit fields of the visit as it is now
 * @param notices what was noticed
 */
public record NextVisit(FieldValue.Fields visit, List<Notice> notices) {
    /** What can be noticed. */
    public enum Kind {
        /** All readings are those of before. */
        SAME_READING,
        /** The scale was zeroed since. */
        SCALE_ZEROED,
        /** Another cylinder is connected. */
        CYLINDER_SWAPPED,
        /** No cylinder is connected any more. */
        CYLINDER_GONE,
        /** More was moved than was advised. */
        STEP_LARGER
    }

    /**
     * Something noticed.
     *
     * @param kind what
     * @param figures the values
     */
    public record Notice(Kind kind, List<Figure> figures) {
        /** {@inheritDoc} */
        public Notice {
            Parts.required("kind", kind);
            figures = List.copyOf(figures);
        }

        static Notice of(Kind kind, Figure... figures) {
            return new Notice(kind, List.of(figures));
        }

        /**
         * Tells it.
         *
         * @param words in which language
         * @return in words, with the values
         */
        public String text(Wording words) {
            String key = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
            return words.message("notice." + key, figures.toArray(new Figure[0]));
        }
    }

    /** Fields of the visit that a new reading replaces. */
    private static final NumberPrinter NUMBERS = NumberPrinter.of(UnitSystem.US);

    private static final List<String> READ_ANEW = List.of("readings", "time");

    private static final List<String> CONDITIONS_ANEW = List.of("running", "settled", "settling");
    private static final List<String> HOSE_ANEW = List.of("holds", "contentsFrom");
    private static final List<String> WEIGHED_ANEW = List.of("scaleReading", "grossBefore", "temperature", "pressure");

    /** {@inheritDoc} */
    public NextVisit {
        Parts.required("visit", visit);
        notices = List.copyOf(notices);
    }

    /**
     * The earlier visit without what is read anew.
     *
     * @param earlier fields of the visit so far
     * @return what the next one starts from
     */
    public static FieldValue.Fields started(FieldValue.Fields earlier) {
        FieldValue.Fields start = earlier;
        for (String name : READ_ANEW) {
            start = FieldTree.without(start, name);
        }
        start = withoutParts(start, "conditions", CONDITIONS_ANEW);
        CylinderFocus focus = CylinderFocus.of(start);
        return focus.with(readAnew(focus.visit())).file();
    }

    /** Without what is weighed and read on the cylinder that is connected, and what its hose holds. */
    static FieldValue.Fields readAnew(FieldValue.Fields visit) {
        return withoutParts(withoutParts(visit, "cylinder", WEIGHED_ANEW), "cylinder.hoses[0]", HOSE_ANEW);
    }

    /** Readings from a file on top of the earlier visit; a cylinder of another name is the one that is connected now. */
    static FieldValue.Fields merged(FieldValue.Fields earlier, FieldValue.Fields fresh) {
        FieldValue.Fields under = withoutParts(FieldTree.without(earlier, "readings"), "conditions", CONDITIONS_ANEW);
        if (FieldTree.has(fresh, "cylinders")) {
            return FieldTree.merged(FieldTree.without(under, "cylinder"), fresh);
        }
        CylinderFocus focus = CylinderFocus.of(under);
        Optional<String> now = FieldTree.text(fresh, "connected").or(() -> FieldTree.text(fresh, "cylinder.name"));
        if (now.isPresent() && !now.equals(focus.name())) {
            CylinderFocus other = focus.swapped(now.get(), focus.cylinder());
            focus = other.with(withoutParts(other.visit(), "cylinder.hoses[0]", HOSE_ANEW));
        }
        return focus.with(FieldTree.merged(focus.visit(), FieldTree.without(fresh, "connected")))
                .file();
    }

    private static FieldValue.Fields withoutParts(FieldValue.Fields fields, String object, List<String> parts) {
        if (!(FieldTree.get(fields, object).orElse(null) instanceof FieldValue.Fields found)) {
            return fields;
        }
        FieldValue.Fields kept = found;
        for (String part : parts) {
            kept = FieldTree.without(kept, part);
        }
        return FieldTree.put(fields, object, kept);
    }

    /** Refuses readings of another refrigerant. */
    static void checkRefrigerant(FieldValue.Fields earlier, FieldValue.Fields fresh) {
        Optional<String> before = FieldTree.text(earlier, "system.refrigerant");
        Optional<String> now = FieldTree.text(fresh, "system.refrigerant");
        if (before.isPresent() && now.isPresent() && !designation(before.get()).equals(designation(now.get()))) {
            throw new IllegalArgumentException(
                    "system.refrigerant: " + now.get() + " now, " + before.get()
                            + " in the earlier visit; a system keeps its refrigerant, look at the nameplate or start a new visit");
        }
    }

    private static String designation(String text) {
        return Catalogue.standard().find(text).designation();
    }

    /**
     * Puts new readings on top.
     *
     * @param earlier the visit so far
     * @param whole the visit with the new readings, {@code moved} and {@code history} still as they were
     * @param stated what the person says has moved since the first reading, where that is said
     * @return the visit and what was noticed
     * @throws IllegalArgumentException if the new readings cannot follow the earlier ones; both values are named
     */
    public static NextVisit of(FieldValue.Fields earlier, FieldValue.Fields whole, Optional<String> stated) {
        checkRefrigerant(earlier, whole);
        checkClock(earlier, whole);
        VisitReport before = VisitReporter.report(VisitFile.read(earlier));
        Visit now = VisitFile.read(whole);
        List<Notice> notices = new ArrayList<>(noticed(before.visit(), now, earlier, whole));
        MassDifference net = net(before, now, stated, notices);
        FieldValue.Fields visit = FieldTree.put(whole, "moved", moved(before, earlier, net));
        visit = FieldTree.put(visit, "history", history(before, earlier));
        VisitFile.read(visit);
        return new NextVisit(visit, notices);
    }

    private static void checkClock(FieldValue.Fields earlier, FieldValue.Fields whole) {
        Optional<LocalDateTime> before = when(earlier);
        Optional<LocalDateTime> now = when(whole);
        if (before.isPresent() && now.isPresent() && now.get().isBefore(before.get())) {
            throw new IllegalArgumentException("time: " + now.get() + " is before " + before.get()
                    + " of the earlier readings; the clock cannot go back, look at date and time of both");
        }
    }

    private static Optional<LocalDateTime> when(FieldValue.Fields fields) {
        // a field that is no date or time is refused by the reader of visit files, with its name
        return FieldTree.text(fields, "date")
                .filter(text -> text.matches("\\d{4}-\\d{2}-\\d{2}"))
                .map(LocalDate::parse)
                .flatMap(day -> FieldTree.text(fields, "time")
                        .filter(text -> text.matches("\\d{2}:\\d{2}"))
                        .map(text -> day.atTime(LocalTime.parse(text))));
    }

    private static List<Notice> noticed(Visit before, Visit now, FieldValue.Fields earlier, FieldValue.Fields whole) {
        List<Notice> notices = new ArrayList<>();
        if (FieldTree.get(earlier, "readings").equals(FieldTree.get(whole, "readings"))
                && !now.readings().all().isEmpty()) {
            notices.add(Notice.of(Kind.SAME_READING));
        }
        if (!now.connected().equals(before.connected()) && before.connected().isPresent()) {
            Figure left = Figure.of("before", before.connected().get());
            notices.add(now.connected()
                    .map(name -> Notice.of(Kind.CYLINDER_SWAPPED, Figure.of("now", name), left))
                    .orElseGet(() -> Notice.of(Kind.CYLINDER_GONE, left)));
        }
        return notices;
    }

    /** What has gone into the system less what came out, by the weighings of each cylinder; what is stated must agree. */
    private static MassDifference net(VisitReport report, Visit now, Optional<String> stated, List<Notice> notices) {
        Visit before = report.visit();
        double kilograms = 0;
        double expanded = 0;
        boolean weighed = false;
        for (Cylinder cylinder : now.cylinders()) {
            Optional<Weighing> earlier = before.cylinders().stream()
                    .filter(each -> each.name().equals(cylinder.name()))
                    .findFirst()
                    .flatMap(Cylinder::weighing);
            if (cylinder.weighing().isEmpty() || earlier.isEmpty()) {
                continue;
            }
            checkWeighing(cylinder, earlier.get(), notices);
            Reading<MassDifference> inside = cylinder.contents().orElseThrow();
            Reading<MassDifference> then =
                    earlier.get().contents(cylinder.stamps().tare());
            kilograms += inside.value().minus(then.value()).kilograms();
            expanded = Math.hypot(expanded, Math.hypot(inside.expandedUncertainty(), then.expandedUncertainty()));
            weighed = true;
        }
        if (!weighed && stated.isEmpty()) {
            return before.moved().net();
        }
        MassDifference since = MassDifference.ofKilograms(-kilograms);
        MassDifference net = before.moved().net().plus(since);
        if (stated.isPresent()) {
            MassDifference said = MassDifference.parse(stated.get());
            if (weighed && !(said.minus(net).abs().kilograms() <= expanded)) {
                throw new IllegalArgumentException(
                        "moved.net: " + shown(said) + " is stated, but the two weighings say "
                                + shown(net) + " within " + shown(MassDifference.ofKilograms(expanded))
                                + "; look at both readings of the scale, or leave moved out");
            }
            net = weighed ? net : said;
        }
        step(report, net.minus(before.moved().net()), expanded, notices);
        return net;
    }

    private static void checkWeighing(Cylinder cylinder, Weighing earlier, List<Notice> notices) {
        Weighing now = cylinder.weighing().orElseThrow();
        if (now instanceof Weighing.Gross gross
                && gross.isBelowTare(cylinder.stamps().tare())) {
            throw new IllegalArgumentException(cylinder.path("scaleReading") + ": "
                    + NUMBERS.print(gross.shown().value()) + " now is below the tare of "
                    + NUMBERS.print(cylinder.stamps().tare())
                    + "; where the scale was zeroed in between, give grossBefore, what it showed just before");
        }
        boolean zeroed = now instanceof Weighing.SinceZero zero
                && !(earlier instanceof Weighing.SinceZero old
                        && old.grossBefore().value().equals(zero.grossBefore().value()));
        if (zeroed) {
            notices.add(Notice.of(
                    Kind.SCALE_ZEROED,
                    Figure.of("cylinder", cylinder.name()),
                    Figure.of("at", ((Weighing.SinceZero) now).grossBefore().value())));
        }
    }

    private static void step(VisitReport report, MassDifference since, double expanded, List<Notice> notices) {
        if (report.action() instanceof NextAction.Move move
                && since.abs().kilograms() > move.step().amount().kilograms() + expanded) {
            notices.add(Notice.of(
                    Kind.STEP_LARGER,
                    Figure.of("moved", shown(since)),
                    Figure.of("step", move.step().amount())));
        }
    }

    private static String shown(MassDifference mass) {
        return Printed.figure("%.2f lb (%.3f kg)", mass.pounds(), mass.kilograms());
    }

    private static Optional<Double> judgedKelvins(VisitReport report) {
        Criterion criterion = report.judgement()
                .evidence()
                .deviation()
                .map(Deviation::criterion)
                .orElse(
                        report.visit().system().metering() == MeteringDevice.EXPANSION_VALVE
                                ? Criterion.SUBCOOLING
                                : Criterion.SUPERHEAT);
        return report.judgement()
                .evidence()
                .margins()
                .get(criterion)
                .map(margin -> margin.value().kelvins());
    }

    private static FieldValue moved(VisitReport before, FieldValue.Fields earlier, MassDifference net) {
        List<FieldValue> readings = new ArrayList<>(items(earlier, "moved.earlier"));
        judgedKelvins(before).ifPresent(measured -> {
            Map<String, FieldValue> one = new LinkedHashMap<>();
            one.put("net", text(kilograms(before.visit().moved().net())));
            one.put("measured", text(Printed.figure("%.3f K", measured)));
            readings.add(new FieldValue.Fields(one));
        });
        Map<String, FieldValue> moved = new LinkedHashMap<>();
        moved.put("net", text(kilograms(net)));
        moved.put("earlier", new FieldValue.Items(readings));
        return new FieldValue.Fields(moved);
    }

    private static FieldValue history(VisitReport before, FieldValue.Fields earlier) {
        List<FieldValue> all = new ArrayList<>(items(earlier, "history"));
        Map<String, FieldValue> entry = new LinkedHashMap<>();
        for (String name : new String[] {"date", "time"}) {
            FieldTree.get(earlier, name).ifPresent(value -> entry.put(name, value));
        }
        entry.put("readings", FieldTree.get(earlier, "readings").orElse(FieldTree.EMPTY));
        before.visit().connected().ifPresent(name -> {
            int index = before.visit().cylinders().stream()
                    .map(Cylinder::name)
                    .toList()
                    .indexOf(name);
            String path = FieldTree.has(earlier, "cylinder") ? "cylinder" : "cylinders[" + index + "]";
            entry.put("cylinder", text(name));
            for (String part : new String[] {"scaleReading", "grossBefore"}) {
                FieldTree.get(earlier, path + "." + part).ifPresent(value -> entry.put(part, value));
            }
        });
        entry.put("net", text(kilograms(before.visit().moved().net())));
        judgedKelvins(before).ifPresent(measured -> entry.put("measured", text(Printed.figure("%.3f K", measured))));
        all.add(new FieldValue.Fields(entry));
        return new FieldValue.Items(all);
    }

    private static List<FieldValue> items(FieldValue.Fields fields, String path) {
        return FieldTree.get(fields, path).orElse(null) instanceof FieldValue.Items items ? items.values() : List.of();
    }

    private static FieldValue text(String text) {
        return new FieldValue.Text(text);
    }

    private static String kilograms(MassDifference mass) {
        return Printed.figure("%.4f kg", mass.kilograms());
    }
}
