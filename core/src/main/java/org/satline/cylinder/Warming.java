package org.satline.cylinder;

import java.util.List;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** What a cylinder becomes as it warms with what it holds now. */
final class Warming {
    /** Freezing, 70 degF, a hot day, and the 131 degF of the fill rules, degC. */
    private static final List<Double> MET = List.of(0.0, 21.1, 40.0, 55.0);

    private Warming() {}

    static Optional<VesselStates> of(Cylinder cylinder, CylinderFacts facts, Atmosphere site) {
        if (facts.vessel().isEmpty()) {
            return Optional.empty();
        }
        ClosedVessel vessel = facts.vessel().get();
        Optional<Pressure> mark = cylinder.stamps().servicePressure().map(gauge -> Pressure.ofGauge(gauge, site));
        return condition(vessel, cylinder.temperature().value(), mark)
                .map(now -> new VesselStates(
                        facts.contents(),
                        now,
                        MET.stream()
                                .flatMap(celsius -> condition(vessel, Temperature.ofCelsius(celsius), mark).stream())
                                .toList(),
                        vessel.liquidFull(),
                        mark.map(vessel::reaches)));
    }

    /** Nothing where the equation does not reach: beyond its range of pressure, and close to the critical point, it tells none. */
    private static Optional<VesselCondition> condition(
            ClosedVessel vessel, Temperature temperature, Optional<Pressure> mark) {
        try {
            return Optional.of(vessel.at(temperature, mark));
        } catch (OutOfValidityException e) {
            return Optional.empty();
        }
    }
}
