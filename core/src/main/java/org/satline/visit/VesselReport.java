package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.VesselCondition;
import org.satline.cylinder.VesselPoint;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * The cylinder as a closed vessel with what it holds now. Immutable, thread-safe.
 *
 * @param contents the mass inside by weighing
 * @param now pressure and level at its temperature
 * @param warmer the same at other temperatures that a cylinder meets, rising
 * @param liquidFull the temperature at which liquid fills it
 * @param servicePressure the temperature at which the marked service pressure is reached; nothing without that mark
 */
public record VesselReport(
        Mass contents,
        VesselCondition now,
        List<VesselCondition> warmer,
        VesselPoint liquidFull,
        Optional<VesselPoint> servicePressure) {
    /** {@inheritDoc} */
    public VesselReport {
        Parts.required("contents now", contents, now);
        warmer = List.copyOf(warmer);
        Parts.required("liquidFull servicePressure", liquidFull, servicePressure);
    }

    /**
     * Returns how pressures and levels were found.
     *
     * @return steps, each once
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>(now.steps());
        warmer.forEach(each -> steps.addAll(each.steps()));
        return steps.stream().distinct().toList();
    }
}
