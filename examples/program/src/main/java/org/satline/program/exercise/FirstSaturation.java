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
        Given<Temperature> morning =
                readout.temperature("temperature of the cylinder in the morning", Temperature.ofCelsius(cool));
        Given<Temperature> noon = readout.temperature(
                "temperature of the cylinder at noon", Temperature.ofCelsius(cool + draw.between(6, 18)));
        TableExtract table = SaturationExtract.around(curve, readout, morning.value(), noon.value(), draw);
        draft.situation("A cylinder stands in a shed, valves shut. It holds liquid and vapour of one refrigerant.")
                .given(morning, noon)
                .table(byChart ? table.drawn(picture(morning.value(), noon.value(), draw)) : table);
        pressure("pressure in the morning", "in the morning", morning, byChart);
        pressure("pressure at noon", "at noon", noon, byChart);
        draft.slip(
                "How much liquid there is does not matter as long as there is some; a weight would be needed to tell.");
        return Optional.of(draft.done());
    }

    /** Some kelvins to either side, more to one than to the other as drawn. */
    private Picture picture(Temperature cool, Temperature warm, Draw draw) {
        double below = draw.between(3, 11);
        return PressureTemperaturePicture.toRead(
                curve,
                readout.us() ? PictureUnits.US : PictureUnits.SI,
                cool.kelvins() - below,
                warm.kelvins() + 14 - below);
    }

    private void pressure(String name, String when, Given<Temperature> temperature, boolean byChart) {
        Pressure pressure = curve.bubblePressure(temperature.value());
        Answer.Figure right = byChart ? readout.charted(pressure) : readout.answer(pressure);
        double air = readout.number(Atmosphere.standard().pressure());
        Answer.Figure overAir =
                Answer.Figure.of(right.value() - air, right.decimals(), right.unit(), right.allowance());
        draft.mistake(
                        name,
                        overAir,
                        "What a gauge would show is less by the atmosphere; the question asks for absolute.")
                .part(
                        name,
                        (byChart ? "Read from the chart: what" : "What") + " is the absolute pressure in the cylinder "
                                + when + ", in " + readout.absoluteUnit() + "?",
                        right)
                .work(
                        name,
                        "p = p_sat(T)",
                        curve.refrigerant().designation() + " at " + temperature.text(),
                        readout.text(pressure),
                        byChart ? Working.CHART : Working.LINE)
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
                "absolute pressure in the evaporator",
                curve.bubblePressure(Temperature.ofCelsius(draw.between(-25, 12))));
        Given<Pressure> high = readout.absolute(
                "absolute pressure in the condenser",
                curve.bubblePressure(Temperature.ofCelsius(draw.between(28, 55))));
        draft.situation(
                        "A refrigerant boils in the evaporator of a machine and condenses in its condenser, each at a steady pressure.")
                .given(low, high);
        temperature(draw, "boiling", "At which temperature does it boil", low);
        temperature(draw, "condensing", "At which temperature does it condense", high);
        draft.slip("One table serves for both: boiling and condensing are the same line, read at two pressures.");
        return Optional.of(draft.done());
    }

    private void temperature(Draw draw, String name, String ask, Given<Pressure> pressure) {
        Temperature found = curve.bubbleTemperature(pressure.value());
        draft.table(SaturationExtract.around(curve, readout, found, found, draw))
                .part(name, ask + ", in " + readout.temperatureUnit() + "?", readout.answer(found));
        new Working(draft, readout, curve).bubble(", " + name, pressure.value());
        draft.derive(
                List.of(SaturationMaker.lookup("saturationTemperature", "T_sat(p)", pressure.value(), found, curve)));
    }
}
