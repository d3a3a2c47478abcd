package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeCode;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.ImposedFault;

/** Is the charge low, right or high? */
final class VerdictMaker implements Maker {
    /** So far from the edge of a band or range the level does not hang on rounding, K. */
    static final double CLEAR_K = 0.6;

    /** JCGM 106:2012: the risk of each side is 5 %. */
    private static final double WANTED = 0.95;

    private static final Set<FindingCode> CONTRADICTIONS = Set.of(
            ChargeCode.VALVE_FLOODS,
            ChargeCode.EVAPORATOR_STARVES,
            ChargeCode.AMPLE_SUBCOOLING,
            ChargeCode.SCANT_SUBCOOLING);

    private static final String UNDECIDED = "exercise.read-again-with-better-instruments";

    private final Bench bench;
    private final RunningSystems systems;

    VerdictMaker(Bench bench) {
        this.bench = bench;
        systems = new RunningSystems(bench);
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        boolean starting = difficulty == Difficulty.STARTING;
        MeteringDevice metering =
                starting ? MeteringDevice.EXPANSION_VALVE : draw.pick(List.of(MeteringDevice.values()));
        String designation = draw.pick(starting ? Bench.COOLING_WITHOUT_GLIDE : Bench.COOLING_WITH_GLIDE);
        boolean faulty = difficulty == Difficulty.EXPERIENCED && draw.chance(0.4);
        double error = faulty ? 0 : ChargeErrors.draw(draw);
        ImposedFault fault = faulty ? fault(draw, metering) : ImposedFault.none();
        return systems.draw(draw, designation, metering, error, fault)
                .flatMap(running -> asked(draw, readout, difficulty, running, faulty));
    }

    private static ImposedFault fault(Draw draw, MeteringDevice metering) {
        return metering == MeteringDevice.EXPANSION_VALVE || draw.chance(0.5)
                ? ImposedFault.liquidLineRestriction(PressureDifference.ofKilopascals(draw.between(400, 1300)))
                : ImposedFault.compressorValveLeakage(draw.between(0.15, 0.4));
    }

