package org.satline.program.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Power;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SystemDesign;
import org.satline.simulation.WorkingFluid;

/**
 * Draws air conditioners: refrigerant, metering device, size, rating point, compressor and inner volumes, each anew
 * for every visit. All
 * ranges are our choice, of the order of residential split systems with short to long lines.
 */
final class RandomSystems implements Machines {
    private static final List<String> REFRIGERANTS = List.of("R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a");

    private final Random random;
    private final Map<String, WorkingFluid> fluids = new HashMap<>();
    private final Map<String, SaturationCurve> curves = new HashMap<>();

    RandomSystems(Random random) {
        this.random = random;
    }

    @Override
    public SaturationCurve curve(Refrigerant refrigerant) {
        return curves.computeIfAbsent(refrigerant.designation(), name -> SaturationCurves.of(refrigerant));
    }

    private WorkingFluid fluid(Refrigerant refrigerant) {
        return fluids.computeIfAbsent(refrigerant.designation(), name -> WorkingFluid.of(refrigerant));
    }

    private Refrigerant refrigerant() {
        return Catalogue.standard().find(REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size())));
    }

    /** Nothing where no coil of usual size makes the drawn rating: nobody would build it. */
    @Override
    public Optional<Machine> next() {
        SystemDesign design = design(refrigerant());
        try {
            return Optional.of(new SimulatedMachine(SimulatedSystem.of(design, fluid(design.refrigerant()))));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    @Override
    public Optional<Machine> filledWithAnother(Machine machine) {
        Refrigerant other = refrigerant();
        while (other.equals(machine.refrigerant())) {
            other = refrigerant();
        }
        return machine instanceof SimulatedMachine it
                ? Optional.of(new SimulatedMachine(it.system().filledWith(fluid(other))))
                : Optional.empty();
    }

    private SystemDesign design(Refrigerant refrigerant) {
        double subcooling = between(4, 8);
        return new SystemDesign(
                refrigerant,
                random.nextBoolean() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE,
                Power.ofTonsOfRefrigeration(between(1.5, 5)),
                TemperatureDifference.ofKelvins(between(4, 8)),
                TemperatureDifference.ofKelvins(subcooling),
                Temperature.ofCelsius(between(4, 10)),
                TemperatureDifference.ofKelvins(between(subcooling + 3, 16)),
                between(0.6, 0.75),
                new SystemDesign.CoilVolumes(
                        between(0.2, 0.55), between(0.2, 0.45), between(0.02, 0.15), between(0.3, 1)));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
