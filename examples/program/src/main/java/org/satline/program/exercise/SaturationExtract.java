package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.program.page.Printed;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/**
 * Rows of a saturation table around what a question needs, so close that straight-line interpolation is good to some hundredths of a
 * kelvin.
 */
final class SaturationExtract {
    private static final int ROWS_BESIDE = 5;

    private SaturationExtract() {}

    /**
     * Rows that reach beyond both temperatures, further to one side than to the other as drawn, so that their place tells nothing.
     *
     * @param curve saturation curve
     * @param readout units of the table
     * @param first a temperature that has to be found
     * @param second another one, or the same
     * @param draw how many rows stand on either side
     */
    static TableExtract around(
            SaturationCurve curve, Readout readout, Temperature first, Temperature second, Draw draw) {
        int step = readout.us() ? 4 : 2;
        double low = Math.min(readout.number(first), readout.number(second));
        double high = Math.max(readout.number(first), readout.number(second));
        int below = draw.whole(1, ROWS_BESIDE - 1);
        int from = ((int) Math.floor(low / step) - below + 1) * step;
        int to = ((int) Math.ceil(high / step) + ROWS_BESIDE - below) * step;
        boolean glides = curve.refrigerant().isBlend();
        List<List<String>> rows = new ArrayList<>();
        for (int t = from; t <= to; t += step) {
            Temperature at = readout.us() ? Temperature.ofFahrenheit(t) : Temperature.ofCelsius(t);
            if (at.kelvins() < curve.minTemperatureK() || at.kelvins() > curve.maxTemperatureK()) {
                continue;
            }
            String bubble = pressure(curve.bubblePressure(at), readout);
            rows.add(
                    glides
                            ? List.of(Integer.toString(t), bubble, pressure(curve.dewPressure(at), readout))
                            : List.of(Integer.toString(t), bubble));
        }
        String unit = ", " + readout.absoluteUnit();
        return new TableExtract(
                readout.say(
                        "exercise.saturation-table-of-absolute-pressure",
                        curve.refrigerant().designation()),
                glides
                        ? List.of(
                                readout.say("exercise.temperature", readout.temperatureUnit()),
                                readout.say("exercise.bubble-point-pressure", unit),
                                readout.say("exercise.dew-point-pressure", unit))
                        : List.of(
                                readout.say("exercise.temperature", readout.temperatureUnit()),
                                readout.say("exercise.saturation-pressure", unit)),
                rows,
                curve.source(),
                Optional.empty());
    }

    private static String pressure(Pressure value, Readout readout) {
        return Printed.figure(readout.us() ? "%.2f" : "%.1f", readout.number(value));
    }
}
