package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.Diagnosis;
import org.satline.charge.LineMargin;
import org.satline.charge.Margins;
import org.satline.explanation.Step;
import org.satline.safety.Caution;
import org.satline.transfer.Flow;

/**
 * What follows from the readings of one visit. Made by {@link VisitReporter}. Immutable, thread-safe.
 *
 * @param input what was found on site
 * @param properties where the properties come from
 * @param pressures absolute pressures with their saturation temperatures
 * @param margins superheat and subcooling, as far as the readings go
 * @param diagnosis what the readings say about the charge, with the risks of that
 * @param cylinder what the recovery cylinder may still take; nothing where none is hooked up
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
        Optional<CylinderReport> cylinder,
        List<Flow> flows,
        List<NextStep> nextSteps,
        List<Caution> cautions) {
    /**
     * Copies the lists.
     *
     * @param input what was found on site
     * @param properties where the properties come from
     * @param pressures absolute pressures with their saturation temperatures
     * @param margins superheat and subcooling, as far as the readings go
     * @param diagnosis what the readings say about the charge, with the risks of that
     * @param cylinder what the recovery cylinder may still take
     * @param flows for each open port which way refrigerant would flow
     * @param nextSteps what to do next, in order
     * @param cautions what to beware of, the loudest first
     */
    public VisitReport {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(properties, "properties");
        pressures = List.copyOf(pressures);
        Objects.requireNonNull(margins, "margins");
        Objects.requireNonNull(diagnosis, "diagnosis");
        Objects.requireNonNull(cylinder, "cylinder");
        flows = List.copyOf(flows);
        nextSteps = List.copyOf(nextSteps);
        cautions = List.copyOf(cautions);
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
        cylinder.map(CylinderReport::steps).ifPresent(steps::addAll);
        flows.forEach(flow -> steps.addAll(flow.steps()));
        return steps.stream().distinct().toList();
    }
}
