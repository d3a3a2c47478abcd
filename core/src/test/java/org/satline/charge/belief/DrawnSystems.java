package org.satline.charge.belief;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;
import org.satline.simulation.SystemDesign;
import org.satline.simulation.WorkingFluid;

/**
 * Simulated systems of many designs with a charge error, at most one other fault and weather, as exact instruments
 * see them. Ranges are our choice, of the order of
 * residential split systems with short to long lines.
 */
final class DrawnSystems {
    private static final List<String> REFRIGERANTS = List.of("R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a");
    static final List<Fault> FAULTS = List.of(
            Fault.CONDENSER_FOULING,
            Fault.LOW_EVAPORATOR_AIRFLOW,
            Fault.LIQUID_LINE_RESTRICTION,
            Fault.COMPRESSOR_VALVE_LEAKAGE,
            Fault.NON_CONDENSABLE_GAS);
    private static final int VISITS_EACH = 4;

    private final Random random;
    private final Map<String, WorkingFluid> fluids = new HashMap<>();
    private final Map<String, SaturationCurve> curves = new HashMap<>();

    DrawnSystems(long seed) {
        random = new Random(seed);
    }

    /** One drawn system: what is wrong, how badly (0 to 1), and its clues and surroundings. */
    @SuppressWarnings("ArrayRecordComponent") // rows of a regression, never compared
    record Drawn(
            MeteringDevice metering,
            Optional<Fault> fault,
            double severity,
            double chargeError,
            double[] clues,
            double[] around) {}

    /** About as many as asked for. */
    List<Drawn> draw(int count) {
        List<Drawn> all = new ArrayList<>();
        while (all.size() < count) {
            try {
                SimulatedSystem system = system();
                for (int i = 0; i < VISITS_EACH; i++) {
                    visit(system).ifPresent(all::add);
                }
            } catch (IllegalArgumentException e) {
                // no coil of usual size makes the drawn rating: nobody would build it
            }
        }
        return all;
    }

    private Optional<Drawn> visit(SimulatedSystem plate) {
        try {
            AirConditions air = air();
            double target = judged(plate, plate.steadyState(plate.ratedCharge(), air, ImposedFault.none()));
            if (!(target >= 1.5 && target <= 21)) {
                return Optional.empty();
            }
            double kind = random.nextDouble();
            double severity = between(0.15, 1);
            double error = random.nextDouble() < 0.25 ? 0.03 * random.nextGaussian() : between(-0.53, 0.53);
            if (kind < 0.05) {
                return seen(
                        plate.filledWith(fluid(another(plate))),
                        plate,
                        air,
                        target,
                        Fault.ANOTHER_REFRIGERANT,
                        0,
                        between(-0.2, 0.2));
            }
            if (kind < 0.45) {
                return seen(plate, plate, air, target, null, 0, error);
            }
            return seen(plate, plate, air, target, FAULTS.get(random.nextInt(FAULTS.size())), severity, error);
        } catch (NoSteadyStateException | ImplausibleReadingException e) {
            // such a system trips its safety switches, or its readings are refused: it is not what a charge is judged
            // on
            return Optional.empty();
        }
    }

