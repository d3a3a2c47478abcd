package org.satline.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.satline.charge.ChargeCode;
import org.satline.charge.Gate;
import org.satline.charge.Judgement;
import org.satline.charge.SystemFeature;
import org.satline.charge.margin.ChargeLevel;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Room;
import org.satline.duty.LeakRate;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.step.StepAdvice;
import org.satline.step.StepCode;
import org.satline.transfer.Direction;
import org.satline.transfer.Permit;
import org.satline.transfer.TransferCode;

/**
 * Decides on one action. Precedence: a danger; another fault; readings that decide nothing or a condition that is not met; what must be
 * prepared; one step; done. A condition that was merely not read never decides the level away: it is asked for and blocks moving, not being
 * done.
 */
final class NextActions {
    /** What the readings say is another fault, though no single one is named. */
    /**
     * Below any suction at which a system of these refrigerants is meant to run: R-600a evaporates at -46 degC there, R-123 at -10 degC
     * (from
     * memory). The compressor runs hot on next to no gas, and each seal draws air. Judgement, no source.
     */
    private static final Pressure RUN_DRY = Pressure.ofBars(0.2);

    private static final Set<FindingCode> OTHER_FAULTS = Set.of(
            ChargeCode.VALVE_FLOODS,
            ChargeCode.EVAPORATOR_STARVES,
            ChargeCode.AMPLE_SUBCOOLING,
            ChargeCode.SCANT_SUBCOOLING,
            ChargeCode.FAULT_LIKELIER);

    private final Visit visit;
    private final Judgement judgement;
    private final List<CheckedCylinder> cylinders;
    private final Optional<CheckedCylinder> connected;
    private final Optional<StepAdvice> advice;
    private final TransferDesk desk;
    private final BuildRules build;
    private final FirstFillings filling;

    NextActions(
            Visit visit,
            Judgement judgement,
            List<CheckedCylinder> cylinders,
            Optional<CheckedCylinder> connected,
            Optional<StepAdvice> advice,
            TransferDesk desk,
            FirstFillings filling) {
        this.visit = visit;
        this.judgement = judgement;
        this.cylinders = cylinders;
        this.connected = connected;
        this.advice = advice;
        this.desk = desk;
        this.build = new BuildRules(visit);
        this.filling = filling;
    }

    VisitReporter.Decided decided() {
        List<Finding> dangers = dangers();
        if (!dangers.isEmpty()) {
            return with(new NextAction.MakeSafe(dangers), List.of(), dangers);
        }
        List<Finding> judged = Stream.concat(judgement.evidence().findings().stream(), build.findings().stream())
                .distinct()
                .toList();
        if (visit.system().build().evacuated()) {
            return hold(ActionKind.PREPARE, filling.findings(desk), List.of());
        }
        if (build.bars()) {
            return hold(build.kind(), judged, List.of());
        }
        if (judgement instanceof Judgement.OtherFault) {
            return hold(ActionKind.MEND_FIRST, judged, List.of());
        }
        if (judgement instanceof Judgement.Undecided) {
            if (isRunDry() || (visit.moved().net().kilograms() >= 0 && isBelowAtmosphere())) {
                return airDrawnIn(judged);
            }
            boolean other = judged.stream().anyMatch(each -> OTHER_FAULTS.contains(each.code()));
            return hold(other ? ActionKind.MEND_FIRST : ActionKind.READ_AGAIN, judged, unread());
        }
        if (advice.orElse(null) instanceof StepAdvice.NotCharge not) {
            return hold(ActionKind.MEND_FIRST, not.reasons(), List.of());
        }
        if (isColdLineUnproved()) {
            Finding outdoor = Finding.of(
                    Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(Place.OUTDOOR_AIR.path()));
            return hold(
                    ActionKind.READ_AGAIN,
                    Stream.concat(Stream.of(outdoor), judged.stream()).toList(),
                    unread());
        }
        ChargeLevel level = ((Judgement.Decided) judgement).level();
        if (level == ChargeLevel.ON_TARGET) {
            return done(judged);
        }
        return moving(level == ChargeLevel.HIGH ? Direction.OUT : Direction.IN, judged);
    }

    /** A liquid line colder than the return air is right in cold weather alone, and the weather was not read. */
    private boolean isColdLineUnproved() {
        Optional<Temperature> line =
                visit.readings().temperature(Place.LIQUID_LINE).map(Reading::value);
        Optional<Temperature> room =
                visit.readings().temperature(Place.RETURN_DRY_BULB).map(Reading::value);
        return visit.readings().temperature(Place.OUTDOOR_AIR).isEmpty()
                && line.isPresent()
                && room.filter(air -> line.get().kelvins() < air.kelvins()).isPresent();
    }

