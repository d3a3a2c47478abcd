package org.satline.transfer.simulator;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;

/**
 * What one act did. Immutable, thread-safe.
 *
 * @param transfers what went where, and as what
 * @param swept volumes swept through to a loose joint or a cylinder
 * @param ventedVapour refrigerant lost to the air as vapour
 * @param ventedLiquid refrigerant lost to the air as liquid
 * @param airEntered volumes that took air in
 * @param liquidShutIn volumes left shut that would be full of liquid below 65 degC
 * @param pressures pressure of each volume after the act, absolute
 * @param violations invariants broken
 */
public record Effects(
        List<Transfer> transfers,
        Set<String> swept,
        Mass ventedVapour,
        Mass ventedLiquid,
        Set<String> airEntered,
        Set<String> liquidShutIn,
        Map<String, Pressure> pressures,
        List<Violation> violations) {
    /** {@inheritDoc} */
    public Effects {
        Parts.required("swept airEntered liquidShutIn pressures", swept, airEntered, liquidShutIn, pressures);
        Parts.required("ventedVapour ventedLiquid", ventedVapour, ventedLiquid);
        transfers = Parts.list("transfers", transfers);
        swept = Set.copyOf(swept);
        airEntered = Set.copyOf(airEntered);
        liquidShutIn = Set.copyOf(liquidShutIn);
        pressures = Map.copyOf(pressures);
        violations = Parts.list("violations", violations);
    }
}
