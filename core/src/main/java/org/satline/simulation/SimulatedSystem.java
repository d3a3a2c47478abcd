package org.satline.simulation;

import java.util.Locale;
import java.util.Objects;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * An air conditioner that runs on the equation of state: given charge, air and faults, it tells the steady state.
 *
 * <p>Compressor with volumetric and isentropic efficiency; condenser with desuperheating, two-phase and subcooled zone and evaporator with
 * two-phase and superheated zone, by effectiveness; wet coil; expansion valve that opens with superheat until it is wide open, or fixed
 * orifice; charge inventory with Zivi's void fraction in both coils, liquid line, vapour side and what the oil of the compressor holds in
 * solution. Sized so that the design point of {@link SystemDesign} is met exactly.
 *
 * <p>It is a model. It ignores: pressure drop of coils and lines, heat gained or lost by lines and shell, oil outside the compressor and at
 * rest, an accumulator or receiver, shift of a blend's circulating composition, frost, air maldistribution, foreign gas in heat transfer,
 * the flow of air changing with its density, hunting of the valve, and everything before the steady state. Its constants are of the usual
 * order, not those of a machine: {@code assumptions.csv} lists each with its basis; use it for directions and proofs, never to charge a
 * real system. Immutable, thread-safe.
 */
public final class SimulatedSystem {
    private final SystemDesign design;
    private final Cycle.Parts parts;
    private final Mass ratedCharge;

    private SimulatedSystem(SystemDesign design, Cycle.Parts parts, Mass ratedCharge) {
        this.design = design;
        this.parts = parts;
        this.ratedCharge = ratedCharge;
    }

    private SimulatedSystem(SystemDesign design, WorkingFluid fluid, Assumptions assumed) {
        this.design = design;
        parts = Sizing.of(design, fluid, assumed);
        Cycle cycle = Cycle.at(
                parts,
                surroundings(AirConditions.rated(), ImposedFault.none()),
                fluid.dewPressure(design.evaporating().kelvins()),
                fluid.bubblePressure(AirConditions.rated().outdoor().kelvins()
                        + design.condensingApproach().kelvins()),
                design.superheat().kelvins());
        ratedCharge = Mass.ofKilograms(cycle.charge());
    }

    /**
     * Builds a system.
     *
     * @param design what it is built for
     * @return the system
     * @throws IllegalArgumentException if no coil reaches the design point
     * @throws NoSteadyStateException if the design point lies outside the range of the simulation of this refrigerant
     * @throws org.satline.equation.MissingEquationException if a component of the refrigerant has no equation
     */
    public static SimulatedSystem of(SystemDesign design) {
        Parts.required("design", design);
        return of(design, WorkingFluid.of(design.refrigerant()));
    }

    /**
     * Builds a system on a prepared fluid; saves time where many systems share a refrigerant.
     *
     * @param design what it is built for
     * @param fluid its refrigerant, prepared
     * @return the system
     * @throws IllegalArgumentException if the fluid is another refrigerant, or no coil reaches the design point
     * @throws NoSteadyStateException if the design point lies outside the range of the simulation of this refrigerant
     */
    public static SimulatedSystem of(SystemDesign design, WorkingFluid fluid) {
        return of(design, fluid, Assumptions.standard());
    }

    static SimulatedSystem of(SystemDesign design, WorkingFluid fluid, Assumptions assumed) {
        Parts.required("design fluid", design, fluid);
        if (!fluid.refrigerant().equals(design.refrigerant())) {
            throw new IllegalArgumentException("fluid is " + fluid.refrigerant().designation() + ", the design is for "
                    + design.refrigerant().designation() + "; prepare the fluid of the design");
        }
        return new SimulatedSystem(design, fluid, assumed);
    }

    /**
     * Returns the same machine with another refrigerant in it than it is built for, as after a mistake: compressor, coils, metering device
     * and volumes stay. Design and rated charge are still those of the plate.
     *
     * @param fluid what is in it
     * @return the system as it then runs
     */
    public SimulatedSystem filledWith(WorkingFluid fluid) {
        return new SimulatedSystem(design, parts.filledWith(fluid), ratedCharge);
    }

