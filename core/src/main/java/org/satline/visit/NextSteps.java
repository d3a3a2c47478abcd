package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Diagnosis;
import org.satline.charge.StepAdvice;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.Room;
import org.satline.duty.TransferRules;
import org.satline.refrigerant.Refrigerant;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowWarning;
import org.satline.transfer.PointKind;

/** What to do next, from the level of the charge, the cylinder and the way it would flow. */
final class NextSteps {
    private static final String PRACTICE = "common practice, no source";
    private static final String WAIT_BASIS =
            "California Energy Code, Reference Appendix RA3.2: 15 min in cooling before readings; waiting again after a change: common practice";

    private static final Set<Reason> TO_BE_PUT_RIGHT = Set.of(
            Reason.STAMP_MISSING,
            Reason.STAMPS_CONTRADICTORY,
            Reason.NO_LIMIT,
            Reason.CONTENTS_UNKNOWN,
            Reason.NOT_WEIGHED,
            Reason.NOT_AT_REST);

    /** What asks for more than another cylinder. */
    private static final Set<Reason> TO_BE_SAID_ALOUD = Set.of(Reason.OVERFILLED, Reason.LIQUID_FULL);

    private final VisitInput input;
    private final Diagnosis diagnosis;
    private final ChargeWork work;
    private final Optional<CylinderReport> cylinder;
    private final Optional<HookUpReport> hookUp;
    private final List<Flow> flows;
    private final StepAmount amount;
    private final List<NextStep> steps = new ArrayList<>();

    private NextSteps(
            VisitInput input,
            Diagnosis diagnosis,
            ChargeWork work,
            Optional<CylinderReport> cylinder,
            Optional<HookUpReport> hookUp,
            List<Flow> flows) {
        this.input = input;
        this.diagnosis = diagnosis;
        this.work = work;
        this.cylinder = cylinder;
        this.hookUp = hookUp;
        this.flows = flows;
        this.amount = new StepAmount(input, work);
    }

    static List<NextStep> of(
            VisitInput input,
            Diagnosis diagnosis,
            ChargeWork work,
            Optional<CylinderReport> cylinder,
            Optional<HookUpReport> hookUp,
            List<Flow> flows) {
        return new NextSteps(input, diagnosis, work, cylinder, hookUp, flows).found();
    }

    private List<NextStep> found() {
        if (diagnosis instanceof Diagnosis.Decided decided) {
            switch (decided.level()) {
                case HIGH -> takeOut();
                case LOW -> putIn();
                case ON_TARGET ->
                    add(diagnosis.evidence().advice() + "; write down the readings and close up", PRACTICE);
            }
        } else {
            add(
                    diagnosis.evidence().advice(),
                    diagnosis instanceof Diagnosis.NotCharge
                            ? "charge is never adjusted to hide another fault"
                            : "no charge is adjusted while the level is undecided");
        }
        return List.copyOf(steps);
    }

    private void takeOut() {
        if (input.cylinder().isEmpty() || cylinder.isEmpty()) {
            add(
                    "hook up a recovery cylinder for "
                            + input.system().refrigerant().designation()
                            + " alone and weigh it before anything goes in; then take " + amount.words() + " out",
                    PRACTICE);
            return;
        }
        if (cylinder.get().isRefused()) {
            refused(cylinder.get().refusals());
            return;
        }
        // without a reason to refuse it there is room
        if (!(cylinder.get().room().orElse(null) instanceof Room.Left left)) {
            add("take another recovery cylinder: this one has no room", PRACTICE);
            return;
        }
        List<PointKind> ports = flows.stream()
                .filter(Flow.OneWay.class::isInstance)
                .map(Flow.OneWay.class::cast)
                .filter(way -> way.to().kind() == input.cylinder().get().valve() && onlyFast(way))
                .map(way -> way.from().kind())
                .toList();
        if (ports.isEmpty()) {
            add(
                    "open no valve yet: from no open port would refrigerant flow into the cylinder by itself and without a warning; cool the"
                            + " cylinder or use a recovery machine",
                    PRACTICE);
            return;
        }
        if (stopped()) {
            return;
        }
        steps.add(new NextStep(
                "take " + amount.words() + " out from " + joined(ports) + " into the cylinder" + amount.reading()
                        + ", and whatever happens stop before the scale shows " + Figures.down(left.stopReading()),
                PRACTICE,
                ports));
        if (flows.stream().anyMatch(NextSteps::intoVacuum)) {
            add(FlowWarning.FAST_INTO_VACUUM.advice(), PRACTICE);
        }
        waitAndWhy();
    }

    /** What is missing or contradictory is asked for before another cylinder is. */
    private void refused(List<Refusal> refusals) {
        List<Refusal> loud = refusals.stream()
                .filter(refusal -> TO_BE_SAID_ALOUD.contains(refusal.reason()))
                .toList();
        if (!loud.isEmpty()) {
            loud.forEach(refusal -> add(refusal.text(), refusal.basis()));
            return;
        }
        if (refusals.stream().map(Refusal::reason).allMatch(TO_BE_PUT_RIGHT::contains)) {
            add(
                    "nothing may go in yet; first put right or supply: "
                            + refusals.stream().map(Refusal::text).collect(Collectors.joining("; ")),
                    PRACTICE);
            return;
        }
        add("take another recovery cylinder: this one must not be filled, for the reasons given", PRACTICE);
    }

