package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/** Between pressure and saturation temperature. */
final class SaturationMaker implements Maker {
    private static final String MIDDLE = "exercise.the-middle-of-bubble-and";

    private final Bench bench;

    SaturationMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        return switch (difficulty) {
            case STARTING -> first(draw, readout);
            case PRACTISED -> bothPoints(draw, readout);
            case EXPERIENCED -> withDoubt(draw, readout);
        };
    }

    private Exercise.Draft draft(Readout readout, Difficulty difficulty, String designation) {
        return new Exercise.Draft(Topic.SATURATION, difficulty, readout)
                .given(bench.refrigerantGiven(designation, readout))
                .cautions(bench.cautions(designation, Task.READING));
    }

    private Optional<Exercise> first(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.PURE);
        FirstSaturation first = new FirstSaturation(
                bench.curve(designation), readout, draft(readout, Difficulty.STARTING, designation));
        return switch (draw.whole(1, 4)) {
            case 1 -> first.cylinder(draw);
            case 2, 3 -> first.chart(draw);
            default -> first.machine(draw);
        };
    }

    private Optional<Exercise> bothPoints(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.GLIDING);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air = readout.seaLevel();
        Given<GaugePressure> gauge = readout.gauge(
                readout.say("exercise.gauge-on-the-evaporator"),
                curve.dewPressure(Temperature.ofCelsius(draw.between(-20, 12))),
                air.value());
        Pressure pressure = Pressure.ofGauge(gauge.value(), air.value());
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        Exercise.Draft draft = draft(readout, Difficulty.PRACTISED, designation)
                .situation(readout.say("exercise.a-blend-boils-in-the-evaporator"))
                .given(air, gauge)
                .table(SaturationExtract.around(curve, readout, bubble, dew, draw));
        ask(draft, readout, bubble, dew);
        swapped(draft, readout, bubble, dew);
        Given<GaugePressure> condenser = readout.gauge(
                readout.say("exercise.gauge-on-the-condenser"),
                curve.bubblePressure(Temperature.ofCelsius(draw.between(28, 50))),
                air.value());
        Pressure high = Pressure.ofGauge(condenser.value(), air.value());
        Temperature condensed = curve.bubbleTemperature(high);
        draft.given(condenser)
                .table(SaturationExtract.around(curve, readout, condensed, curve.dewTemperature(high), draw))
                .part(
                        "bubble point in the condenser",
                        readout.say("exercise.at-which-temperature-does-the-last-vapour", readout.temperatureUnit()),
                        readout.answer(condensed));
        draft.part(
                "dew point, other unit",
                readout.say("exercise.what-is-the-dew-point", readout.other().temperatureUnit()),
                readout.other().answer(dew));
        Working working = new Working(draft, readout, curve);
        Pressure absolute = working.absolute(gauge, air.value());
        working.bubble("", absolute);
        working.dew("", absolute);
        working.bubble(" " + readout.say("exercise.in-the-condenser"), working.absolute(condenser, air.value()));
        working.converted(readout.say("exercise.dew-point-in-the-evaporator"), dew);
        draft.derive(List.of(
                lookup("bubblePoint", "T_bubble(p)", pressure, bubble, curve),
                lookup("dewPoint", "T_dew(p)", pressure, dew, curve),
                lookup("bubblePoint", "T_bubble(p)", high, condensed, curve)));
        forgottenAtmosphere(draft, readout, curve, gauge.value());
        return Optional.of(draft.done());
    }

    private static void ask(Exercise.Draft draft, Readout readout, Temperature bubble, Temperature dew) {
        String unit = readout.say("exercise.in", readout.temperatureUnit());
        draft.part("bubble point", readout.say("exercise.where-is-the-bubble-point", unit), readout.answer(bubble));
        draft.part("dew point", readout.say("exercise.where-is-the-dew-point", unit), readout.answer(dew));
    }

    private Optional<Exercise> withDoubt(Draw draw, Readout readout) {
        String designation = draw.pick(Bench.GLIDING);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air = readout.barometer(Pressure.ofKilopascals(draw.between(78, 96)));
        Given<GaugePressure> gauge = readout.gauge(
                readout.say("exercise.gauge-on-the-evaporator"),
                curve.dewPressure(Temperature.ofCelsius(draw.between(-20, 12))),
                air.value());
        Given<PressureDifference> limit = readout.pressureDifference(
                readout.say("exercise.limit-of-error-of-the"),
                PressureDifference.ofPascals(draw.between(0.015, 0.035)
                        * Pressure.ofGauge(gauge.value(), air.value()).pascals()));
        Given<Temperature> roof = readout.temperature(
                readout.say("exercise.air-at-the-machine"), Temperature.ofCelsius(draw.between(12, 36)));
        Pressure pressure = Pressure.ofGauge(gauge.value(), air.value());
        Pressure least =
                pressure.plus(PressureDifference.ofPascals(-limit.value().pascals()));
        Pressure most = pressure.plus(limit.value());
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        TemperatureDifference span = curve.dewTemperature(most).minus(curve.dewTemperature(least));
        if (span.kelvins() < 0.8) {
            return Optional.empty(); // the doubt would drown in the rounding
        }
        Exercise.Draft draft = draft(readout, Difficulty.EXPERIENCED, designation)
                .situation(readout.say("exercise.a-blend-boils-in-an"))
                .given(air, roof, gauge, limit)
                .table(SaturationExtract.around(
                        curve, readout, curve.bubbleTemperature(least), curve.dewTemperature(most), draw));
        ask(draft, readout, bubble, dew);
        swapped(draft, readout, bubble, dew);
        String unit = readout.say("exercise.in", readout.temperatureUnit());
        draft.part(
                "lowest dew point",
                readout.say("exercise.what-is-the-lowest-dew", unit),
                readout.answer(curve.dewTemperature(least)));
        draft.part(
                "highest dew point",
                readout.say("exercise.and-the-highest", unit),
                readout.answer(curve.dewTemperature(most)));
        Working working = new Working(draft, readout, curve);
        Pressure absolute = working.absolute(gauge, air.value());
        working.bubble("", absolute);
        working.dew("", absolute);
        draft.sum(
                readout.say("exercise.pressure-at-the-limits-of"),
                readout.say("exercise.p-e-and-p-e"),
                readout.text(pressure) + " -/+ " + limit.text(),
                readout.say("exercise.and", readout.text(least), readout.text(most)));
        working.dew(" " + readout.say("exercise.at-the-least-pressure"), least);
        working.dew(" " + readout.say("exercise.at-the-most-pressure"), most);
        draft.derive(List.of(
                lookup("bubblePoint", "T_bubble(p)", pressure, bubble, curve),
                lookup("dewPoint", "T_dew(p)", pressure, dew, curve)));
        draft.slip(readout.say("exercise.the-air-at-the-machine"));
        forgottenAtmosphere(draft, readout, curve, gauge.value());
        return Optional.of(draft.done());
    }

    private static void swapped(Exercise.Draft draft, Readout readout, Temperature bubble, Temperature dew) {
        Answer.Figure middle = readout.answer(Temperature.ofKelvins((bubble.kelvins() + dew.kelvins()) / 2));
        String text = readout.say("exercise.the-two-columns-of-the-table");
        draft.mistake("dew point", readout.answer(bubble), text)
                .mistake("bubble point", readout.answer(dew), text)
                .mistake("bubble point", middle, readout.say(MIDDLE))
                .mistake("dew point", middle, readout.say(MIDDLE));
    }

    private static void forgottenAtmosphere(
            Exercise.Draft draft, Readout readout, SaturationCurve curve, GaugePressure gauge) {
        if (curve.dewPressureRange().low() < gauge.pascals()) {
            Answer.Figure found = readout.answer(curve.dewTemperature(Pressure.ofPascals(gauge.pascals())));
            draft.mistake("dew point", found, readout.say("exercise.whoever-takes-the-gauge-reading", found.text()));
        }
    }

    static Step lookup(String key, String formula, Pressure pressure, Temperature found, SaturationCurve curve) {
        return new Step(key, formula, List.of(Figure.of("p", pressure)), Figure.of("T", found), curve.source());
    }
}