    /**
     * Returns what the system is built for.
     *
     * @return the design
     */
    public SystemDesign design() {
        return design;
    }

    /**
     * Returns the charge with which the system meets its design point.
     *
     * @return the right charge
     */
    public Mass ratedCharge() {
        return ratedCharge;
    }

    /**
     * Finds the steady state.
     *
     * @param charge refrigerant in the system; [20, 300] % of the rated charge
     * @param air air at both coils
     * @param fault what is wrong beside the charge
     * @return the steady state
     * @throws OutOfValidityException if the charge lies outside its range
     * @throws NoSteadyStateException if nothing balances within the range of the simulation
     */
    public SteadyState steadyState(Mass charge, AirConditions air, ImposedFault fault) {
        Cycle.Surroundings around = surroundings(air, fault);
        return SteadyStates.of(parts, around, balance(charge, air, around));
    }

    /**
     * Finds the pressure at rest, compressor off and all of the system at one temperature. Foreign gas stays in the condenser behind a
     * closed expansion valve and spreads over all vapour through a fixed orifice. What the oil holds at rest is not taken off the charge.
     *
     * @param charge refrigerant in the system; [20, 300] % of the rated charge
     * @param temperature of the whole system
     * @param air air at both coils while it ran, on which it depends where foreign gas is
     * @param fault what is wrong beside the charge
     * @return absolute pressure at the liquid port
     * @throws OutOfValidityException if the charge lies outside its range
     * @throws NoSteadyStateException if nothing balances within the range of the simulation, or no liquid is left at rest
     */
    public Pressure standingPressure(Mass charge, Temperature temperature, AirConditions air, ImposedFault fault) {
        check(charge);
        double kelvins = temperature.kelvins();
        double refrigerant = Rest.pressure(parts, charge.kilograms(), kelvins);
        double partial = fault.nonCondensable().pascals();
        if (!(partial > 0)) {
            return Pressure.ofPascals(refrigerant);
        }
        Balance.Point running = balance(charge, air, surroundings(air, fault));
        return Pressure.ofPascals(refrigerant + Rest.gas(parts, charge.kilograms(), kelvins, running, partial));
    }

    private Balance.Point balance(Mass charge, AirConditions air, Cycle.Surroundings around) {
        ImposedFault fault = around.fault();
        check(charge);
        WorkingFluid fluid = parts.fluid();
        double evaporatingPa = fluid.dewPressure(
                Math.min(design.evaporating().kelvins(), air.returnDryBulb().kelvins() - 12));
        double approach = design.condensingApproach().kelvins();
        double hottest = fluid.bubbleK(fluid.highPa() - fault.nonCondensable().pascals());
        double condensingPa = fluid.bubblePressure(Math.min(air.outdoor().kelvins() + approach, hottest - 2));
        return new QuickBalance(parts, around, charge.kilograms())
                .from(evaporatingPa, condensingPa, design.superheat().kelvins())
                .orElseGet(() -> new Balance(parts, around).withCharge(charge.kilograms()));
    }

    private void check(Mass charge) {
        double share = charge.kilograms() / ratedCharge.kilograms();
        if (!(share >= 0.2 && share <= 3)) {
            throw OutOfValidityException.of(
                    "charge",
                    charge.kilograms(),
                    "kg",
                    0.2 * ratedCharge.kilograms(),
                    3 * ratedCharge.kilograms(),
                    String.format(Locale.ROOT, "the simulated system, rated for %.3f kg", ratedCharge.kilograms()),
                    "simulate a charge nearer to the rated one");
        }
    }

    private Cycle.Surroundings surroundings(AirConditions air, ImposedFault fault) {
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(fault, "fault");
        return new Cycle.Surroundings(
                Evaporator.ReturnAir.of(air, parts.evaporatorCoil().assumed().air),
                air.outdoor().kelvins(),
                fault);
    }
}
