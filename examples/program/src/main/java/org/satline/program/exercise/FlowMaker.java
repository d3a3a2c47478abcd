package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Reading;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.ImposedFault;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowCheck;
import org.satline.transfer.PointKind;

/** Which way refrigerant flows when valves are opened. */
final class FlowMaker implements Maker {
    private static final double LEAST_DRIVING_PA = 25_000;
    /** In ice water, and in the sun. */
    private static final double COLDEST_CYLINDER_C = 1;

    private static final double WARMEST_CYLINDER_C = 48;

    private static final String INTO_SYSTEM = "exercise.from-the-cylinder-into-the";
    private static final String INTO_CYLINDER = "exercise.from-the-system-into-the";
    private static final String CLOSE = "exercise.too-close-to-call";

    /** As long as ice swims in it, water keeps close to 0 degC; a cylinder in it follows. */
    private static final double WARMEST_ICE_WATER_C = 3;

    private final Bench bench;
    private final RunningSystems systems;

    FlowMaker(Bench bench) {
        this.bench = bench;
        systems = new RunningSystems(bench);
    }

    /** A port of the system, a valve of a cylinder, and where refrigerant is wanted. */
    private record Wish(PointKind port, PointKind valve, boolean intoSystem, String wanted) {}

    private static final List<Wish> WISHES = List.of(
            new Wish(
                    PointKind.HIGH_SIDE_LIQUID_PORT,
                    PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE,
                    false,
                    "exercise.refrigerant-is-to-go-out"),
            new Wish(
                    PointKind.LOW_SIDE_PORT,
                    PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE,
                    false,
                    "exercise.refrigerant-is-to-go-out"),
            new Wish(
                    PointKind.LOW_SIDE_PORT,
                    PointKind.SOURCE_CYLINDER_LIQUID_VALVE,
                    true,
                    "exercise.refrigerant-is-to-go-from"),
            new Wish(
                    PointKind.HIGH_SIDE_LIQUID_PORT,
                    PointKind.SOURCE_CYLINDER_LIQUID_VALVE,
                    true,
                    "exercise.refrigerant-is-to-go-from"));

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        String designation =
                draw.pick(difficulty == Difficulty.STARTING ? Bench.COOLING_WITHOUT_GLIDE : Bench.COOLING_WITH_GLIDE);
        return systems.draw(
                        draw, designation, MeteringDevice.EXPANSION_VALVE, draw.between(-0.1, 0.1), ImposedFault.none())
                .flatMap(running -> asked(draw, readout, difficulty, running));
    }

    private Optional<Exercise> asked(Draw draw, Readout readout, Difficulty difficulty, Running running) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        Wish wish = draw.pick(WISHES);
        SaturationCurve curve = bench.curve(running.designation());
        Given<Atmosphere> air =
                hard ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96))) : readout.seaLevel();
        Pressure atPort = wish.port() == PointKind.LOW_SIDE_PORT
                ? running.state().suctionPressure()
                : running.state().liquidPressure();
        Given<GaugePressure> port = readout.gauge(
                readout.say("exercise.gauge-at-the", FlowWords.name(readout, wish.port())), atPort, air.value());
        Temperature cylinderAt = cylinderTemperature(draw, curve, atPort, hard);
        Exercise.Draft draft = new Exercise.Draft(Topic.FLOW, difficulty, readout)
                .situation(readout.say(
                        "exercise.a-hose-joins-the-of",
                        FlowWords.name(readout, wish.port()),
                        FlowWords.name(readout, wish.valve()),
                        readout.say(wish.wanted()),
                        standing(readout, cylinderAt)))
                .given(bench.refrigerantGiven(running.designation(), readout), port)
                .cautions(bench.cautions(running.designation(), wish.intoSystem() ? Task.CHARGING : Task.RECOVERY));
        Working working = new Working(draft, readout, curve);
        boolean starting = difficulty == Difficulty.STARTING;
        Pressure first = starting ? Pressure.ofGauge(port.value(), air.value()) : working.absolute(port, air.value());
        PressureDifference portDoubt = PressureDifference.ZERO;
        if (hard) {
            Given<PressureDifference> u = readout.pressureDifference(
                    readout.say("exercise.expanded-uncertainty-of-the-gauge"),
                    PressureDifference.ofPascals(draw.between(0.01, 0.025) * atPort.pascals()));
            portDoubt = u.value();
            draft.given(
                    u,
                    readout.temperature(
                            readout.say("exercise.outdoor-air"), running.air().outdoor()));
            draft.slip(readout.say("exercise.the-outdoor-air-is-not"));
        }
        ConnectionPoint system = point(wish.port(), port, air.value(), portDoubt);
        ConnectionPoint cylinder;
        String numbers;
        if (starting) {
            Given<GaugePressure> gauge = readout.gauge(
                    readout.say("exercise.gauge-at-the-cylinder"), curve.bubblePressure(cylinderAt), air.value());
            draft.given(gauge).rule(readout.say("exercise.both-gauges-show-the-pressure"));
            cylinder = point(wish.valve(), gauge, air.value(), PressureDifference.ZERO);
            numbers = port.text() + " - " + gauge.text();
        } else {
            Given<Temperature> at =
                    readout.temperature(readout.say("exercise.cylinder-at-rest-liquid-and"), cylinderAt);
            draft.given(air, at).slip(readout.say("exercise.a-gauge-reading-must-not"));
            cylinder = ConnectionPoint.bySaturation(wish.valve(), curve, Reading.exact(at.value()));
            numbers = readout.text(first) + " - "
                    + readout.text(cylinder.pressure().value());
            draft.table(SaturationExtract.around(curve, readout, at.value(), at.value(), draw))
                    .rule(readout.say(
                            "exercise.where-in-the-cylinder-the",
                            (hard ? readout.say("exercise.with-an-expanded-uncertainty-of") : ".")))
                    .work(
                            readout.say("exercise.pressure-in-the-cylinder"),
                            "p = (p_bubble(T) + p_dew(T)) / 2",
                            "(" + readout.text(curve.bubblePressure(at.value())) + " + "
                                    + readout.text(curve.dewPressure(at.value())) + ") / 2",
                            readout.text(cylinder.pressure().value()),
                            readout.say("exercise.saturation-table-of-the-question"));
        }
        return answered(
                draft, readout, difficulty, wish, FlowCheck.between(system, cylinder), first, numbers, cylinder);
    }

    private static ConnectionPoint point(
            PointKind kind, Given<GaugePressure> gauge, Atmosphere air, PressureDifference doubt) {
        return ConnectionPoint.byGauge(kind, Reading.ofExpanded(gauge.value(), doubt.pascals(), gauge.name()), air);
    }

    private static String standing(Readout readout, Temperature cylinder) {
        if (cylinder.celsius() < WARMEST_ICE_WATER_C) {
            return " " + readout.say("exercise.the-cylinder-has-stood-in");
        }
        if (cylinder.celsius() < 15) {
            return " " + readout.say("exercise.the-cylinder-has-stood-in-cold");
        }
        return cylinder.celsius() > 40 ? " " + readout.say("exercise.the-cylinder-has-stood-in-the") : "";
    }

    /** Near the temperature whose pressure is that of the port: which way it flows is then not plain to see. */
    private static Temperature cylinderTemperature(Draw draw, SaturationCurve curve, Pressure port, boolean hard) {
        double even = curve.dewTemperature(port).celsius();
        boolean near = hard && draw.chance(0.3);
        double low = Math.max(COLDEST_CYLINDER_C, even - (near ? 1 : 14));
        double high = Math.min(WARMEST_CYLINDER_C, even + (near ? 1 : 18));
        return Temperature.ofCelsius(draw.between(low, Math.max(low, high)));
    }

    private static Optional<Exercise> answered(
            Exercise.Draft draft,
            Readout readout,
            Difficulty difficulty,
            Wish wish,
            Flow flow,
            Pressure port,
            String numbers,
            ConnectionPoint cylinder) {
        double inCylinder = cylinder.pressure().value().pascals();
        PressureDifference signed = port.minus(cylinder.pressure().value());
        boolean tooClose = flow instanceof Flow.TooCloseToCall;
        double doubt = tooClose
                ? ((Flow.TooCloseToCall) flow).expandedUncertainty().pascals()
                : ((Flow.OneWay) flow).expandedUncertainty().pascals();
        double size = Math.abs(signed.pascals());
        if (tooClose && difficulty != Difficulty.EXPERIENCED) {
            return Optional.empty(); // only there the question says what doubt there is
        }
        // Not by a hair, and not so plain that the pressures need no look.
        if (tooClose ? size > 0.6 * doubt : size < Math.max(LEAST_DRIVING_PA, 1.6 * doubt) || size > 0.5 * inCylinder) {
            return Optional.empty();
        }
        String unit = readout.pressureDifferenceUnit();
        draft.part(
                        "driving pressure",
                        readout.say("exercise.how-far-is-the-pressure", unit),
                        Answer.Figure.of(
                                readout.number(signed), readout.pressureDecimals(), unit, readout.us() ? 0.4 : 3))
                .sum(
                        readout.say("exercise.driving-pressure"),
                        difficulty == Difficulty.STARTING
                                ? readout.say("exercise.gauge-at-the-system-gauge")
                                : readout.say("exercise.p-system-p-cylinder"),
                        numbers,
                        readout.text(signed));
        if (difficulty == Difficulty.EXPERIENCED) {
            draft.rule(readout.say("exercise.the-expanded-uncertainty-of-a"))
                    .part(
                            "uncertainty",
                            readout.say("exercise.how-large-is-the-expanded", unit),
                            Answer.Figure.of(
                                    readout.number(PressureDifference.ofPascals(doubt)),
                                    readout.pressureDecimals(),
                                    unit,
                                    readout.us() ? 0.3 : 2))
                    .sum(
                            readout.say("exercise.expanded-uncertainty-of-the-difference"),
                            "U = sqrt(U1^2 + U2^2)",
                            readout.say("exercise.gauge-and-middle-of-bubble"),
                            readout.text(PressureDifference.ofPascals(doubt)));
        }
        draft.mistake(
                "driving pressure",
                Answer.Figure.of(-readout.number(signed), readout.pressureDecimals(), unit, readout.us() ? 0.4 : 3),
                readout.say("exercise.the-sign-says-which-way"));
        boolean intoSystem = signed.pascals() < 0;
        String direction = intoSystem ? readout.say(INTO_SYSTEM) : readout.say(INTO_CYLINDER);
        draft.part(
                        "direction",
                        readout.say("exercise.which-way-does-it-flow"),
                        Answer.Words.oneOf(
                                tooClose ? readout.say(CLOSE) : direction,
                                List.of(readout.say(INTO_SYSTEM), readout.say(INTO_CYLINDER), readout.say(CLOSE))))
                .part(
                        "wanted",
                        readout.say("exercise.may-the-valve-be-opened"),
                        Answer.Words.own(FlowWords.wanted(readout, flow, wish.intoSystem() == intoSystem)))
                .derive(flow.steps());
        return Optional.of(draft.done());
    }
}
