package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Diagnosis;
import org.satline.charge.LineMargin;
import org.satline.charge.Margins;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;
import org.satline.step.LineCharge;
import org.satline.transfer.Flow;
import org.satline.transfer.PointKind;

/**
 * What follows from the readings of one visit. Made by {@link VisitReporter}. Immutable, thread-safe.
 *
 * @param input what was found on site
 * @param properties where the properties come from
 * @param pressures absolute pressures with their saturation temperatures
 * @param margins superheat and subcooling, as far as the readings go
 * @param diagnosis what the readings say about the charge, with the risks of that
 * @param work how far the charge is off and how much to move next
 * @param longerLine the charge that a line set longer than covered needs in addition
 * @param cylinder what the recovery cylinder may still take; nothing where none is hooked up
 * @param hookUp the cylinder as a vessel, its contents, its hoses and the rules of the transfer; nothing without a cylinder
 * @param flows for each open port which way refrigerant would flow; none without a cylinder
 * @param nextSteps what to do next, in order
 * @param cautions what to beware of, the loudest first
 */
public record VisitReport(
        VisitInput input,
        PropertySource properties,
        List<PressureReadout> pressures,
        Margins margins,
        Diagnosis diagnosis,
        ChargeWork work,
        Optional<LineCharge> longerLine,
        Optional<CylinderReport> cylinder,
        Optional<HookUpReport> hookUp,
        List<Flow> flows,
        List<NextStep> nextSteps,
        List<Caution> cautions) {
    /** {@inheritDoc} */
    public VisitReport {
        Parts.required("input properties", input, properties);
        pressures = List.copyOf(pressures);
        Parts.required("margins diagnosis work longerLine cylinder", margins, diagnosis, work, longerLine, cylinder);
        Parts.required("hookUp", hookUp);
        flows = List.copyOf(flows);
        nextSteps = List.copyOf(nextSteps);
        cautions = List.copyOf(cautions);
    }

    /**
     * Tells whether the cylinder on site must not be connected: it is refused, a rule forbids the transfer, or it does not hold what the system holds.
     *
     * @return true where there is a reason, false also where there is no cylinder
     */
    public boolean mustNotConnect() {
        return cylinder.filter(CylinderReport::isRefused).isPresent()
                || hookUp.filter(each ->
                                !each.forbidding().isEmpty() || !each.refusals().isEmpty())
                        .isPresent()
                || input.cylinder()
                        .filter(each -> !each.receives()
                                && !each.holding()
                                        .equals(Optional.of(input.system().refrigerant())))
                        .isPresent();
    }

    /**
     * Tells whether refrigerant is to go through a port by what is to be done next; only then is its hose to be purged.
     *
     * @param port a port of the system
     * @return true where a next step moves refrigerant through it
     */
    public boolean goesThrough(PointKind port) {
        return nextSteps.stream().anyMatch(step -> step.through().contains(port));
    }

    /**
     * Tells whether any refrigerant is to move to or from the cylinder that is hooked up by what is to be done next.
     *
     * @return true where a next step moves some
     */
    public boolean movesNow() {
        return nextSteps.stream().anyMatch(step -> !step.through().isEmpty());
    }

    /**
     * Tells whether the readings call for refrigerant to be moved at all.
     *
     * @return true where the charge is decided to be high or low
     */
    public boolean callsForMoving() {
        return diagnosis instanceof Diagnosis.Decided decided && decided.level() != ChargeLevel.ON_TARGET;
    }

    /**
     * Returns the derivation of every number in the report.
     *
     * @return steps in the order of the report, each once
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(input.site().step());
        pressures.forEach(readout -> steps.addAll(readout.steps()));
        margins.superheat().map(LineMargin::steps).ifPresent(steps::addAll);
        margins.subcooling().map(LineMargin::steps).ifPresent(steps::addAll);
        steps.addAll(diagnosis.evidence().steps());
        work.estimate().map(ChargeEstimate::step).ifPresent(steps::add);
        longerLine.map(LineCharge::steps).ifPresent(steps::addAll);
        cylinder.map(CylinderReport::steps).ifPresent(steps::addAll);
        hookUp.map(HookUpReport::steps).ifPresent(steps::addAll);
        flows.forEach(flow -> steps.addAll(flow.steps()));
        return steps.stream().distinct().toList();
    }
}
