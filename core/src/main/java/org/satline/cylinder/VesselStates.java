package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Step;
import org.satline.filling.VesselPoint;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;

/**
 * A cylinder as a closed vessel with what it holds now. Immutable, thread-safe.
 *
 * @param contents the mass inside by weighing
 * @param now pressure and level at its temperature
 * @param warmer the same at other temperatures that a cylinder meets, rising
 * @param liquidFull the temperature at which liquid fills it
 * @param reachesService the temperature at which the marked service pressure is reached; nothing without that mark
 */
public record VesselStates(
        Mass contents,
        VesselCondition now,
        List<VesselCondition> warmer,
        VesselPoint liquidFull,
        Optional<VesselPoint> reachesService) {
    /** {@inheritDoc} */
    public VesselStates {
        Parts.required("contents now liquidFull reachesService", contents, now, liquidFull, reachesService);
        warmer = Parts.list("warmer", warmer);
    }

    /**
     * Mass of what is not vapour.
     *
     * @return the liquid; 0 above the critical temperature
     */
    public Mass liquid() {
        MassDifference liquid = contents.differenceFrom(now.vapourMass());
        return Mass.ofKilograms(Math.max(0, liquid.kilograms()));
    }

    /**
     * How pressures and levels were found.
     *
     * @return steps, each once
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>(now.steps());
        warmer.forEach(each -> steps.addAll(each.steps()));
        return steps.stream().distinct().toList();
    }
}
