package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;

/** Bubble point, dew point and glide of a blend. */
final class GlideMaker implements Maker {
    private static final double LEAST_GLIDE_K = 1.5;

    private final Bench bench;

    GlideMaker(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Optional<Exercise> draw(Draw draw, Readout readout, Difficulty difficulty) {
        String designation = draw.pick(Bench.GLIDING);
        SaturationCurve curve = bench.curve(designation);
        Given<Atmosphere> air = difficulty == Difficulty.EXPERIENCED
                ? readout.barometer(Pressure.ofKilopascals(draw.between(78, 96)))
                : readout.seaLevel();
        Pressure drawn = curve.dewPressure(Temperature.ofCelsius(draw.between(-22, 12)));
        Exercise.Draft draft = new Exercise.Draft(Topic.GLIDE, difficulty, readout)
                .given(bench.refrigerantGiven(designation, readout))
                .cautions(bench.cautions(designation, Task.READING))
                .rule(readout.say("exercise.the-glide-is-the-dew"));
        Working working = new Working(draft, readout, curve);
        Pressure pressure;
        if (difficulty == Difficulty.STARTING) {
            Given<Pressure> given =
                    readout.absolute(readout.say("exercise.absolute-pressure-in-the-evaporator"), drawn);
            pressure = given.value();
            draft.situation(readout.say("exercise.a-blend-boils-in-the")).given(given);
        } else {
            Given<GaugePressure> given = readout.gauge(readout.say("exercise.suction-pressure"), drawn, air.value());
            draft.situation(readout.say("exercise.a-refrigeration-plant-runs-on"))
                    .given(air, given);
            pressure = working.absolute(given, air.value());
        }
        Temperature bubble = curve.bubbleTemperature(pressure);
        Temperature dew = curve.dewTemperature(pressure);
        TemperatureDifference glide = dew.minus(bubble);
        if (glide.kelvins() < LEAST_GLIDE_K) {
            return Optional.empty();
        }
        draft.table(SaturationExtract.around(curve, readout, bubble, dew, draw));
        String unit = readout.say("exercise.in", readout.temperatureUnit());
        draft.part("bubble point", readout.say("exercise.at-which-temperature-does-the", unit), readout.answer(bubble))
                .part(
                        "dew point",
                        readout.say("exercise.at-which-temperature-does-the-last", unit),
                        readout.answer(dew))
                .part(
                        "glide",
                        readout.say("exercise.how-large-is-the-glide", readout.differenceUnit()),
                        readout.answer(glide));
        working.bubble("", pressure);
        working.dew("", pressure);
        working.difference(readout.say("exercise.glide"), "glide = T_dew - T_bubble", dew, bubble);
        draft.derive(List.of(
                SaturationMaker.lookup("bubblePoint", "T_bubble(p)", pressure, bubble, curve),
                SaturationMaker.lookup("dewPoint", "T_dew(p)", pressure, dew, curve)));
        if (difficulty != Difficulty.STARTING) {
            wrongLine(draw, draft, working, readout, dew, bubble, difficulty);
        } else {
            condenser(draw, draft, working, readout, curve);
        }
        String swapped = readout.say("exercise.the-two-columns-of-the");
        draft.mistake("bubble point", readout.answer(dew), swapped)
                .mistake("dew point", readout.answer(bubble), swapped)
                .mistake("glide", readout.answer(bubble.minus(dew)), swapped);
        return Optional.of(draft.done());
    }

    /** The same blend where it condenses: the glide is another one there. */
    private static void condenser(
            Draw draw, Exercise.Draft draft, Working working, Readout readout, SaturationCurve curve) {
        Given<Pressure> given = readout.absolute(
                readout.say("exercise.absolute-pressure-in-the-condenser"),
                curve.bubblePressure(Temperature.ofCelsius(draw.between(28, 50))));
        Temperature bubble = curve.bubbleTemperature(given.value());
        Temperature dew = curve.dewTemperature(given.value());
        TemperatureDifference glide = dew.minus(bubble);
        draft.given(given)
                .table(SaturationExtract.around(curve, readout, bubble, dew, draw))
                .part(
                        "glide in the condenser",
                        readout.say("exercise.how-large-is-the-glide-in", readout.differenceUnit()),
                        readout.answer(glide));
        working.dew(" " + readout.say("exercise.in-the-condenser"), given.value());
        working.bubble(" " + readout.say("exercise.in-the-condenser"), given.value());
        working.difference(readout.say("exercise.glide-in-the-condenser"), "glide = T_dew - T_bubble", dew, bubble);
        draft.slip(readout.say("exercise.the-glide-depends-on-the"));
    }

    private static void wrongLine(
            Draw draw,
            Exercise.Draft draft,
            Working working,
            Readout readout,
            Temperature dew,
            Temperature bubble,
            Difficulty difficulty) {
        Given<Temperature> line = readout.temperature(
                readout.say("exercise.suction-line-temperature"),
                dew.plus(TemperatureDifference.ofKelvins(draw.between(3.5, 9))));
        draft.given(line);
        if (difficulty == Difficulty.EXPERIENCED) {
            draft.given(readout.temperature(
                    readout.say("exercise.air-entering-the-evaporator"),
                    line.value().plus(TemperatureDifference.ofKelvins(draw.between(2, 6)))));
            draft.slip(readout.say("exercise.the-air-entering-the-evaporator"));
        }
        TemperatureDifference superheat = line.value().minus(dew);
        TemperatureDifference wrong = line.value().minus(bubble);
        String unit = readout.say("exercise.in", readout.differenceUnit());
        draft.part("superheat", readout.say("exercise.how-large-is-the-superheat", unit), readout.answer(superheat))
                .part(
                        "superheat from the wrong line",
                        readout.say("exercise.what-would-someone-find-who-counts", unit),
                        readout.answer(wrong));
        working.superheat(line.value(), dew);
        working.difference(
                readout.say("exercise.superheat-from-the-wrong-line"),
                "T_suction_line - T_bubble",
                line.value(),
                bubble);
        if (difficulty == Difficulty.PRACTISED) {
            draft.part(
                    "superheat, other unit",
                    readout.say(
                            "exercise.what-is-the-true-superheat",
                            readout.other().differenceUnit()),
                    readout.other().answer(superheat));
            working.converted(readout.say("exercise.superheat"), superheat);
        }
    }
}