    private Optional<Exercise> asked(
            Draw draw, Readout readout, Difficulty difficulty, Running running, boolean faulty) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        SaturationCurve curve = bench.curve(running.designation());
        Criterion criterion = running.metering().judgedBy();
        Given<Atmosphere> air =
                hard ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96))) : readout.seaLevel();
        LineReadings readings = LineReadings.of(running, readout, air);
        Given<TemperatureDifference> target = readout.target(
                readout.say("exercise.maker-s-target", readout.words().name(criterion)), running.target());
        Given<TemperatureDifference> band = Tolerances.given(readout, criterion);
        Given<PressureDifference> gaugeDoubt = readout.pressureDifference(
                readout.say("exercise.standard-uncertainty-of-either-gauge"),
                PressureDifference.ofPascals(
                        draw.between(0.006, 0.012) * readings.suction().pascals()));
        Given<TemperatureDifference> clampDoubt = readout.difference(
                readout.say("exercise.standard-uncertainty-of-either-clamp"),
                TemperatureDifference.ofKelvins(draw.between(0.3, 1.1)));
        if (!Sane.target(running.metering(), target.value())) {
            return Optional.empty();
        }
        Judgement judgement;
        try {
            judgement = ChargeJudge.usual()
                    .judge(new ChargeCase(
                            curve,
                            hard
                                    ? readings.typed(
                                            gaugeDoubt.value().pascals(),
                                            clampDoubt.value().kelvins())
                                    : readings.typed(0, 0),
                            new ChargeQuestion(
                                    running.metering(), Optional.of(target.value()), Optional.of(band.value())),
                            OperatingConditions.unknown().withOutdoorMinimumMet(true)));
        } catch (IllegalArgumentException e) {
            return Optional.empty(); // no running system reads so
        }
        Deviation deviation = judgement.evidence().deviation().orElseThrow();
        Optional<Finding> contradiction = contradiction(judgement);
        if (contradiction.isPresent() != faulty
                || !agrees(judgement, deviation, contradiction)
                || !clear(readings, curve, running, deviation, hard)) {
            return Optional.empty();
        }
        Exercise.Draft draft = new Exercise.Draft(Topic.VERDICT, difficulty, readout)
                .situation(readout.say(
                        "exercise.an-air-conditioner-with-has-run", Tolerances.article(readout, running.metering())))
                .given(bench.refrigerantGiven(running.designation(), readout), target, band)
                .cautions(bench.cautions(running.designation(), Task.READING));
        readings.put(draft, curve, readout, draw);
        if (hard) {
            draft.given(
                    readout.temperature(
                            readout.say("exercise.outdoor-air"), running.air().outdoor()),
                    readout.temperature(
                            readout.say("exercise.return-air-wet-bulb"),
                            running.air().returnWetBulb()));
            draft.slip(readout.say("exercise.outdoor-air-and-wet-bulb"));
        }
        new VerdictAsk(draft, readout, curve, readings, running.metering())
                .write(difficulty, deviation, contradiction, target);
        if (hard && !doubt(draft, readout, gaugeDoubt, clampDoubt, deviation, contradiction.isEmpty())) {
            return Optional.empty();
        }
        if (hard) {
            boolean undecided = contradiction.isEmpty() && !isSure(deviation);
            VerdictAsk.advice(
                    readout,
                    draft,
                    undecided ? readout.say(UNDECIDED) : VerdictAsk.advice(readout, deviation.level(), contradiction));
        }
        draft.derive(judgement.evidence().steps());
        return Optional.of(draft.done());
    }

    private static Optional<Finding> contradiction(Judgement judgement) {
        return judgement.evidence().findings().stream()
                .filter(each -> CONTRADICTIONS.contains(each.code()))
                .findFirst();
    }

    private static boolean isSure(Deviation deviation) {
        return deviation.probability(deviation.level()) >= WANTED;
    }

    /** Whether the library, which weighs other faults too, comes to what the rules of the question lead to. */
    private static boolean agrees(Judgement judgement, Deviation deviation, Optional<Finding> contradiction) {
        boolean decided = judgement instanceof Judgement.Decided level && level.level() == deviation.level();
        boolean goodEnough = judgement instanceof Judgement.Decided level && level.goodEnough();
        if (contradiction.isPresent()) {
            return !decided;
        }
        return isSure(deviation) ? decided : goodEnough || judgement instanceof Judgement.Undecided;
    }

    private static String holds(Readout readout, boolean judged, boolean holds) {
        if (!judged) {
            return readout.say("exercise.there-is-no-level-to");
        }
        return holds ? readout.say("exercise.yes") : readout.say("exercise.no-undecided");
    }

    /** Nothing near an edge: of the band, of the range in which a valve controls, of the subcooling that contradicts an orifice. */
    private static boolean clear(
            LineReadings readings, SaturationCurve curve, Running running, Deviation deviation, boolean hard) {
        double distance = Math.abs(deviation.value().kelvins());
        double least = hard ? 0.4 : CLEAR_K;
        double superheat = readings.superheat(curve).kelvins();
        double subcooling = readings.subcooling(curve).kelvins();
        boolean inside = running.metering() == MeteringDevice.EXPANSION_VALVE
                ? far(superheat, TemperatureDifference.ofFahrenheitDegrees(4).kelvins())
                        && far(
                                superheat,
                                TemperatureDifference.ofFahrenheitDegrees(25).kelvins())
                : far(subcooling, TemperatureDifference.ofFahrenheitDegrees(15).kelvins())
                        && far(
                                subcooling,
                                TemperatureDifference.ofFahrenheitDegrees(2).kelvins());
        return inside
                && Math.abs(distance - deviation.tolerance().kelvins()) >= least
                && distance <= 9
                && superheat >= 0.5
                && subcooling >= 0.5;
    }

    private static boolean far(double value, double edge) {
        return Math.abs(value - edge) >= 0.5;
    }

    /** Whether the level holds with the wanted probability; false where that itself is too close. */
    private static boolean doubt(
            Exercise.Draft draft,
            Readout readout,
            Given<PressureDifference> gaugeDoubt,
            Given<TemperatureDifference> clampDoubt,
            Deviation deviation,
            boolean judged) {
        double u = deviation.standardUncertaintyK();
        double tolerance = deviation.tolerance().kelvins();
        double distance = Math.abs(deviation.value().kelvins());
        double ratio = Math.abs(distance - tolerance) / u;
        boolean holds = ratio > 1.645;
        // the far edge must be out of reach, and the ratio clear of the quantile, so that one table value answers
        if (judged
                && !((tolerance + distance) / u > 3.3 && Math.abs(ratio - 1.645) > 0.3 && isSure(deviation) == holds)) {
            return false;
        }
        draft.given(gaugeDoubt, clampDoubt)
                .rule(readout.say("exercise.the-standard-uncertainty-of-superheat"))
                .rule(readout.say("exercise.a-level-is-acted-on"));
        TemperatureDifference doubt = TemperatureDifference.ofKelvins(u);
        TemperatureDifference needed = TemperatureDifference.ofKelvins(1.645 * u);
        TemperatureDifference beyond = TemperatureDifference.ofKelvins(Math.abs(distance - tolerance));
        draft.part(
                        "uncertainty",
                        readout.say("exercise.how-large-is-the-standard-uncertainty", readout.differenceUnit()),
                        Answer.Figure.of(readout.number(doubt), 1, readout.differenceUnit(), 0.1))
                .part(
                        "holds",
                        readout.say("exercise.does-the-level-hold-with"),
                        Answer.Words.own(holds(readout, judged, holds)));
        TemperatureDifference clamp = clampDoubt.value();
        TemperatureDifference gauge =
                TemperatureDifference.ofKelvins(Math.sqrt(u * u - clamp.kelvins() * clamp.kelvins()));
        draft.sum(
                readout.say("exercise.standard-uncertainty"),
                "u = sqrt(u(T)^2 + (dT/dp u(p))^2)",
                readout.say(
                        "exercise.sqrt-2-2-the-second", readout.text(clamp), readout.text(gauge), gaugeDoubt.text()),
                readout.text(doubt));
        if (!judged) {
            return true;
        }
        draft.sum(
                readout.say("exercise.distance-from-the-nearer-edge"),
                readout.say("exercise.d-tolerance-against-1-645"),
                readout.say(
                        "exercise.against-1-645-x",
                        readout.text(deviation.value().abs()),
                        readout.text(deviation.tolerance()),
                        readout.text(doubt)),
                readout.say("exercise.against-2", readout.text(beyond), readout.text(needed)));
        return true;
    }
}
