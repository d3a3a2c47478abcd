package org.satline.cylinder;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillQuestion.Purpose;
import org.satline.filling.FillingCode;
import org.satline.filling.Provenance;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/** Checks a cylinder, once: what its stamps, label, weight, pressure and temperature say together. */
public final class CylinderCheck {
    /** What makes a cylinder unfit to hold its refrigerant at all, and not only to be filled with more of it. */
    private static final Set<FindingCode> UNFIT = Set.of(
            FillingCode.TARE_MISFITS_CAPACITY,
            FillingCode.SERVICE_PRESSURE_MISFITS_MARK,
            FillingCode.TEST_BELOW_SERVICE,
            FillingCode.REFILLABLE_AGAINST_MARK,
            FillingCode.MARK_IMPOSSIBLE,
            FillingCode.NOT_FOR_REFRIGERANT,
            FillingCode.PRESSURE_TOO_LOW,
            FillingCode.TEST_PRESSURE_TOO_LOW,
            FillingCode.NOT_LISTED);

    /** A pull of the hoses on the scale; common practice, no source. */
    private static final double PULL_OF_HOSES_KG = 0.05;

    private static final String ARITHMETIC = "arithmetic: contents = gross - tare";

    /** The tables are read once. */
    private static final class Tables {
        static final FillAssessor ASSESSOR = FillAssessor.standard();
    }

    private final Cylinder cylinder;
    private final SaturationCurve system;
    private final Atmosphere site;
    private final Optional<LocalDate> day;
    private final CylinderFacts facts;
    private final List<Finding> found = new ArrayList<>();

