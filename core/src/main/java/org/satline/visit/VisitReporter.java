package org.satline.visit;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.CylinderCheck;
import org.satline.cylinder.Role;
import org.satline.explanation.Finding;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.safety.Cautions;
import org.satline.safety.Task;
import org.satline.saturation.PropertySource;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.step.LineCharge;
import org.satline.step.StepAdvice;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpPlan;

/** Puts the rooms of the library together: from what was found on a visit to one action. Stateless, thread-safe. */
public final class VisitReporter {
    /** Liquid line and evaporating temperature of a system in cooling; common practice, no source. */
    private static final double USUAL_LIQUID_C = 38;

    private static final double USUAL_EVAPORATING_C = 7;

    private VisitReporter() {}

    /**
     * Works out what follows from a visit.
     *
     * @param visit what was found on site
     * @return the report
     * @throws org.satline.charge.margin.ImplausibleReadingException if the readings contradict physics
     * @throws IllegalArgumentException if the facts of the visit contradict each other
     */
    public static VisitReport report(Visit visit) {
        return report(visit, new CylinderCheck.Memory());
    }

    /**
     * Same for facts that are typed one after the other.
     *
     * @param visit what was found on site
     * @param checks the checks of cylinders that were made before; they are most of the work
     * @return the report, whatever was checked before
     */
    public static VisitReport report(Visit visit, CylinderCheck.Memory checks) {
        Parts.required("visit checks", visit, checks);
        SaturationCurve curve = SaturationCurves.of(visit.system().refrigerant());
        Atmosphere air = visit.site().atmosphere();
        List<CheckedCylinder> cylinders = visit.cylinders().stream()
                .map(each -> checks.of(each, curve, air, visit.date()))
                .toList();
        OperatingConditions conditions = settledAgainst(visit, curve);
        ChargeCase asked = new ChargeCase(curve, visit.readings(), question(visit.system()), conditions);
        Judgement judgement = new BuildRules(visit).applied(ChargeJudge.usual().judge(asked));
        List<PressureReadout> pressures = new PressureReadouts(curve, air).of(visit.readings());
        Optional<CheckedCylinder> connected = visit.connected()
                .flatMap(name -> cylinders.stream()
                        .filter(each -> each.cylinder().name().equals(name))
                        .findFirst());
        Optional<Steps> steps = Steps.of(visit, judgement);
        Optional<StepAdvice> advice = steps.flatMap(each -> each.advice(connected));
        TransferDesk desk = new TransferDesk(visit, judgement, cylinders, connected, curve);
        Optional<LineCharge> longerLine = longerLine(visit, curve);
        FirstFillings filling = new FirstFillings(visit, longerLine, cylinders, connected);
        Decided decided = new NextActions(visit, judgement, cylinders, connected, advice, desk, filling).decided();
        List<Caution> cautions = cautions(visit.system().refrigerant(), judgement, connected, pressures);
        List<Finding> findings = Stream.concat(
                        decided.findings().stream(), cylinders.stream().flatMap(each -> each.findings().stream()))
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        return new VisitReport(
                visit,
                PropertySource.of(curve),
                pressures,
                judgement,
                steps.flatMap(Steps::estimate),
                advice,
                longerLine,
                filling.filling(),
                cylinders,
                desk.flows(),
                desk.permit(),
                desk.hose(),
                decided.action().kind() == ActionKind.DONE
                        ? desk.endOfJob()
                        : desk.plan().map(plan -> ordered(plan, decided.action())),
                decided.action(),
                decided.ask(),
                findings,
                cautions);
    }

    /**
     * The plan with the amount of the step; the scale stays as it is, since the readings at which the step ends are those that it will show
     * as it stands.
     */
    private static HookUpPlan ordered(HookUpPlan plan, NextAction action) {
        if (!(plan instanceof HookUpPlan.Planned planned) || !(action instanceof NextAction.Move move)) {
            return plan;
        }
        return new HookUpPlan.Planned(planned.phases().stream()
                .map(phase -> new HookUpPlan.Phase(
                        phase.kind(),
                        phase.acts().stream()
                                .filter(act -> act.kind() != Act.Kind.ZERO_SCALE)
                                .map(act ->
                                        act.kind() == Act.Kind.OPEN_SHORT && phase.kind() == HookUpPlan.Phase.Kind.STEP
                                                ? act.until(move.step().amount())
                                                : act)
                                .toList(),
                        phase.vented(),
                        phase.notes()))
                .toList());
    }