    private List<Finding> dangers() {
        Stream<Finding> ofSystem = visit.readings().pressure(Place.LIQUID_PRESSURE).stream()
                .flatMap(read -> desk.overPressure(read.value()).stream());
        return Stream.concat(cylinders.stream().flatMap(each -> each.of(Severity.DANGER_NOW).stream()), ofSystem)
                .toList();
    }

    private List<Finding> unread() {
        return judgement.evidence().gates().stream()
                .filter(Gate::blocksUnread)
                .flatMap(gate -> gate.asked().stream())
                .toList();
    }

    /** What leaks below the atmosphere draws air in, and no charge is judged with air in the condenser. */
    private VisitReporter.Decided airDrawnIn(List<Finding> context) {
        List<Finding> all = new ArrayList<>(context);
        all.add(
                0,
                Finding.of(
                        Severity.FORBIDS,
                        VisitCode.AIR_DRAWN_IN,
                        Subject.system(visit.system().name())));
        all.addAll(leak());
        return hold(ActionKind.MEND_FIRST, all, unread());
    }

    private List<Finding> leak() {
        ServicedSystem system = visit.system();
        return LeakRate.followUp(
                system.name(),
                system.refrigerant(),
                system.fullCharge(),
                system.build().features().contains(SystemFeature.LOW_TEMPERATURE_ROOM)
                        ? LeakRate.Use.COMMERCIAL_REFRIGERATION
                        : LeakRate.Use.COMFORT_COOLING_AND_OTHER);
    }