    /** What the advice on steps says against moving more is said instead of it. */
    private boolean stopped() {
        if (work.advice().isEmpty() || (work.advice().get() instanceof StepAdvice.Move move && goesAlong(move))) {
            return false;
        }
        StepAdvice advice = work.advice().get();
        String what = advice instanceof StepAdvice.Done
                ? "stop: the charge is as near its target as these steps can bring it; "
                : advice instanceof StepAdvice.NotCharge
                        ? "stop: the charge is not what is wrong; "
                        : advice instanceof StepAdvice.Blocked
                                ? "no further step yet: "
                                : "stop: the readings of this visit contradict each other; ";
        add(what + String.join("; ", advice.reasons()), "Bayesian linear regression over the steps so far");
        return true;
    }

    private boolean goesAlong(StepAdvice.Move move) {
        StepAdvice.Direction wanted =
                diagnosis instanceof Diagnosis.Decided decided && decided.level() == ChargeLevel.LOW
                        ? StepAdvice.Direction.ADD
                        : StepAdvice.Direction.REMOVE;
        return move.direction() == wanted;
    }

    private void waitAndWhy() {
        add("after each step let the system run for 15 min, then read again", WAIT_BASIS);
        if (work.advice().orElse(null) instanceof StepAdvice.Move move) {
            add(
                    "why that much: " + String.join("; ", move.reasons()),
                    "Bayesian linear regression over the steps so far; prior: how typical systems answer, our choice");
        }
    }

    /** A fast flow into an evacuated cylinder is the way it should go, slowly; every other warning bars the port. */
    private static boolean onlyFast(Flow.OneWay way) {
        return way.warnings().stream().allMatch(warning -> warning == FlowWarning.FAST_INTO_VACUUM);
    }

    private static boolean intoVacuum(Flow flow) {
        return flow instanceof Flow.OneWay way && way.warnings().contains(FlowWarning.FAST_INTO_VACUUM);
    }

    private void putIn() {
        Refrigerant refrigerant = input.system().refrigerant();
        if (stopped()) {
            return;
        }
        Optional<CylinderOnSite> source = input.cylinder().filter(each -> !each.receives());
        if (source.isPresent() && source.get().holding().isEmpty()) {
            add(
                    "do not connect " + source.get().name()
                            + ": it is said to hold nothing, so there is nothing to add from it; take a source cylinder of "
                            + refrigerant.designation(),
                    PRACTICE);
            return;
        }
        if (source.isPresent() && !source.get().holding().equals(Optional.of(refrigerant))) {
            add(
                    "do not connect " + source.get().name() + ": it holds "
                            + source.get().holding().get().designation() + ", the system "
                            + refrigerant.designation() + "; mixing them ruins both",
                    PRACTICE);
            return;
        }
        List<TransferRules.Finding> forbidding =
                source.flatMap(each -> hookUp).map(HookUpReport::forbidding).orElse(List.of());
        if (!forbidding.isEmpty()) {
            forbidding.forEach(rule -> add("do not add from this cylinder: " + rule.text(), rule.citation()));
            return;
        }
        List<Refusal> refusals = hookUp.map(HookUpReport::refusals).orElse(List.of());
        if (!refusals.isEmpty()) {
            refusals.forEach(
                    refusal -> add("do not connect or add from this cylinder: " + refusal.text(), refusal.basis()));
            return;
        }
        add(
                "find and mend the leak before adding: refrigerant does not wear out",
                "common practice; for larger appliances 40 CFR 82.157");
        List<PointKind> ports = source.map(each -> outOf(each.valve())).orElse(List.of());
        if (source.isPresent() && ports.isEmpty()) {
            add(
                    "open no valve yet: by the pressures nothing would flow out of "
                            + source.get().name()
                            + " by itself, and what flows the other way overfills and contaminates it; let it warm up, in lukewarm water at most, never"
                            + " with a flame or above 50 degC (122 degF), then read its pressure again",
                    PRACTICE);
            return;
        }
        if (refrigerant.isBlend()
                && source.filter(each -> each.valve() == PointKind.SOURCE_CYLINDER_VAPOUR_VALVE)
                        .isPresent()) {
            add(
                    "first move the hose to the liquid valve of " + source.get().name()
                            + ", or, where it has one valve only, turn the cylinder as its label says: at the vapour valve the blend would come as vapour",
                    PRACTICE);
        }
        String from = source.map(each -> " from " + each.name() + amount.reading() + onCondition())
                .orElse(" from a source cylinder of new or reclaimed " + refrigerant.designation());
        steps.add(new NextStep(
                refrigerant.isBlend()
                        ? "add " + amount.words() + from
                                + ", as liquid, since vapour would change the blend; meter it into the suction side so that it flashes before the compressor"
                        : "add " + amount.words() + from
                                + "; liquid only metered, so that it flashes before the compressor",
                PRACTICE,
                ports));
        add("never add from a cylinder of mixed recovered refrigerant", "40 CFR 82.154(d); common practice");
        waitAndWhy();
    }

    /** The open ports into which the cylinder would push by itself. */
    private List<PointKind> outOf(PointKind valve) {
        return flows.stream()
                .filter(Flow.OneWay.class::isInstance)
                .map(Flow.OneWay.class::cast)
                .filter(way -> way.from().kind() == valve)
                .map(way -> way.to().kind())
                .toList();
    }

    private String onCondition() {
        return hookUp.filter(report -> !report.rules().isEmpty()).isPresent()
                ? ", on the conditions of the rules of this transfer"
                : "";
    }

    private static String joined(List<PointKind> ports) {
        return ports.stream().map(port -> "the " + port).collect(Collectors.joining(", or "));
    }

    private void add(String text, String basis) {
        steps.add(new NextStep(text, basis));
    }
}