    /** The action with what it rests on. */
    record Decided(NextAction action, List<String> ask, List<Finding> findings) {}

    private static ChargeQuestion question(ServicedSystem system) {
        boolean superheat = system.metering().judgedBy() == Criterion.SUPERHEAT;
        return ChargeQuestion.of(system.metering(), superheat ? system.targetSuperheat() : system.targetSubcooling());
    }

    /**
     * Rejects a settling series whose last value differs from the readings. Series and reading come from the same instruments, minutes
     * apart, so at least half of their variance is common to both and the difference of the two is no more uncertain than one of them (JCGM
     * 100, 5.2); the spread of the series is added.
     */
    private static OperatingConditions settledAgainst(Visit visit, SaturationCurve curve) {
        OperatingConditions conditions = visit.conditions();
        Optional<LineMargin> read = Margins.of(curve, visit.readings())
                .get(visit.system().metering().judgedBy());
        if (read.isEmpty() || !(conditions.settled().orElse(null) instanceof SettlingTest.Settled settled)) {
            return conditions;
        }
        double difference = settled.mean() - read.get().value().kelvins();
        double limit = UncertaintyBudget.of("series", Math.hypot(read.get().standardUncertaintyK(), settled.spread()))
                .expanded();
        return Math.abs(difference) <= limit
                ? conditions
                : conditions.withSettled(new SettlingTest.Contradicted(difference, limit));
    }

    private static Optional<LineCharge> longerLine(Visit visit, SaturationCurve curve) {
        return visit.system().lineSet().map(lines -> {
            Temperature liquid = visit.readings()
                    .temperature(Place.LIQUID_LINE)
                    .map(Reading::value)
                    .or(() -> atRest(visit, USUAL_LIQUID_C))
                    .orElseThrow(() -> missing(Place.LIQUID_LINE));
            Temperature suction = visit.readings()
                    .pressure(Place.SUCTION_PRESSURE)
                    .map(reading -> curve.dewTemperature(reading.value()))
                    .or(() -> atRest(visit, USUAL_EVAPORATING_C))
                    .orElseThrow(() -> missing(Place.SUCTION_PRESSURE));
            return LineCharge.additional(
                    lines.liquidLine(),
                    LineCharge.liquid(curve, liquid),
                    lines.suctionLine(),
                    LineCharge.saturatedVapour(curve, suction),
                    lines.covered(),
                    lines.actual());
        });
    }

    /** An evacuated system runs only after its filling: what is usual then stands in. */
    private static Optional<Temperature> atRest(Visit visit, double usualC) {
        return visit.system().build().evacuated() ? Optional.of(Temperature.ofCelsius(usualC)) : Optional.empty();
    }

    private static FieldException missing(Place place) {
        return new FieldException(
                place.path(), "is missing; a line set is given, and the density in the line follows from it");
    }

    private static List<Caution> cautions(
            Refrigerant gas, Judgement judgement, Optional<CheckedCylinder> connected, List<PressureReadout> read) {
        Optional<GaugePressure> most = read.stream().map(PressureReadout::gauge).max(Comparator.naturalOrder());
        return tasks(judgement, connected).stream()
                .flatMap(task -> most
                        .map(pressure -> Cautions.forHandling(gas, task, pressure))
                        .orElseGet(() -> Cautions.forHandling(gas, task))
                        .stream())
                .distinct()
                .toList();
    }

    private static Set<Task> tasks(Judgement judgement, Optional<CheckedCylinder> connected) {
        Set<Task> tasks = EnumSet.of(Task.READING);
        connected.ifPresent(each -> {
            tasks.add(Task.HOSE_PURGE);
            tasks.addAll(
                    each.cylinder().role() == Role.RECEIVER
                            ? EnumSet.of(Task.RECOVERY, Task.CYLINDER_FILLING)
                            : EnumSet.of(Task.CHARGING));
        });
        if (judgement instanceof Judgement.Decided decided && decided.level() != ChargeLevel.ON_TARGET) {
            tasks.addAll(
                    decided.level() == ChargeLevel.LOW
                            ? EnumSet.of(Task.LEAK_SEARCH, Task.CHARGING)
                            : EnumSet.of(Task.RECOVERY, Task.CYLINDER_FILLING));
        }
        return tasks;
    }
}