    private VisitReporter.Decided moving(Direction direction, List<Finding> judged) {
        List<Finding> context = new ArrayList<>();
        if (direction == Direction.IN) {
            boolean own = visit.moved().net().kilograms() < 0;
            Subject system = Subject.system(visit.system().name());
            context.add(Finding.of(Severity.CAUTION, own ? VisitCode.OWN_REMOVAL : VisitCode.LEAK_LIKELY, system));
            context.addAll(judged);
            if (isRunDry() || (!own && isBelowAtmosphere())) {
                return airDrawnIn(context);
            }
            if (!own) {
                context.addAll(leak());
            }
        } else {
            context.addAll(judged);
        }
        List<Finding> prepare = new ArrayList<>();
        Permit permit = desk.ask(direction);
        if (permit instanceof Permit.Refused refused) {
            refused.findings().stream()
                    .filter(each -> each.severity() != Severity.CAUTION)
                    .forEach(prepare::add);
        }
        if (visit.system().fullCharge().isEmpty()) {
            prepare.add(
                    Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading("system.fullCharge")));
        }
        if (advice.orElse(null) instanceof StepAdvice.Blocked blocked) {
            boolean cylinder = blocked.reasons().stream()
                    .anyMatch(each -> each.code() == StepCode.SOURCE_SPENT || each.code() == StepCode.NO_ROOM_FOR_STEP);
            if (!cylinder) {
                return hold(
                        ActionKind.READ_AGAIN,
                        Stream.concat(blocked.reasons().stream(), context.stream())
                                .toList(),
                        unread());
            }
            prepare.addAll(blocked.reasons());
        }
        if (prepare.isEmpty() && permit instanceof Permit.Granted && advice.isPresent()) {
            trapped(direction).ifPresent(prepare::add);
        }
        List<Finding> unread = unread();
        if (!prepare.isEmpty()) {
            return hold(
                    ActionKind.PREPARE,
                    Stream.concat(prepare.stream(), context.stream()).toList(),
                    unread);
        }
        if (!(advice.orElse(null) instanceof StepAdvice.Move move)) {
            return advice.orElse(null) instanceof StepAdvice.Done done
                    ? done(Stream.concat(done.reasons().stream(), context.stream())
                            .toList())
                    : hold(ActionKind.READ_AGAIN, context, unread);
        }
        boolean turned = (move.direction() == StepAdvice.Direction.REMOVE) != (direction == Direction.OUT);
        if (turned || !unread.isEmpty()) {
            return hold(ActionKind.READ_AGAIN, context, unread);
        }
        List<Finding> because = Stream.concat(
                        context.stream(), move.reasons().stream().map(each -> each.as(Severity.CAUTION)))
                .toList();
        Permit.Granted granted = (Permit.Granted) permit;
        return with(
                new NextAction.Move(
                        direction == Direction.OUT ? ActionKind.TAKE_OUT : ActionKind.PUT_IN,
                        order(direction, move, granted),
                        because),
                List.of(),
                Stream.concat(because.stream(), granted.findings().stream()).toList());
    }

    /** A suction pulled down to that counts as evacuated, whoever took the refrigerant: it is stopped, made tight and weighed in. */
    private boolean isRunDry() {
        return visit.readings()
                .pressure(Place.SUCTION_PRESSURE)
                .filter(read -> read.value().compareTo(RUN_DRY) < 0)
                .isPresent();
    }

    private boolean isBelowAtmosphere() {
        Pressure air = visit.site().atmosphere().pressure();
        return visit.readings()
                .pressure(Place.SUCTION_PRESSURE)
                .filter(read -> read.value().compareTo(air) < 0)
                .isPresent();
    }

    /** A hose that holds as much liquid as a step cannot meter one. */
    private Optional<Finding> trapped(Direction direction) {
        if (!(advice.orElse(null) instanceof StepAdvice.Move move) || connected.isEmpty()) {
            return Optional.empty();
        }
        Mass held = HookUpFacts.liquidIn(
                visit.hookUp().hoses(),
                visit.system().refrigerant(),
                connected.get().cylinder().temperature().value());
        return held.kilograms() < move.amount().kilograms()
                ? Optional.empty()
                : Optional.of(Finding.of(
                        Severity.FORBIDS,
                        TransferCode.TRAPPED_LIQUID,
                        new Subject(Subject.Kind.HOSE, direction.word()),
                        Figure.of("held", held),
                        Figure.of("step", move.amount())));
    }

    /** What the scale will show; rounded so that no more is moved than was computed, and to what the scale can show. */
    private StepOrder order(Direction direction, StepAdvice.Move move, Permit.Granted permit) {
        CheckedCylinder cylinder = connected.orElseThrow();
        double amountKg = Math.floor(move.amount().kilograms() * 1000) / 1000;
        Mass amount = Mass.ofKilograms(amountKg > 0 ? amountKg : move.amount().kilograms());
        var weighing = cylinder.cylinder().weighing().orElseThrow();
        MassDifference into = amount.differenceFrom(Mass.ZERO);
        MassDifference shown = weighing.showsAfter(direction == Direction.OUT ? into : into.negated());
        double u = cylinder.contents().map(Reading::standardUncertainty).orElse(0.0);
        MassDifference never = cylinder.room().orElse(null) instanceof Room.Left left && direction == Direction.OUT
                ? left.neverPass()
                : weighing.showsAfter(cylinder.contents()
                        .map(contents -> contents.value().negated())
                        .orElse(MassDifference.ZERO));
        return new StepOrder(
                amount,
                Reading.of(shown, u, "scale"),
                never,
                direction == Direction.OUT
                        ? permit.flow().from().kind()
                        : permit.flow().to().kind(),
                direction == Direction.OUT
                        ? permit.flow().to().kind()
                        : permit.flow().from().kind(),
                permit.flow().medium(),
                move.settlingTime().isZero() ? Duration.ofMinutes(15) : move.settlingTime());
    }

    /** What was not read is asked for, and leaves it done. */
    private VisitReporter.Decided done(List<Finding> because) {
        List<Finding> unread = unread();
        return with(
                new NextAction.Done(because),
                asked(ActionKind.DONE, unread),
                Stream.concat(because.stream(), unread.stream()).distinct().toList());
    }

    private VisitReporter.Decided hold(ActionKind kind, List<Finding> because, List<Finding> unread) {
        List<Finding> all = Stream.concat(because.stream(), unread.stream())
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        return with(new NextAction.Hold(kind, all), asked(kind, all), all);
    }

    private static VisitReporter.Decided with(NextAction action, List<String> ask, List<Finding> findings) {
        return new VisitReporter.Decided(action, ask, findings);
    }

    /** What is to be prepared is asked for whatever stands in the way; else only what was not given. */
    private List<String> asked(ActionKind kind, List<Finding> findings) {
        return new Asked(connected, desk.plan())
                .of(
                        kind == ActionKind.PREPARE
                                ? findings
                                : findings.stream()
                                        .filter(each -> each.code() == CommonCode.NOT_GIVEN)
                                        .toList());
    }
}
