package org.satline.program.proof;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.OperatingConditions;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.NoSteadyStateException;

/**
 * Draws visits: system, refrigerant, weather and instruments at random. Of a hundred, 42 have a charge that is off by
 * up to 40 % either
 * way, 18 another fault at the right charge, 24 both, 6 another refrigerant than on the plate, filled by weight with
 * up to 20 % of error,
 * and 10 nothing. On every second visit the pressure at rest is read too. The target is what the same system shows at
 * its rated charge in
 * this weather, as a maker would print it, to a tenth of a kelvin. Shares and ranges are our choice. Same seed, same
 * visits.
 */
final class VisitMaker {
    private static final double LARGEST_TARGET_K = 20;
    private static final double LEAST_TARGET_K = 2;
    private static final List<Fault> FAULTS = List.of(
            Fault.CONDENSER_FOULING,
            Fault.LOW_EVAPORATOR_AIRFLOW,
            Fault.LIQUID_LINE_RESTRICTION,
            Fault.COMPRESSOR_VALVE_LEAKAGE,
            Fault.NON_CONDENSABLE_GAS);

    private final Random random;
    private final Machines systems;

    private VisitMaker(Random random, Machines systems) {
        this.random = random;
        this.systems = systems;
    }

    /** Visits to machines of the library's own simulation. */
    static VisitMaker simulated(long seed) {
        Random random = new Random(seed);
        return new VisitMaker(random, new RandomSystems(random));
    }

    /** Visits to machines of another build. */
    static VisitMaker mapped(long seed) {
        Random random = new Random(seed);
        return new VisitMaker(random, new RandomMapped(random));
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
        Optional<Machine> built = systems.next();
        if (built.isEmpty()) {
            return Optional.empty();
        }
        Machine plate = built.get();
        SaturationCurve curve = systems.curve(plate.refrigerant());
        AirConditions air = AirConditions.ofCelsius(between(22, 42), between(22, 28), between(14, 20));
        double target = target(plate, curve, air);
        if (!(target >= LEAST_TARGET_K && target <= LARGEST_TARGET_K)) {
            return Optional.empty();
        }
        Visit.Kind kind = kind();
        double chargeError = switch (kind) {
            case CHARGE, BOTH -> between(-0.4, 0.4);
            case REFRIGERANT -> between(-0.2, 0.2);
            case NOTHING, FAULT -> 0;
        };
        Optional<Fault> named = kind == Visit.Kind.FAULT || kind == Visit.Kind.BOTH
                ? Optional.of(FAULTS.get(random.nextInt(FAULTS.size())))
                : Optional.empty();
        ImposedFault fault = named.map(this::imposed).orElse(ImposedFault.none());
        Optional<Machine> filled =
                kind == Visit.Kind.REFRIGERANT ? systems.filledWithAnother(plate) : Optional.of(plate);
        if (filled.isEmpty()) {
            return Optional.empty();
        }
        Machine system = filled.get();
        ChargeQuestion question =
                ChargeQuestion.of(plate.metering(), Optional.of(TemperatureDifference.ofKelvins(target)));
        Ports ports = system.settled(chargeError, air, fault);
        Instruments instruments = new Instruments(random);
        OperatingConditions conditions = new OperatingConditions(
                Optional.of(Duration.ofMinutes(25)),
                Optional.empty(),
                Optional.of(true),
                Optional.of(true),
                Optional.empty(),
                Optional.empty());
        if (random.nextBoolean()) {
            conditions = conditions.withStanding(instruments.standing(system.atRest(chargeError, air, fault), air));
        }
        boolean plated = kind != Visit.Kind.REFRIGERANT;
        return Optional.of(new Visit(
                kind,
                system,
                curve,
                air,
                fault,
                named,
                chargeError,
                instruments,
                question,
                instruments.read(ports, air),
                conditions,
                plated ? Optional.of(level(curve, ports, question)) : Optional.empty(),
                plated
                        ? Optional.of(level(curve, system.settled(chargeError, air, ImposedFault.none()), question))
                        : Optional.empty(),
                target));
    }

    /** By exact instruments, whether or not another reading contradicts the one that is judged. */
    private static ChargeLevel level(SaturationCurve curve, Ports ports, ChargeQuestion question) {
        Criterion criterion = question.metering().judgedBy();
        return new Deviation(
                        criterion,
                        Instruments.exact(curve, ports)
                                .get(criterion)
                                .orElseThrow()
                                .value(),
                        question.makersTarget().orElseThrow(),
                        ChargeQuestion.publishedTolerance(criterion),
                        UncertaintyBudget.none())
                .level();
    }

    private Visit.Kind kind() {
        double draw = random.nextDouble();
        if (draw < 0.42) {
            return Visit.Kind.CHARGE;
        }
        if (draw < 0.60) {
            return Visit.Kind.FAULT;
        }
        if (draw < 0.84) {
            return Visit.Kind.BOTH;
        }
        return draw < 0.90 ? Visit.Kind.REFRIGERANT : Visit.Kind.NOTHING;
    }

    private static double target(Machine machine, SaturationCurve curve, AirConditions air) {
        double exact = Instruments.exact(curve, machine.settled(0, air, ImposedFault.none()))
                .get(machine.metering().judgedBy())
                .orElseThrow()
                .value()
                .kelvins();
        return Math.round(exact * 10) / 10.0;
    }

    private ImposedFault imposed(Fault fault) {
        return switch (fault) {
            case CONDENSER_FOULING -> ImposedFault.condenserFouling(between(0.2, 0.5));
            case LOW_EVAPORATOR_AIRFLOW -> ImposedFault.lowEvaporatorAirflow(between(0.2, 0.5));
            case LIQUID_LINE_RESTRICTION ->
                ImposedFault.liquidLineRestriction(PressureDifference.ofKilopascals(between(300, 1000)));
            case COMPRESSOR_VALVE_LEAKAGE -> ImposedFault.compressorValveLeakage(between(0.15, 0.4));
            case NON_CONDENSABLE_GAS -> ImposedFault.nonCondensableGas(Pressure.ofKilopascals(between(50, 250)));
            case UNDERCHARGE, OVERCHARGE, ANOTHER_REFRIGERANT ->
                throw new IllegalArgumentException(fault + " is no fault of the machine");
        };
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
