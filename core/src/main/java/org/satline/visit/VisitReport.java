package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.Judgement;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.LineMargin;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.Room;
import org.satline.cylinder.VesselStates;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.filling.FillAssessment;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;
import org.satline.saturation.PropertySource;
import org.satline.step.LineCharge;
import org.satline.step.StepAdvice;
import org.satline.transfer.Flow;
import org.satline.transfer.HoseState;
import org.satline.transfer.Permit;
import org.satline.transfer.TransferCode;
import org.satline.transfer.hookup.HookUpPlan;

/**
 * What follows from one visit: one action, and what it rests on. Data without a sentence; the room {@code wording} puts it into words.
 * Immutable, thread-safe.
 *
 * @param visit what was found on site
 * @param properties where the properties come from
 * @param pressures absolute pressures with their saturation temperatures
 * @param judgement what the readings say about the charge
 * @param estimate the charge error as a fraction of the full charge, where both margins were read and a level was decided
 * @param advice the next step by the answers so far, where the level is low or high and the full charge is known
 * @param longerLine the charge of a longer line set, where there is one
 * @param firstFilling what is weighed into an evacuated system, where its charge and the source's weight are known
 * @param cylinders each cylinder, checked once, in the order of the visit
 * @param flows for each open port which way refrigerant would flow to or from the connected cylinder
 * @param permit whether refrigerant may go the way that the charge asks for; nothing where it asks for none
 * @param hose whether the hose is ready
 * @param plan the order of valves and joints, where something is to be connected, swept or moved
 * @param action what is done next
 * @param ask paths of the fields that are to be supplied, each once
 * @param findings everything that was found, the heaviest first, each once
 * @param cautions what to beware of, by gas and task
 */
public record VisitReport(
        Visit visit,
        PropertySource properties,
        List<PressureReadout> pressures,
        Judgement judgement,
        Optional<ChargeEstimate> estimate,
        Optional<StepAdvice> advice,
        Optional<LineCharge> longerLine,
        Optional<LineCharge.FirstFilling> firstFilling,
        List<CheckedCylinder> cylinders,
        List<Flow> flows,
        Optional<Permit> permit,
        HoseState hose,
        Optional<HookUpPlan> plan,
        NextAction action,
        List<String> ask,
        List<Finding> findings,
        List<Caution> cautions) {
    /** {@inheritDoc} */
    public VisitReport {
        Parts.required("visit properties judgement estimate advice", visit, properties, judgement, estimate, advice);
        Parts.required("longerLine firstFilling permit", longerLine, firstFilling, permit);
        Parts.required("hose plan action", hose, plan, action);
        pressures = Parts.list("pressures", pressures);
        cylinders = Parts.list("cylinders", cylinders);
        flows = Parts.list("flows", flows);
        ask = Parts.list("ask", ask);
        findings = Parts.list("findings", findings);
        cautions = Parts.list("cautions", cautions);
    }

    /**
     * The level of the charge.
     *
     * @return the level, where one was decided
     */
    public Optional<ChargeLevel> level() {
        return judgement instanceof Judgement.Decided decided ? Optional.of(decided.level()) : Optional.empty();
    }

    /**
     * The cylinder that is connected.
     *
     * @return the checked cylinder, where one is connected
     */
    public Optional<CheckedCylinder> connected() {
        return visit.connected()
                .flatMap(name -> cylinders.stream()
                        .filter(each -> each.cylinder().name().equals(name))
                        .findFirst());
    }

    /**
     * The cylinder to which a change-over takes the hose.
     *
     * @return the first on site that is there for the other direction than the connected one and may be used
     */
    public Optional<CheckedCylinder> other() {
        return HookUpModel.other(cylinders, connected());
    }

    /**
     * The order of acts that may be carried out now: that of the step where refrigerant moves; how the hose is made ready, on this cylinder
     * or on the one that is needed instead, where nothing else stands in the way; how everything comes off where nothing is left to do.
     *
     * @return the acts by phase; nothing where no hand is to be moved
     */
    public Optional<HookUpPlan.Planned> actsNow() {
        boolean prepares = action.kind() == ActionKind.PREPARE
                && hose == HoseState.NOT_PURGED
                && permit.filter(VisitReport::isHeldByHoseAlone).isPresent();
        return plan.filter(HookUpPlan.Planned.class::isInstance)
                .map(HookUpPlan.Planned.class::cast)
                .filter(planned -> prepares || action.movesNow() || action.kind() == ActionKind.DONE);
    }

    private static boolean isHeldByHoseAlone(Permit permit) {
        return permit.findings().stream()
                .filter(each -> each.severity() != Severity.CAUTION)
                .allMatch(each -> each.code() == TransferCode.HOSE_NOT_PURGED
                        || each.code() == TransferCode.OTHER_CYLINDER_NEEDED);
    }

    /**
     * Why no order of acts makes the hose ready.
     *
     * @return the reason and the part that would make one possible; nothing where there is an order, or none was asked for
     */
    public Optional<HookUpPlan.NoPlan> noPlan() {
        return plan.filter(HookUpPlan.NoPlan.class::isInstance).map(HookUpPlan.NoPlan.class::cast);
    }

    /**
     * The cautions that matter most for what is done next: ignition first, then poison, then what the task asks for.
     *
     * @return at most two
     */
    public List<Caution> leadingCautions() {
        return LeadingCautions.of(action.kind(), cautions);
    }

    /**
     * Returns the derivation of every number in the report.
     *
     * @return steps in the order of the report, each once
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(visit.site().step());
        pressures.forEach(readout -> steps.addAll(readout.steps()));
        judgement.evidence().margins().superheat().map(LineMargin::steps).ifPresent(steps::addAll);
        judgement.evidence().margins().subcooling().map(LineMargin::steps).ifPresent(steps::addAll);
        steps.addAll(judgement.evidence().steps());
        estimate.map(ChargeEstimate::step).ifPresent(steps::add);
        longerLine.map(LineCharge::steps).ifPresent(steps::addAll);
        firstFilling.map(LineCharge.FirstFilling::steps).ifPresent(steps::addAll);
        for (CheckedCylinder each : cylinders) {
            if (each.fill() instanceof FillAssessment.Allowed allowed) {
                steps.addAll(allowed.steps());
            }
            each.room().map(Room::steps).ifPresent(steps::addAll);
            each.vessel().map(VesselStates::steps).ifPresent(steps::addAll);
        }
        flows.forEach(flow -> steps.addAll(flow.steps()));
        return steps.stream().distinct().toList();
    }
}