    private CylinderCheck(Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {
        Parts.required("cylinder system site day", cylinder, system, site, day);
        this.cylinder = cylinder;
        this.system = system;
        this.site = site;
        this.day = day;
        this.facts = new CylinderFacts(cylinder, system);
    }

    /**
     * Works out everything that follows from a cylinder's stamps, label, weight, pressure and temperature.
     *
     * @param cylinder the cylinder
     * @param system the curve of the system's refrigerant
     * @param site the local atmosphere
     * @param day the day of the visit, where known
     * @return what was found
     */
    public static CheckedCylinder of(
            Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {
        return new CylinderCheck(cylinder, system, site, day).checked();
    }

    private CheckedCylinder checked() {
        boolean receives = cylinder.role() == Role.RECEIVER;
        FillAssessment fill = Tables.ASSESSOR.assess(receives ? toReceive() : asItIs(facts.curve()));
        found.addAll(
                receives
                        ? fill.objections()
                        : fill.objections().stream()
                                .filter(each -> UNFIT.contains(each.code()))
                                .toList());
        boolean asked = fill.answers()
                .question()
                .contents()
                .get(0)
                .refrigerant()
                .equals(facts.curve().refrigerant());
        FillAssessment ofContents = asked ? fill : Tables.ASSESSOR.assess(asItIs(facts.curve()));
        OverfillCheck.of(cylinder, facts, ofContents.answers()).ifPresent(found::add);
        found.addAll(DangerCheck.of(cylinder, facts, site));
        weighed();
        againstRole();
        inverted();
        Optional<ContentsFinding> byPressure = facts.byPressure();
        found.addAll(ContentsDoubt.of(cylinder, facts, byPressure));
        tooWarm();
        Optional<VesselStates> vessel = Warming.of(cylinder, facts, site);
        Optional<Room> room = Optional.empty();
        if (receives) {
            found.addAll(fill.answers().cautions());
            room = room(fill);
        } else {
            found.addAll(SourceCheck.of(cylinder, facts, system.refrigerant(), vessel, day));
        }
        List<Finding> ordered = found.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        return new CheckedCylinder(
                cylinder,
                cylinder.contents(),
                facts.holds(),
                facts.inside(),
                byPressure,
                vessel,
                fill,
                room.filter(some -> ordered.stream()
                        .allMatch(each -> each.severity() == Severity.CAUTION || each.code() == CylinderCode.FULL)),
                ordered);
    }

    private void add(Severity severity, FindingCode code, Figure... figures) {
        found.add(Finding.of(severity, code, cylinder.subject(), figures));
    }

    private FillQuestion toReceive() {
        // what comes out of a system is recovered, whatever the cylinder held before
        Optional<Provenance> provenance =
                Optional.of(cylinder.provenance().filter(Provenance::isUsed).orElse(Provenance.RECOVERED));
        return question(system, day, facts.holds(), provenance, Purpose.FILL);
    }

    private FillQuestion asItIs(SaturationCurve held) {
        return question(held, Optional.empty(), Optional.empty(), cylinder.provenance(), Purpose.CALCULATION);
    }

    private FillQuestion question(
            SaturationCurve gas,
            Optional<LocalDate> date,
            Optional<Refrigerant> inside,
            Optional<Provenance> provenance,
            Purpose purpose) {
        return new FillQuestion(
                cylinder.name(),
                cylinder.field(),
                cylinder.stamps(),
                List.of(gas),
                cylinder.jurisdiction(),
                cylinder.warmest(),
                date,
                inside,
                provenance,
                purpose);
    }

    private void weighed() {
        if (cylinder.weighing().isEmpty()) {
            found.add(cylinder.notGiven("scaleReading"));
        }
        facts.belowTare()
                .ifPresent(inside -> found.add(Finding.of(
                                Severity.FORBIDS,
                                CylinderCode.BELOW_TARE,
                                cylinder.subject(),
                                Figure.of("contents", inside),
                                Figure.of("tare", cylinder.stamps().tare()))
                        .citing(ARITHMETIC)));
    }

    /** What has gone the other way took with it, or brought, what nobody weighed as such. */
    private void againstRole() {
        if (cylinder.weighing().orElse(null) instanceof Weighing.SinceZero since) {
            double sign = cylinder.role() == Role.RECEIVER ? -1 : 1;
            double doubtKg = Math.max(PULL_OF_HOSES_KG, cylinder.hoseContents().kilograms())
                    + 2 * since.shown().expandedUncertainty();
            if (sign * since.shown().value().kilograms() > doubtKg) {
                add(
                        Severity.FORBIDS,
                        CylinderCode.SCALE_AGAINST_ROLE,
                        Figure.of("shown", since.shown().value()));
                found.add(cylinder.notGiven("scaleReading"));
            }
        }
    }

    /** Two valves, one of them with a dip tube, are used upright; only what has one valve is turned over. */
    private void inverted() {
        boolean upright = cylinder.role() == Role.RECEIVER
                || cylinder.stamps().refillable().equals(Optional.of(true));
        if (cylinder.inverted() && upright) {
            add(Severity.FORBIDS, CylinderCode.INVERTED);
        }
    }

    private void tooWarm() {
        Temperature now = cylinder.temperature().value();
        if (facts.holds().isPresent() && now.kelvins() < facts.curve().minTemperatureK()) {
            found.add(cylinder.notGiven("temperature"));
        }
        // 0.05 K: the same temperature in another unit
        if (now.kelvins() > cylinder.warmest().kelvins() + 0.05) {
            add(
                    Severity.FORBIDS,
                    CylinderCode.WARMER_THAN_WARMEST,
                    Figure.of("temperature", now),
                    Figure.of("warmest", cylinder.warmest()));
        }
        if (facts.holds().isPresent() && now.kelvins() > facts.curve().maxTemperatureK()) {
            add(
                    Severity.FORBIDS,
                    CylinderCode.ABOVE_CRITICAL,
                    Figure.of("temperature", now),
                    Figure.of("end", Temperature.ofKelvins(facts.curve().maxTemperatureK())),
                    Figure.of("gas", facts.gas()));
        }
    }

    private Optional<Room> room(FillAssessment fill) {
        if (!(fill instanceof FillAssessment.Allowed allowed) || facts.weight().isEmpty()) {
            return Optional.empty();
        }
        Room room = RoomFinder.find(allowed, cylinder.weighing().orElseThrow(), cylinder.hoseContents());
        if (room instanceof Room.Full) {
            add(Severity.FORBIDS, CylinderCode.FULL, facts.contentsFigure(), Figure.of("limit", allowed.limit()));
        }
        return Optional.of(room);
    }

    /**
     * Checks cylinders and keeps the last checks, for who asks anew whenever a fact of a visit is typed: where those of a cylinder are the
     * same, so is its check, which costs milliseconds. For one thread.
     */
    public static final class Memory {
        private static final int MOST_KEPT = 8;

        private final Map<Facts, CheckedCylinder> kept = new HashMap<>();

        /** Nothing is checked yet. */
        public Memory() {}

        /** A curve is equal to itself alone: keep it. */
        private record Facts(Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {}

        /**
         * Checks a cylinder, once for the same facts.
         *
         * @param cylinder the cylinder
         * @param system the curve of the system's refrigerant
         * @param site the local atmosphere
         * @param day the day of the visit, where known
         * @return what {@link CylinderCheck#of} finds
         */
        public CheckedCylinder of(Cylinder cylinder, SaturationCurve system, Atmosphere site, Optional<LocalDate> day) {
            Facts facts = new Facts(cylinder, system, site, day);
            CheckedCylinder known = kept.get(facts);
            if (known == null) {
                known = CylinderCheck.of(cylinder, system, site, day);
                if (kept.size() == MOST_KEPT) {
                    kept.clear();
                }
                kept.put(facts, known);
            }
            return known;
        }
    }
}
