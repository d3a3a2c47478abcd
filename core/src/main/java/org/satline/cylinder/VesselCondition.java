package org.satline.cylinder;

import java.util.List;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.safety.Caution;

/**
 * A closed vessel at one temperature. Immutable, thread-safe.
 *
 * @param temperature the temperature
 * @param phases what is inside: liquid, vapour or both
 * @param pressure the pressure, absolute
 * @param liquidVolumeFraction the share of the volume that liquid fills, in [0, 1]
 * @param vapourMass the mass of the vapour
 * @param cautions loud where the vessel is full of liquid or nearly so
 * @param steps the derivation
 */
public record VesselCondition(
        Temperature temperature,
        Phases phases,
        Pressure pressure,
        double liquidVolumeFraction,
        Mass vapourMass,
        List<Caution> cautions,
        List<Step> steps) {
    /** {@inheritDoc} */
    public VesselCondition {
        Parts.required("temperature phases pressure vapourMass", temperature, phases, pressure, vapourMass);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }
}
