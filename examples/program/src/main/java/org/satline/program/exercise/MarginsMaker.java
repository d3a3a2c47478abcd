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
        Exercise.Draft draft = new Exercise.Draft(Topic.MARGINS, difficulty)
                .situation("An air conditioner has run steadily for half an hour. These are its readings.")
                .given(bench.refrigerantGiven(running.designation()))
                .cautions(bench.cautions(running.designation(), Task.READING));
        readings.put(draft, curve, readout, draw);
        String unit = ", in " + readout.differenceUnit() + "?";
        draft.part("superheat", "How large is the superheat" + unit, readout.answer(superheat))
                .part("subcooling", "How large is the subcooling" + unit, readout.answer(subcooling));
        Working working = new Working(draft, readout, curve);
        readings.workSuperheat(working);
        readings.workSubcooling(working);
        double pressureU = 0;
        double temperatureU = 0;
        if (difficulty == Difficulty.PRACTISED) {
            draft.part(
                    "superheat, other unit",
                    "What is the superheat in " + readout.other().differenceUnit() + "?",
                    readout.other().answer(superheat));
            working.converted("superheat", superheat);
        } else if (hard) {
            Given<PressureDifference> gaugeDoubt = readout.pressureDifference(
                    "standard uncertainty of either gauge",
                    PressureDifference.ofPascals(
                            draw.between(0.008, 0.02) * readings.suction().pascals()));
            Given<TemperatureDifference> clampDoubt = readout.difference(
                    "standard uncertainty of either clamp", TemperatureDifference.ofKelvins(draw.between(0.3, 0.9)));
            pressureU = gaugeDoubt.value().pascals();
            temperatureU = clampDoubt.value().kelvins();
            draft.given(
                    gaugeDoubt,
                    clampDoubt,
                    readout.temperature("outdoor air", running.air().outdoor()),
                    readout.temperature(
                            "discharge-line temperature", running.state().dischargeLine()));
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
        draft.rule(
                "The standard uncertainty of the superheat is u(SH) = sqrt(u(T)^2 + (dT/dp u(p))^2), where dT/dp is the slope of the dew"
                        + " line: the step in temperature over the step in pressure of the rows of the table around the reading (JCGM 100:2008, 5.1.2).");
        TemperatureDifference u = TemperatureDifference.ofKelvins(margin.standardUncertaintyK());
        draft.part(
                "uncertainty of the superheat",
                "How large is the standard uncertainty of the superheat, in " + readout.differenceUnit() + "?",
                Answer.Figure.of(readout.number(u), 1, readout.differenceUnit(), 0.1));
        double fromGauge = Math.sqrt(u.kelvins() * u.kelvins() - temperatureU * temperatureU);
        TemperatureDifference gaugePart = TemperatureDifference.ofKelvins(fromGauge);
        TemperatureDifference clampPart = TemperatureDifference.ofKelvins(temperatureU);
        PressureDifference gauge = PressureDifference.ofPascals(pressureU);
        Temperature dew = curve.dewTemperature(readings.suction());
        draft.sum(
                "uncertainty of the dew point",
                "dT/dp u(p)",
                "slope of the dew line at " + readout.text(dew) + " x " + readout.text(gauge),
                readout.text(gaugePart));
        draft.sum(
                "standard uncertainty of the superheat",
                "u(SH) = sqrt(u(T)^2 + (dT/dp u(p))^2)",
                "sqrt((" + readout.text(clampPart) + ")^2 + (" + readout.text(gaugePart) + ")^2)",
                readout.text(u));
        draft.slip("Outdoor air and discharge line are not needed here.");
    }

    private static void slips(Exercise.Draft draft, Readout readout, SaturationCurve curve, LineReadings readings) {
        Temperature wrongLine = curve.bubbleTemperature(readings.suction());
        TemperatureDifference glide = curve.glide(readings.suction());
        if (glide.kelvins() > 0.3) {
            Answer.Figure found = readout.answer(readings.suctionLine().value().minus(wrongLine));
            draft.mistake(
                            "superheat",
                            found,
                            "Whoever counts superheat from the bubble point finds " + found.text()
                                    + ": too much by the glide.")
                    .mistake(
                            "subcooling",
                            readout.answer(curve.dewTemperature(readings.liquid())
                                    .minus(readings.liquidLine().value())),
                            "Whoever counts subcooling from the dew point finds too much by the glide as well.");
        }
        Pressure low = Pressure.ofPascals(readings.suctionPressure().value().pascals());
        Answer.Figure found =
                readout.answer(curve.superheat(low, readings.suctionLine().value()));
        draft.mistake(
                "superheat",
                found,
                "Whoever takes the gauge readings for absolute finds a superheat of " + found.text()
                        + ": far too much, and a reason to add refrigerant that is not there.");
        Pressure high = Pressure.ofPascals(readings.liquidPressure().value().pascals());
        draft.mistake(
                "subcooling",
                readout.answer(curve.subcooling(high, readings.liquidLine().value())),
                "The same mistake makes the subcooling too small.");
    }
}
