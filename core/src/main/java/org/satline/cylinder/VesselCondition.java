package org.satline.cylinder;

import java.util.List;
import java.util.Optional;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * A closed vessel at one temperature. Immutable, thread-safe.
 *
 * @param temperature the temperature
 * @param phases what is inside: liquid, vapour, both, or above the critical temperature neither
 * @param pressure the pressure, absolute
 * @param liquidVolumeFraction the share of the volume that liquid fills, in [0, 1]; nothing above the critical temperature
 * @param vapourMass the mass of the vapour; that of the whole contents where they are neither liquid nor vapour
 * @param cautions loud where the vessel is full of liquid, nearly so, or under more pressure than its mark allows
 * @param steps the derivation
 */
public record VesselCondition(
        Temperature temperature,
        Phases phases,
        Pressure pressure,
        Optional<Double> liquidVolumeFraction,
        Mass vapourMass,
        List<Finding> cautions,
        List<Step> steps) {
    /** {@inheritDoc} */
    public VesselCondition {
        Parts.required("temperature phases pressure", temperature, phases, pressure);
        Parts.required("liquidVolumeFraction vapourMass", liquidVolumeFraction, vapourMass);
        cautions = Parts.list("cautions", cautions);
        steps = Parts.list("steps", steps);
    }
}
