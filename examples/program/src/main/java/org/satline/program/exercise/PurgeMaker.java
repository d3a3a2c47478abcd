package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.EndFitting;
import org.satline.transfer.Hose;
import org.satline.transfer.HoseSide;
import org.satline.transfer.PurgePlan;
import org.satline.transfer.PurgePlanner;
import org.satline.transfer.PurgePlanner.Purpose;
import org.satline.transfer.VesselState;

/** How a hose is freed of air. */
final class PurgeMaker implements Maker {
    private static final List<String> GASES = List.of("R-134a", "R-22", "R-32", "R-410A", "R-407C", "R-454B");

    private final Bench bench;

    PurgeMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        String designation = draw.pick(GASES);
        SaturationCurve curve = bench.curve(designation);
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        Given<Atmosphere> air =
                hard ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96))) : readout.seaLevel();
        Purpose purpose = draw.pick(List.of(Purpose.values()));
        VesselState system = system(draw, purpose);
        VesselState cylinder =
                purpose == Purpose.CHARGING || draw.chance(0.4) ? VesselState.PRESSURISED : VesselState.EVACUATED;
        Given<?> systemPressure = pressure("pressure at the system's port", system, draw, readout, curve, air.value());
        Given<?> cylinderPressure = pressure("pressure in the cylinder", cylinder, draw, readout, curve, air.value());
        Hose hose = hose(draw, readout, difficulty);
        PurgePlan plan = PurgePlanner.plan(
                hose, purpose, system, cylinder, group(designation), Density.ofKilogramsPerCubicMetre(1));
        List<Given<Density>> densities = new ArrayList<>();
        density("density of the vapour at the system's port", systemPressure, curve, readout, air.value())
                .ifPresent(densities::add);
        density("density of the vapour in the cylinder", cylinderPressure, curve, readout, air.value())
                .ifPresent(densities::add);
        // The gas that sweeps decides the density, and the plan the side it comes from: plan once more with the right
        // one.
        Given<Density> density = densities.isEmpty()
                ? new Given<>("", "", Density.ofKilogramsPerCubicMetre(1))
                : plan instanceof PurgePlan.Purge purge && purge.from() == HoseSide.CYLINDER
                        ? densities.get(densities.size() - 1)
                        : densities.get(0);
        plan = PurgePlanner.plan(hose, purpose, system, cylinder, group(designation), density.value());
        if (!worthAsking(plan, difficulty, purpose)) {
            return Optional.empty();
        }
        Exercise.Draft draft = new Exercise.Draft(Topic.PURGE, difficulty)
                .situation("A hose full of air hangs ready, "
                        + (purpose == Purpose.RECOVERY
                                ? "to take refrigerant out of a system into a recovery cylinder."
                                : "to charge a system from a source cylinder.")
                        + " All valves are shut.")
                .given(bench.refrigerantGiven(designation))
                .given(systemPressure, cylinderPressure)
                .given(
                        Given.words(
                                "end of the hose at the system",
                                hose.systemEnd().toString()),
                        Given.words(
                                "end of the hose at the cylinder",
                                hose.cylinderEnd().toString()))
                .cautions(plan.cautions())
                .cautions(bench.cautions(designation, Task.HOSE_PURGE))
                .rule(
                        "The hose is swept with the gas that will go through it, where that is possible: out of the system for a recovery, out of"
                                + " the cylinder for charging (common practice, no source).")
                .rule(
                        "Gas sweeps the air out through the joint at the far end, which stays loose; a self-sealing end lets nothing out while"
                                + " its joint is loose. What is below the atmosphere would draw air in.")
                .rule("If one side cannot push, try the other; only then turn the hose round.");
        if (difficulty == Difficulty.STARTING) {
            draft.given(density);
        } else {
            draft.given(air);
            densities.forEach(draft::given);
        }
        new PurgeAsk(draft, readout, difficulty).write(plan, hose, density);
        return Optional.of(draft.done());
    }

    /** There is something to recover, or room for a charge. */
    private static VesselState system(Draw draw, Purpose purpose) {
        if (purpose == Purpose.RECOVERY) {
            return draw.chance(0.7) ? VesselState.PRESSURISED : VesselState.BELOW_ATMOSPHERE;
        }
        return draw.chance(0.5) ? VesselState.PRESSURISED : VesselState.EVACUATED;
    }

    private SafetyGroup group(String designation) {
        Refrigerant refrigerant = bench.refrigerant(designation);
        return refrigerant.safetyGroup().orElseThrow();
    }

    /** Harder ones need a second look: the first way that comes to mind does not do. */
    private static boolean worthAsking(PurgePlan plan, Difficulty difficulty, Purpose purpose) {
        if (plan instanceof PurgePlan.Purge purge) {
            HoseSide first = purpose == Purpose.RECOVERY ? HoseSide.SYSTEM : HoseSide.CYLINDER;
            return difficulty == Difficulty.STARTING ? !purge.turned() : purge.turned() || purge.from() != first;
        }
        return difficulty == Difficulty.EXPERIENCED;
    }

    private static Given<?> pressure(
            String name, VesselState state, Draw draw, Readout readout, SaturationCurve curve, Atmosphere air) {
        if (state == VesselState.EVACUATED) {
            Pressure vacuum = Pressure.ofMicrons(draw.whole(20, 150) * 10);
            String text = readout.us() ? vacuum.in("micron", 0) : vacuum.in("Pa", 0);
            return new Given<>(name + ", absolute", text, Pressure.parse(text));
        }
        if (state == VesselState.BELOW_ATMOSPHERE) {
            return readout.gauge(name, Pressure.ofPascals(air.pressure().pascals() * draw.between(0.55, 0.9)), air);
        }
        return readout.gauge(name, curve.dewPressure(Temperature.ofCelsius(draw.between(0, 35))), air);
    }

    /** Where refrigerant is above the atmosphere, the density of its saturated vapour: what a hose is swept with, or a figure too many. */
    private static Optional<Given<Density>> density(
            String name, Given<?> pressure, SaturationCurve curve, Readout readout, Atmosphere air) {
        if (!(pressure.value() instanceof GaugePressure gauge && gauge.pascals() > 0)) {
            return Optional.empty();
        }
        Density exact = curve.dewVapourDensity(curve.dewTemperature(Pressure.ofGauge(gauge, air)));
        String text = readout.us() ? exact.in("lb/ft3", 3) : exact.in("kg/m3", 2);
        return Optional.of(new Given<>(name, text, Density.parse(text)));
    }

    private static Hose hose(Draw draw, Readout readout, Difficulty difficulty) {
        List<EndFitting> ends = difficulty == Difficulty.STARTING
                ? List.of(EndFitting.PLAIN_FLARE, EndFitting.OPEN_CLOSE_VALVE)
                : List.of(
                        EndFitting.SELF_SEALING,
                        EndFitting.SELF_SEALING,
                        EndFitting.PLAIN_FLARE,
                        EndFitting.OPEN_CLOSE_VALVE);
        Length bore = readout.us()
                ? Length.ofInches(draw.pick(List.of(0.19, 0.25, 0.31)))
                : Length.ofMillimetres(draw.pick(List.of(4.8, 6.4, 8.0)));
        Length length =
                readout.us() ? Length.ofFeet(draw.whole(6, 40) / 2.0) : Length.ofMetres(draw.whole(9, 60) / 10.0);
        return new Hose(draw.pick(ends), draw.pick(ends), bore, length);
    }
}
