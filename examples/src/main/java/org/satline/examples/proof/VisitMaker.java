package org.satline.examples.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeLevel;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Criterion;
import org.satline.charge.MeteringDevice;
import org.satline.charge.SystemReadings;
import org.satline.charge.Verdict;
import org.satline.quantity.Mass;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
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
 * Draws visits: system, refrigerant, weather and instruments at random; on six of ten the charge is off by up to 40 % either way, on three another fault is
 * imposed at the right charge, on one nothing is wrong. The target is what the same system shows at its rated charge in this weather, as a maker would print it,
 * to a tenth of a kelvin. Same seed, same visits.
 */
final class VisitMaker {
    private static final List<String> REFRIGERANTS = List.of("R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a");
    private static final double LARGEST_TARGET_K = 20;
    private static final double LEAST_TARGET_K = 2;

    private final Random random;
    private final Map<String, WorkingFluid> fluids = new HashMap<>();
    private final Map<String, SaturationCurve> curves = new HashMap<>();

    VisitMaker(long seed) {
        random = new Random(seed);
    }

    SaturationCurve curve(Refrigerant refrigerant) {
        return curves.computeIfAbsent(refrigerant.designation(), name -> SaturationCurves.of(refrigerant));
    }

    /** The next visit for which the model has a steady state and a maker would print a target. */
    Visit next() {
        while (true) {
            try {
                Optional<Visit> visit = drawn();
                if (visit.isPresent()) {
                    return visit.get();
                }
            } catch (NoSteadyStateException e) {
                // such a system trips its safety switches; it is not what a charge is judged on: draw again
            }
        }
    }

    private Optional<Visit> drawn() {
        Refrigerant refrigerant = Catalogue.standard().find(REFRIGERANTS.get(random.nextInt(REFRIGERANTS.size())));
        Optional<SimulatedSystem> built = system(refrigerant);
        if (built.isEmpty()) {
            return Optional.empty();
        }
        SimulatedSystem system = built.get();
        AirConditions air = AirConditions.ofCelsius(between(22, 42), between(22, 28), between(14, 20));
        double kind = random.nextDouble();
        double chargeError = kind < 0.6 ? between(-0.4, 0.4) : 0;
        boolean faulty = kind >= 0.6 && kind < 0.9;
        ImposedFault fault = faulty ? fault() : ImposedFault.none();
        double target = target(system, air);
        if (!(target >= LEAST_TARGET_K && target <= LARGEST_TARGET_K)) {
            return Optional.empty();
        }
        ChargeQuestion question =
                ChargeQuestion.of(system.design().metering(), Optional.of(TemperatureDifference.ofKelvins(target)));
        SteadyState state = system.steadyState(charge(system, chargeError), air, fault);
        SystemReadings exact = state.exactReadings(air);
        Instruments instruments = new Instruments(random);
        Verdict verdict = ChargeJudge.judge(curve(refrigerant), exact, question);
        ChargeLevel truth =
                verdict instanceof Verdict.Judged judged ? judged.deviation().level() : levelOf(chargeError);
        return Optional.of(new Visit(
                system,
                air,
                fault,
                faulty,
                chargeError,
                instruments,
                question,
                instruments.read(state, air),
                truth,
                target));
    }

    /** Nothing where no coil of usual size makes the drawn rating: nobody would build it. */
    private Optional<SimulatedSystem> system(Refrigerant refrigerant) {
        WorkingFluid fluid = fluids.computeIfAbsent(refrigerant.designation(), name -> WorkingFluid.of(refrigerant));
        SystemDesign design = design(refrigerant);
        try {
            return Optional.of(SimulatedSystem.of(design, fluid));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Where exact readings contradict each other so far that the check itself gives none. */
    private static ChargeLevel levelOf(double chargeError) {
        if (chargeError == 0) {
            return ChargeLevel.ON_TARGET;
        }
        return chargeError < 0 ? ChargeLevel.LOW : ChargeLevel.HIGH;
    }

    static Mass charge(SimulatedSystem system, double chargeError) {
        return Mass.ofKilograms(system.ratedCharge().kilograms() * (1 + chargeError));
    }

    private static double target(SimulatedSystem system, AirConditions air) {
        SteadyState right = system.steadyState(system.ratedCharge(), air, ImposedFault.none());
        double exact = system.design().metering().judgedBy() == Criterion.SUPERHEAT
                ? right.superheat().kelvins()
                : right.subcooling().kelvins();
        return Math.round(exact * 10) / 10.0;
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
                SystemDesign.CoilVolumes.typical());
    }

    private ImposedFault fault() {
        return switch (random.nextInt(5)) {
            case 0 -> ImposedFault.condenserFouling(between(0.2, 0.5));
            case 1 -> ImposedFault.lowEvaporatorAirflow(between(0.2, 0.5));
            case 2 -> ImposedFault.liquidLineRestriction(PressureDifference.ofKilopascals(between(300, 1000)));
            case 3 -> ImposedFault.compressorValveLeakage(between(0.15, 0.4));
            default -> ImposedFault.nonCondensableGas(Pressure.ofKilopascals(between(50, 250)));
        };
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
