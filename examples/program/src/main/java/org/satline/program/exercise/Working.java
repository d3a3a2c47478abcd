package org.satline.program.exercise;

import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * The usual steps of a sum, in the units of the question, each put down in the draft and its result handed on unrounded.
 */
final class Working {
    /** Where a figure of the saturation line comes from, and how far the student's own may be off. */
    static final String LINE = "exercise.saturation-line-at-this-very";

    static final String CHART = "exercise.saturation-line-by-chart";

    private final Exercise.Draft draft;
    private final Readout readout;
    private final SaturationCurve curve;

    Working(Exercise.Draft draft, Readout readout, SaturationCurve curve) {
        this.draft = draft;
        this.readout = readout;
        this.curve = curve;
    }

    String say(String key) {
        return readout.say(key);
    }

    Pressure absolute(Given<GaugePressure> gauge, Atmosphere atmosphere) {
        Pressure absolute = Pressure.ofGauge(gauge.value(), atmosphere);
        boolean vacuum = gauge.value().pascals() < 0;
        draft.work(
                readout.say("exercise.absolute", gauge.name()),
                vacuum ? readout.say("exercise.p-p-atm-vacuum") : "p = p_gauge + p_atm",
                vacuum
                        ? readout.say("exercise.and", readout.text(atmosphere.pressure()), gauge.text())
                        : gauge.text() + " + " + readout.text(atmosphere.pressure()),
                readout.text(absolute),
                readout.say("exercise.definition-of-gauge-pressure"));
        return absolute;
    }

    Temperature dew(String where, Pressure pressure) {
        Temperature dew = curve.dewTemperature(pressure);
        boolean blend = curve.refrigerant().isBlend();
        draft.work(
                (blend ? readout.say("exercise.dew-point") : readout.say("exercise.saturation-temperature")) + where,
                blend ? "T_dew(p)" : "T_sat(p)",
                readout.say("exercise.at", curve.refrigerant().designation(), readout.text(pressure)),
                readout.text(dew),
                readout.say(LINE));
        return dew;
    }

    Temperature bubble(String where, Pressure pressure) {
        Temperature bubble = curve.bubbleTemperature(pressure);
        boolean blend = curve.refrigerant().isBlend();
        draft.work(
                (blend ? readout.say("exercise.bubble-point") : readout.say("exercise.saturation-temperature")) + where,
                blend ? "T_bubble(p)" : "T_sat(p)",
                readout.say("exercise.at", curve.refrigerant().designation(), readout.text(pressure)),
                readout.text(bubble),
                readout.say(LINE));
        return bubble;
    }

    TemperatureDifference difference(String name, String formula, Temperature more, Temperature less) {
        TemperatureDifference difference = more.minus(less);
        draft.work(
                name,
                formula,
                readout.text(more) + " - " + readout.text(less),
                readout.text(difference),
                readout.say("exercise.definition"));
        return difference;
    }

    TemperatureDifference superheat(Temperature line, Temperature dew) {
        String from = curve.refrigerant().isBlend() ? "T_dew" : "T_sat";
        return difference(readout.say("exercise.superheat"), "SH = T_suction_line - " + from, line, dew);
    }

    TemperatureDifference subcooling(Temperature bubble, Temperature line) {
        String from = curve.refrigerant().isBlend() ? "T_bubble" : "T_sat";
        return difference(readout.say("exercise.subcooling"), "SC = " + from + " - T_liquid_line", bubble, line);
    }

    /** The same temperature in the other family of units. */
    void converted(String name, Temperature value) {
        boolean toCelsius = readout.us();
        draft.work(
                readout.say("exercise.in-5", name, readout.other().temperatureUnit()),
                toCelsius ? "t/degC = (t/degF - 32) / 1.8" : "t/degF = 1.8 t/degC + 32",
                readout.text(value),
                readout.other().text(value),
                readout.say("exercise.definition-of-the-degree-fahrenheit"));
    }

    /** The same difference in the other family of units. */
    void converted(String name, TemperatureDifference value) {
        draft.work(
                readout.say("exercise.in-5", name, readout.other().differenceUnit()),
                readout.us() ? "d/K = d/degF / 1.8" : "d/degF = 1.8 d/K",
                readout.text(value),
                readout.other().text(value),
                readout.say("exercise.definition-of-the-degree-fahrenheit-a"));
    }
}
