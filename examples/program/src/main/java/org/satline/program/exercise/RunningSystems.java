package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;
import org.satline.simulation.SystemDesign;

/** Draws air conditioners with charge and weather, and keeps those that show what a technician would see. */
final class RunningSystems {
    private final Bench bench;

    RunningSystems(Bench bench) {
        this.bench = bench;
    }

    /**
     * A system as it runs.
     *
     * @param system the system
     * @param air the weather
     * @param charge what is in it
     * @param fault what is wrong beside the charge
     * @param state what it settles to
     */
    record Running(SimulatedSystem system, AirConditions air, Mass charge, ImposedFault fault, SteadyState state) {
        String designation() {
            return system.design().refrigerant().designation();
        }

        MeteringDevice metering() {
            return system.design().metering();
        }

        /** The quantity that shows the charge. */
        TemperatureDifference judged() {
            return judged(state);
        }

        private TemperatureDifference judged(SteadyState of) {
            return metering() == MeteringDevice.EXPANSION_VALVE ? of.subcooling() : of.superheat();
        }

        /** What the same system shows in this weather when it is charged right and nothing is wrong. */
        TemperatureDifference target() {
            return judged(system.steadyState(system.ratedCharge(), air, ImposedFault.none()));
        }

        /** The same system after refrigerant was moved. */
        Running with(Mass otherCharge) {
            return new Running(system, air, otherCharge, fault, system.steadyState(otherCharge, air, fault));
        }
    }

    /** A system with the charge off by the share; nothing where the model finds no state, or one that nobody would see. */
    Optional<Running> draw(
            Draw draw, String designation, MeteringDevice metering, double chargeError, ImposedFault fault) {
        Refrigerant refrigerant = bench.refrigerant(designation);
        double subcooling = draw.between(4.5, 8);
        SystemDesign design = new SystemDesign(
                refrigerant,
                metering,
                Power.ofTonsOfRefrigeration(draw.pick(List.of(1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0))),
                TemperatureDifference.ofKelvins(draw.between(4, 8)),
                TemperatureDifference.ofKelvins(subcooling),
                Temperature.ofCelsius(draw.between(5, 9)),
                TemperatureDifference.ofKelvins(draw.between(subcooling + 4, 15)),
                draw.between(0.62, 0.74),
                SystemDesign.CoilVolumes.typical());
        AirConditions air = AirConditions.ofCelsius(draw.between(24, 40), draw.between(23, 27), draw.between(15, 19));
        try {
            SimulatedSystem system = SimulatedSystem.of(design, bench.fluid(designation));
            Mass charge = Mass.ofKilograms(system.ratedCharge().kilograms() * (1 + chargeError));
            Running running = new Running(system, air, charge, fault, system.steadyState(charge, air, fault));
            return seen(running) ? Optional.of(running) : Optional.empty();
        } catch (NoSteadyStateException | IllegalArgumentException e) {
            return Optional.empty(); // nobody would build it, or its safety switches would stop it
        }
    }

    /** Within what an air conditioner shows: our choice of bounds, no source. */
    boolean seen(Running running) {
        SteadyState state = running.state();
        SaturationCurve curve = bench.curve(running.designation());
        double evaporating = curve.dewTemperature(state.suctionPressure()).celsius();
        double condensing = curve.bubbleTemperature(state.liquidPressure()).celsius();
        double outdoor = running.air().outdoor().celsius();
        return evaporating >= -4
                && evaporating <= 14
                && condensing >= outdoor + 3
                && condensing <= 62
                && state.superheat().kelvins() >= 1
                && state.superheat().kelvins() <= 20
                && state.subcooling().kelvins() >= 0.8
                && state.subcooling().kelvins() <= 18
                && state.liquidLine().celsius() >= outdoor
                && state.suctionLine().celsius()
                        <= running.air().returnDryBulb().celsius() - 1
                && state.dischargeLine().celsius() <= 110;
    }
}
