package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.Hose;
import org.satline.transfer.hookup.SystemPort.Role;

/** How a hose between a port of a running system and a cylinder is freed of air. The port has a valve core, and no manifold is there. */
final class PurgeMaker implements Maker {
    private static final List<String> GASES = List.of("R-134a", "R-22", "R-32", "R-410A", "R-407C", "R-454B");
    /** Taken out as vapour a blend would change its composition. */
    private static final List<String> OUT_AS_VAPOUR = List.of("R-134a", "R-22", "R-32");

    /** Of class 3: nothing of it is let out at a loose joint. */
    private static final String NEVER_VENTED = "R-290";
    /** How far from the least pressure that sweeps a question stays, so that the answer does not hang on a reading. */
    private static final double CLEAR_BAR = 0.5;

    private final Bench bench;

    PurgeMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        boolean charging = draw.chance(0.5);
        String designation = hard && draw.chance(0.12) ? NEVER_VENTED : draw.pick(charging ? GASES : OUT_AS_VAPOUR);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air =
                hard ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96))) : readout.seaLevel();
        Role port = hard && !charging && draw.chance(0.25) ? Role.LIQUID_LINE : Role.LOW_SIDE;
        Given<GaugePressure> atPort = readout.gauge(
                readout.say("exercise.pressure-at-the", name(readout, port)),
                portPressure(draw, curve, port, hard, air.value()),
                air.value());
        Given<?> inCylinder = cylinder(draw, readout, curve, charging, air.value());
        Hose hose = hose(draw, readout, difficulty);
        PurgeCase it = new PurgeCase(
                bench.refrigerant(designation),
                curve,
                air.value(),
                charging,
                port,
                Pressure.ofGauge(atPort.value(), air.value()),
                hose);
        HookUpPlan plan = it.plan();
        if (!worthAsking(it, plan, difficulty)) {
            return Optional.empty();
        }
        Exercise.Draft draft = new Exercise.Draft(Topic.PURGE, difficulty, readout)
                .situation(situation(readout, charging, port))
                .given(bench.refrigerantGiven(designation, readout))
                .given(atPort, inCylinder)
                .given(
                        Given.words(
                                readout.say("exercise.end-of-the-hose-at"),
                                hose.systemEnd().toString()),
                        Given.words(
                                readout.say("exercise.end-of-the-hose-at-the"),
                                hose.cylinderEnd().toString()))
                .cautions(bench.cautions(designation, Task.HOSE_PURGE))
                .rule(readout.say("exercise.vapour-out-of-the-system"));
        if (!hasVapour(curve, atPort.value(), air.value())
                || (inCylinder.value() instanceof GaugePressure gauge && !hasVapour(curve, gauge, air.value()))) {
            return Optional.empty(); // colder than the table
        }
        List<Given<Density>> densities = densities(atPort, port, inCylinder, curve, readout, air.value());
        if (difficulty == Difficulty.STARTING) {
            draft.given(densities.get(0));
        } else {
            draft.given(air).rule(readout.say("exercise.if-the-hose-cannot-be"));
            densities.forEach(draft::given);
        }
        if (hard) {
            draft.rule(readout.say("exercise.only-vapour-sweeps-of-liquid", least(readout)))
                    .rule(readout.say("exercise.of-a-gas-of-class"));
        }
        new PurgeAsk(draft, readout, difficulty).write(plan, hose, densities.get(0));
        return Optional.of(draft.done());
    }

    private static String situation(Readout readout, boolean charging, Role port) {
        return readout.say(
                "exercise.a-hose-full-of-air",
                (charging
                        ? readout.say("exercise.to-charge-a-running-system")
                        : readout.say("exercise.to-take-refrigerant-out-of")),
                name(readout, port));
    }

    private static String name(Readout readout, Role port) {
        return port == Role.LOW_SIDE ? readout.say("exercise.low-side-port") : readout.say("exercise.liquid-line-port");
    }

    private static String least(Readout readout) {
        return PressureDifference.ofPascals(Pressure.ofBars(HookUpPractice.SWEEP_ABOVE_ATMOSPHERE_BAR.value())
                        .pascals())
                .in(readout.pressureDifferenceUnit(), readout.pressureDecimals());
    }

    private static Pressure portPressure(Draw draw, SaturationCurve curve, Role port, boolean hard, Atmosphere air) {
        if (port == Role.LIQUID_LINE) {
            return curve.bubblePressure(Temperature.ofCelsius(draw.between(32, 48)));
        }
        return hard && draw.chance(0.2)
                ? Pressure.ofPascals(air.pressure().pascals() * draw.between(0.55, 0.9))
                : curve.dewPressure(Temperature.ofCelsius(draw.between(0, 12)));
    }

    /** A source stands warm enough to push into the suction side; a receiver is evacuated. */
    private static Given<?> cylinder(
            Draw draw, Readout readout, SaturationCurve curve, boolean charging, Atmosphere air) {
        if (charging) {
            return readout.gauge(
                    readout.say("exercise.pressure-in-the-cylinder"),
                    curve.bubblePressure(Temperature.ofCelsius(draw.between(22, 35))),
                    air);
        }
        Pressure vacuum = Pressure.ofMicrons(draw.whole(20, 150) * 10);
        String text = readout.us() ? vacuum.in("micron", 0) : vacuum.in("Pa", 0);
        return new Given<>(readout.say("exercise.pressure-in-the-cylinder-absolute"), text, Pressure.parse(text));
    }

    /** Harder ones need a second look; no answer hangs on a rounding. */
    private static boolean worthAsking(PurgeCase it, HookUpPlan plan, Difficulty difficulty) {
        double above = (it.port().pascals() - it.air().pressure().pascals())
                / Pressure.ofBars(1).pascals();
        if (it.role() == Role.LOW_SIDE && above > 0 && above < CLEAR_BAR) {
            return false;
        }
        if (!(plan instanceof HookUpPlan.Planned planned)) {
            return difficulty == Difficulty.EXPERIENCED;
        }
        return difficulty != Difficulty.STARTING || !PurgeAsk.isTurned(planned);
    }

    /** The density of saturated vapour at the port; then, where the cylinder is under pressure, a figure too many. */
    private static List<Given<Density>> densities(
            Given<GaugePressure> atPort,
            Role port,
            Given<?> inCylinder,
            SaturationCurve curve,
            Readout readout,
            Atmosphere air) {
        List<Given<Density>> found = new ArrayList<>();
        found.add(density(
                readout.say("exercise.density-of-the-vapour-at", name(readout, port)),
                atPort.value(),
                curve,
                readout,
                air));
        if (inCylinder.value() instanceof GaugePressure gauge) {
            found.add(density(readout.say("exercise.density-of-the-vapour-in"), gauge, curve, readout, air));
        }
        return found;
    }

    private static boolean hasVapour(SaturationCurve curve, GaugePressure gauge, Atmosphere air) {
        double pressure = Pressure.ofGauge(gauge, air).pascals();
        return pressure >= curve.dewPressureRange().low()
                && pressure <= curve.dewPressureRange().high();
    }

    private static Given<Density> density(
            String name, GaugePressure gauge, SaturationCurve curve, Readout readout, Atmosphere air) {
        Density exact = curve.dewVapourDensity(curve.dewTemperature(Pressure.ofGauge(gauge, air)));
        String text = readout.us() ? exact.in("lb/ft3", 3) : exact.in("kg/m3", 2);
        return new Given<>(name, text, Density.parse(text));
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
                readout.us() ? Length.ofFeet(draw.whole(6, 20) / 2.0) : Length.ofMetres(draw.whole(9, 30) / 10.0);
        return new Hose(draw.pick(ends), draw.pick(ends), bore, length);
    }
}