    private Optional<Drawn> seen(
            SimulatedSystem system,
            SimulatedSystem plate,
            AirConditions air,
            double target,
            @org.jspecify.annotations.Nullable Fault fault,
            double severity,
            double error) {
        Mass charge = Mass.ofKilograms(system.ratedCharge().kilograms() * (1 + error));
        ImposedFault imposed = imposed(fault, severity);
        SteadyState state = system.steadyState(charge, air, imposed);
        SaturationCurve curve = curve(plate);
        SystemReadings readings = state.exactReadings(air);
        Pressure atRest = system.standingPressure(charge, air.outdoor(), air, imposed);
        MeteringDevice metering = plate.design().metering();
        TemperatureDifference tolerance = ChargeQuestion.publishedTolerance(metering.judgedBy());
        Margins margins = Margins.of(curve, readings);
        Optional<Deviation> deviation = margins.get(metering.judgedBy())
                .map(margin -> new Deviation(
                        metering.judgedBy(),
                        margin.value(),
                        TemperatureDifference.ofKelvins(target),
                        tolerance,
                        margin.budget()));
        Clues clues = Clues.of(new Weighed.Observed(
                curve,
                readings,
                margins,
                metering,
                deviation,
                UncertaintyBudget.none(),
                tolerance,
                Optional.of(RestEvidence.of(curve, Reading.exact(atRest), Reading.exact(air.outdoor()))),
                false,
                Map.of()));
        double[] values = new double[Behaviour.CLUES];
        for (Symptom clue : Symptom.values()) {
            if (clues.get(clue).isEmpty()) {
                return Optional.empty();
            }
            values[clue.column()] = clues.get(clue).get().kelvins();
        }
        double[] around = new double[Behaviour.AROUND];
        for (Around each : Around.values()) {
            around[each.column()] = clues.around(each).kelvins() - each.usual();
        }
        return Optional.of(
                new Drawn(plate.design().metering(), Optional.ofNullable(fault), severity, error, values, around));
    }

    private ImposedFault imposed(@org.jspecify.annotations.Nullable Fault fault, double severity) {
        if (fault == null) {
            return ImposedFault.none();
        }
        return switch (fault) {
            case CONDENSER_FOULING -> ImposedFault.condenserFouling(0.6 * severity);
            case LOW_EVAPORATOR_AIRFLOW -> ImposedFault.lowEvaporatorAirflow(0.6 * severity);
            case LIQUID_LINE_RESTRICTION ->
                ImposedFault.liquidLineRestriction(PressureDifference.ofKilopascals(1200 * severity));
            case COMPRESSOR_VALVE_LEAKAGE -> ImposedFault.compressorValveLeakage(0.45 * severity);
            case NON_CONDENSABLE_GAS -> ImposedFault.nonCondensableGas(Pressure.ofKilopascals(300 * severity));
            case UNDERCHARGE, OVERCHARGE, ANOTHER_REFRIGERANT -> ImposedFault.none();
        };
    }

    private AirConditions air() {
        double dry = between(20, 30);
        return AirConditions.ofCelsius(between(13, 43), dry, between(9, Math.min(dry - 1, 22)));
    }

    private double judged(SimulatedSystem system, SteadyState state) {
        return Margins.of(curve(system), state.exactReadings(AirConditions.rated()))
                .get(system.design().metering().judgedBy())
                .orElseThrow()
                .value()
                .kelvins();
    }

    private SimulatedSystem system() {
        String name = REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size()));
        double subcooling = between(3, 9);
        SystemDesign design = new SystemDesign(
                Catalogue.standard().find(name),
                random.nextBoolean() ? MeteringDevice.EXPANSION_VALVE : MeteringDevice.FIXED_ORIFICE,
                Power.ofTonsOfRefrigeration(between(1, 5)),
                TemperatureDifference.ofKelvins(between(3.5, 9)),
                TemperatureDifference.ofKelvins(subcooling),
                Temperature.ofCelsius(between(3, 11)),
                TemperatureDifference.ofKelvins(between(subcooling + 2.5, 17)),
                between(0.55, 0.78),
                new SystemDesign.CoilVolumes(
                        between(0.15, 0.6), between(0.2, 0.5), between(0.02, 0.15), between(0.3, 1.2)));
        return SimulatedSystem.of(design, fluid(name));
    }

    private String another(SimulatedSystem than) {
        String own = than.design().refrigerant().designation();
        String other = own;
        while (other.equals(own)) {
            other = REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size()));
        }
        return other;
    }

    private WorkingFluid fluid(String name) {
        return fluids.computeIfAbsent(
                name, each -> WorkingFluid.of(Catalogue.standard().find(each)));
    }

    private SaturationCurve curve(SimulatedSystem system) {
        return curves.computeIfAbsent(
                system.design().refrigerant().designation(),
                name -> SaturationCurves.of(system.design().refrigerant()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
