package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.charge.margin.MeteringDevice;
import org.satline.program.exercise.RunningSystems.Running;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.ImposedFault;

/** Superheat and subcooling of a running system. */
final class MarginsMaker implements Maker {
    private final Bench bench;
    private final RunningSystems systems;

    MarginsMaker(Bench bench) {
        this.bench = bench;
        systems = new RunningSystems(bench);
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        String designation =
                draw.pick(difficulty == Difficulty.STARTING ? Bench.COOLING_WITHOUT_GLIDE : Bench.COOLING_WITH_GLIDE);
        MeteringDevice metering = draw.pick(List.of(MeteringDevice.values()));
        return systems.draw(draw, designation, metering, draw.between(-0.15, 0.15), ImposedFault.none())
                .flatMap(running -> asked(draw, readout, difficulty, running));
    }

    private Optional<Exercise> asked(Draw draw, Readout readout, Difficulty difficulty, Running running) {
        boolean hard = difficulty == Difficulty.EXPERIENCED;
        SaturationCurve curve = bench.curve(running.designation());
        Given<Atmosphere> air =
                hard ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96))) : readout.seaLevel();
        LineReadings readings = LineReadings.of(running, readout, air);
        TemperatureDifference superheat = readings.superheat(curve);
        TemperatureDifference subcooling = readings.subcooling(curve);
        if (!(usual(superheat) && usual(subcooling))) {
            return Optional.empty();
        }
        Exercise.Draft draft = new Exercise.Draft(Topic.MARGINS, difficulty, readout)
                .situation(readout.say("exercise.an-air-conditioner-has-run"))
                .given(bench.refrigerantGiven(running.designation(), readout))
                .cautions(bench.cautions(running.designation(), Task.READING));
        readings.put(draft, curve, readout, draw);
        String unit = readout.say("exercise.in", readout.differenceUnit());
        draft.part("superheat", readout.say("exercise.how-large-is-the-superheat", unit), readout.answer(superheat))
                .part(
                        "subcooling",
                        readout.say("exercise.how-large-is-the-subcooling", unit),
                        readout.answer(subcooling));
        Working working = new Working(draft, readout, curve);
        readings.workSuperheat(working);
        readings.workSubcooling(working);
        double pressureU = 0;
        double temperatureU = 0;
        if (difficulty == Difficulty.PRACTISED) {
            draft.part(
                    "superheat, other unit",
                    readout.say(
                            "exercise.what-is-the-superheat-in", readout.other().differenceUnit()),
                    readout.other().answer(superheat));
            working.converted(readout.say("exercise.superheat"), superheat);
        } else if (hard) {
            Given<PressureDifference> gaugeDoubt = readout.pressureDifference(
                    readout.say("exercise.standard-uncertainty-of-either-gauge"),
                    PressureDifference.ofPascals(
                            draw.between(0.008, 0.02) * readings.suction().pascals()));
            Given<TemperatureDifference> clampDoubt = readout.difference(
                    readout.say("exercise.standard-uncertainty-of-either-clamp"),
                    TemperatureDifference.ofKelvins(draw.between(0.3, 0.9)));
            pressureU = gaugeDoubt.value().pascals();
            temperatureU = clampDoubt.value().kelvins();
            draft.given(
                    gaugeDoubt,
                    clampDoubt,
                    readout.temperature(
                            readout.say("exercise.outdoor-air"), running.air().outdoor()),
                    readout.temperature(
                            readout.say("exercise.discharge-line-temperature"),
                            running.state().dischargeLine()));
        }
        Margins margins = Margins.of(curve, readings.typed(pressureU, temperatureU));
        if (hard) {
            doubt(draft, readout, curve, readings, margins.superheat().orElseThrow(), pressureU, temperatureU);
        }
        margins.superheat().ifPresent(each -> draft.derive(each.steps()));
        margins.subcooling().ifPresent(each -> draft.derive(each.steps()));
        slips(draft, readout, curve, readings);
        return Optional.of(draft.done());
    }

    /** What a sound air conditioner shows: common practice, no source. */
    private static boolean usual(TemperatureDifference margin) {
        return margin.kelvins() >= 2 && margin.kelvins() <= 12;
    }

    private static void doubt(
            Exercise.Draft draft,
            Readout readout,
            SaturationCurve curve,
            LineReadings readings,
            LineMargin margin,
            double pressureU,
            double temperatureU) {
        draft.rule(readout.say("exercise.the-standard-uncertainty-of-the"));
        TemperatureDifference u = TemperatureDifference.ofKelvins(margin.standardUncertaintyK());
        draft.part(
                "uncertainty of the superheat",
                readout.say("exercise.how-large-is-the-standard", readout.differenceUnit()),
                Answer.Figure.of(readout.number(u), 1, readout.differenceUnit(), 0.1));
        double fromGauge = Math.sqrt(u.kelvins() * u.kelvins() - temperatureU * temperatureU);
        TemperatureDifference gaugePart = TemperatureDifference.ofKelvins(fromGauge);
        TemperatureDifference clampPart = TemperatureDifference.ofKelvins(temperatureU);
        PressureDifference gauge = PressureDifference.ofPascals(pressureU);
        Temperature dew = curve.dewTemperature(readings.suction());
        draft.sum(
                readout.say("exercise.uncertainty-of-the-dew-point"),
                "dT/dp u(p)",
                readout.say("exercise.slope-of-the-dew-line", readout.text(dew), readout.text(gauge)),
                readout.text(gaugePart));
        draft.sum(
                readout.say("exercise.standard-uncertainty-of-the-superheat"),
                "u(SH) = sqrt(u(T)^2 + (dT/dp u(p))^2)",
                "sqrt((" + readout.text(clampPart) + ")^2 + (" + readout.text(gaugePart) + ")^2)",
                readout.text(u));
        draft.slip(readout.say("exercise.outdoor-air-and-discharge-line"));
    }

    private static void slips(Exercise.Draft draft, Readout readout, SaturationCurve curve, LineReadings readings) {
        Temperature wrongLine = curve.bubbleTemperature(readings.suction());
        TemperatureDifference glide = curve.glide(readings.suction());
        if (glide.kelvins() > 0.3) {
            Answer.Figure found = readout.answer(readings.suctionLine().value().minus(wrongLine));
            draft.mistake("superheat", found, readout.say("exercise.whoever-counts-superheat-from-the", found.text()))
                    .mistake(
                            "subcooling",
                            readout.answer(curve.dewTemperature(readings.liquid())
                                    .minus(readings.liquidLine().value())),
                            readout.say("exercise.whoever-counts-subcooling-from-the"));
        }
        Pressure low = Pressure.ofPascals(readings.suctionPressure().value().pascals());
        Answer.Figure found =
                readout.answer(curve.superheat(low, readings.suctionLine().value()));
        draft.mistake("superheat", found, readout.say("exercise.whoever-takes-the-gauge-readings", found.text()));
        Pressure high = Pressure.ofPascals(readings.liquidPressure().value().pascals());
        draft.mistake(
                "subcooling",
                readout.answer(curve.subcooling(high, readings.liquidLine().value())),
                readout.say("exercise.the-same-mistake-makes-the"));
    }
}
