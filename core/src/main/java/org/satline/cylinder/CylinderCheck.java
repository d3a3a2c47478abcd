package org.satline.cylinder;

import org.satline.filling.FillAssessment;
import org.satline.filling.RuleOutcome;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillingCode;
import org.satline.filling.Provenance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.filling.FillQuestion.Purpose;
import org.satline.filling.FillRule.Basis;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
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
            FillingCode.NOT_LISTED);

    private static final String RETEST =
            "49 CFR 180.205(c): a cylinder filled before its due date may stay in service until it is emptied (from memory)";
    private static final String ARITHMETIC = "arithmetic: contents = gross - tare";
    /** Freezing, 70 degF, a hot day, and the 131 degF of the fill rules, degC. */
    private static final List<Double> MET = List.of(0.0, 21.1, 40.0, 55.0);

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
        overfilled(fill);
        found.addAll(DangerCheck.of(cylinder, facts, site));
        weighed();
        Optional<ContentsFinding> byPressure = facts.byPressure();
        found.addAll(ContentsDoubt.of(cylinder, facts, byPressure));
        tooWarm();
        Optional<VesselStates> vessel = vessel();
        Optional<Room> room = Optional.empty();
        if (receives) {
            found.addAll(fill.answers().cautions());
            room = room(fill);
        } else {
            gives(vessel);
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
                room.filter(some -> ordered.stream().allMatch(each -> each.severity() == Severity.CAUTION
                        || each.code() == CylinderCode.FULL)),
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

    /** Against the limit of what it holds: all rules for what was filled on site, the law alone for what a maker filled. */
    private void overfilled(FillAssessment fill) {
        if (facts.weight().isEmpty() || facts.holds().isEmpty()) {
            return;
        }
        boolean filledOnSite = cylinder.role() == Role.RECEIVER
                || cylinder.provenance().filter(Provenance::isUsed).isPresent();
        boolean asked = fill.answers().question().contents().get(0).refrigerant().equals(facts.holds().get());
        FillAssessment.Answers answers =
                (asked ? fill : Tables.ASSESSOR.assess(asItIs(facts.curve()))).answers();
        Reading<MassDifference> inside = facts.weight().get();
        double least = inside.value().kilograms() - inside.expandedUncertainty();
        Optional<Mass> limit =
                answers.limits(filledOnSite ? EnumSet.allOf(Basis.class) : EnumSet.of(Basis.LAW)).stream()
                        .findFirst()
                        .map(RuleOutcome.MassLimit::maximumContents);
        boolean over = limit.filter(most -> least > most.kilograms()).isPresent();
        if (over || facts.liquidFullOf(least).isBy(cylinder.warmest())) {
            List<Figure> figures = new ArrayList<>(List.of(facts.contentsFigure()));
            limit.ifPresent(most -> figures.add(Figure.of("limit", most)));
            limit.ifPresent(most -> figures.add(
                    Figure.of("excess", inside.value().minus(most.differenceFrom(Mass.ZERO)))));
            found.add(new Finding(
                    Severity.DANGER_NOW,
                    CylinderCode.OVERFILLED,
                    cylinder.subject(),
                    figures,
                    "49 CFR 173.304(b); common practice"));
        }
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

    private void tooWarm() {
        Temperature now = cylinder.temperature().value();
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

    private Optional<VesselStates> vessel() {
        if (facts.vessel().isEmpty()) {
            return Optional.empty();
        }
        ClosedVessel vessel = facts.vessel().get();
        Optional<Pressure> mark = cylinder.stamps().servicePressure().map(gauge -> Pressure.ofGauge(gauge, site));
        return condition(vessel, cylinder.temperature().value(), mark)
                .map(now -> new VesselStates(
                        facts.contents(),
                        now,
                        MET.stream()
                                .flatMap(celsius -> condition(vessel, Temperature.ofCelsius(celsius), mark).stream())
                                .toList(),
                        vessel.liquidFull(),
                        mark.map(vessel::reaches)));
    }

    /** Nothing where the equation does not reach: beyond its range of pressure, and close to the critical point, it tells none. */
    private static Optional<VesselCondition> condition(
            ClosedVessel vessel, Temperature temperature, Optional<Pressure> mark) {
        try {
            return Optional.of(vessel.at(temperature, mark));
        } catch (OutOfValidityException e) {
            return Optional.empty();
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

    /** What speaks against drawing from it. */
    private void gives(Optional<VesselStates> vessel) {
        Optional<Provenance> provenance = cylinder.provenance();
        String inSystem = system.refrigerant().designation();
        if (!cylinder.label().map(Refrigerant::designation).orElse(inSystem).equals(inSystem)
                || provenance.equals(Optional.of(Provenance.MIXED_RECOVERED))) {
            add(
                    Severity.FORBIDS,
                    FillingCode.MIXING,
                    Figure.of("inside", facts.gas()),
                    Figure.of("other", inSystem));
        }
        if (provenance.filter(Provenance::isUsed).isPresent()
                && cylinder.stamps().refillable().equals(Optional.of(false))) {
            found.add(Finding.of(
                            Severity.FORBIDS, CylinderCode.RECOVERED_IN_NON_REFILLABLE, cylinder.subject())
                    .citing("49 CFR 178.65(i)"));
        }
        boolean blend = facts.holds().filter(Refrigerant::isBlend).isPresent();
        double scaleKg = facts.scaleMarginKg();
        boolean noLiquid = facts.isVapourAlone()
                || vessel.filter(states -> states.now().liquidVolumeFraction().isPresent()
                                && states.liquid().kilograms() <= scaleKg)
                        .isPresent();
        if (facts.isWeighedEmpty() || (blend && facts.weight().isPresent() && noLiquid)) {
            add(Severity.FORBIDS, CylinderCode.NOTHING_TO_GIVE, facts.contentsFigure());
        }
        if (!cylinder.stamps().refillable().equals(Optional.of(false))) {
            sourceRetest();
        }
    }

    /** Of a cylinder that is only drawn from; one that may not be refilled is never retested. */
    private void sourceRetest() {
        Optional<LocalDate> due = cylinder.stamps().retestDue();
        if (due.isEmpty() || day.isEmpty()) {
            found.add(Finding.of(Severity.CAUTION, FillingCode.RETEST_NOT_CHECKED, cylinder.subject())
                    .citing(RETEST));
        } else if (day.get().isAfter(due.get())) {
            found.add(Finding.of(
                            Severity.CAUTION,
                            FillingCode.RETEST_PAST,
                            cylinder.subject(),
                            Figure.of("due", due.get().toString()),
                            Figure.of("day", day.get().toString()))
                    .citing(RETEST));
        }
    }
}
