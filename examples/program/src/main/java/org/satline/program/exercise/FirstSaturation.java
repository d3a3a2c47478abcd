package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.program.pictures.Picture;
import org.satline.program.pictures.PictureUnits;
import org.satline.program.pictures.PressureTemperaturePicture;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** The first steps with a saturation table of one substance: from temperature to pressure, or from pressure to temperature, twice each. */
final class FirstSaturation {
    private final SaturationCurve curve;
    private final Readout readout;
    private final Exercise.Draft draft;

    FirstSaturation(SaturationCurve curve, Readout readout, Exercise.Draft draft) {
        this.curve = curve;
        this.readout = readout;
        this.draft = draft;
    }

    /** A cylinder in the morning and at noon, by the table. */
    Optional<Exercise> cylinder(Draw draw) {
        return cylinder(draw, false);
    }

    /** The same by a chart, which is read less closely. */
    Optional<Exercise> chart(Draw draw) {
        return cylinder(draw, true);
    }

    private Optional<Exercise> cylinder(Draw draw, boolean byChart) {
        double cool = draw.between(-5, 24);
        Given<Temperature> morning = readout.temperature(
                readout.say("exercise.temperature-of-the-cylinder-in"), Temperature.ofCelsius(cool));
        Given<Temperature> noon = readout.temperature(
                readout.say("exercise.temperature-of-the-cylinder-at"),
                Temperature.ofCelsius(cool + draw.between(6, 18)));
        TableExtract table = SaturationExtract.around(curve, readout, morning.value(), noon.value(), draw);
        draft.situation(readout.say("exercise.a-cylinder-stands-in-a"))
                .given(morning, noon)
                .table(byChart ? table.drawn(picture(morning.value(), noon.value(), draw)) : table);
        pressure(
                readout.say("exercise.pressure-in-the-morning"),
                readout.say("exercise.in-the-morning"),
                morning,
                byChart);
        pressure(readout.say("exercise.pressure-at-noon"), readout.say("exercise.at-noon"), noon, byChart);
        draft.slip(readout.say("exercise.how-much-liquid-there-is"));
        return Optional.of(draft.done());
    }

    /** Some kelvins to either side, more to one than to the other as drawn. */
    private Picture picture(Temperature cool, Temperature warm, Draw draw) {
        double below = draw.between(3, 11);
        return PressureTemperaturePicture.toRead(
                curve,
                PictureUnits.of(readout.system(), readout.words()),
                cool.kelvins() - below,
                warm.kelvins() + 14 - below);
    }

    private void pressure(String name, String when, Given<Temperature> temperature, boolean byChart) {
        Pressure pressure = curve.bubblePressure(temperature.value());
        Answer.Figure right = byChart ? readout.charted(pressure) : readout.answer(pressure);
        double air = readout.number(Atmosphere.standard().pressure());
        Answer.Figure overAir =
                Answer.Figure.of(right.value() - air, right.decimals(), right.unit(), right.allowance());
        String asked = byChart ? "exercise.what-does-the-chart-say" : "exercise.what-is-the-absolute-pressure";
        draft.mistake(name, overAir, readout.say("exercise.what-a-gauge-would-show"))
                .part(name, readout.say(asked, when, readout.absoluteUnit()), right)
                .work(
                        name,
                        "p = p_sat(T)",
                        readout.say("exercise.at", curve.refrigerant().designation(), temperature.text()),
                        readout.text(pressure),
                        readout.say(byChart ? Working.CHART : Working.LINE))
                .derive(List.of(new Step(
                        "saturationPressure",
                        "p_sat(T)",
                        List.of(Figure.of("T", temperature.value())),
                        Figure.of("p", pressure),
                        curve.source())));
    }

    /** Evaporator and condenser of one machine. */
    Optional<Exercise> machine(Draw draw) {
        Given<Pressure> low = readout.absolute(
                readout.say("exercise.absolute-pressure-in-the-evaporator"),
                curve.bubblePressure(Temperature.ofCelsius(draw.between(-25, 12))));
        Given<Pressure> high = readout.absolute(
                readout.say("exercise.absolute-pressure-in-the-condenser"),
                curve.bubblePressure(Temperature.ofCelsius(draw.between(28, 55))));
        draft.situation(readout.say("exercise.a-refrigerant-boils-in-the")).given(low, high);
        temperature(draw, "boiling", readout.say("exercise.at-which-temperature-does-it"), low);
        temperature(draw, "condensing", readout.say("exercise.at-which-temperature-does-it-condense"), high);
        draft.slip(readout.say("exercise.one-table-serves-for-both"));
        return Optional.of(draft.done());
    }

    private void temperature(Draw draw, String name, String ask, Given<Pressure> pressure) {
        Temperature found = curve.bubbleTemperature(pressure.value());
        draft.table(SaturationExtract.around(curve, readout, found, found, draw))
                .part(name, readout.say("exercise.in-3", ask, readout.temperatureUnit()), readout.answer(found));
        new Working(draft, readout, curve).bubble(", " + name, pressure.value());
        draft.derive(
                List.of(SaturationMaker.lookup("saturationTemperature", "T_sat(p)", pressure.value(), found, curve)));
    }
}
