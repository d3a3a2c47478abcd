package org.satline.program.pictures;

import java.util.List;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;
import org.satline.quantity.Atmosphere;
import org.satline.saturation.SaturationCurve;

/** Temperature glide of a blend against pressure: dew point less bubble point. */
public final class GlidePicture {
    private static final double LEAST_PA = 50_000;
    private static final int STEPS = 200;

    private GlidePicture() {}

    /**
     * Draws the glide from 50 kPa, or where the lines begin, to where they end.
     *
     * @param curve bubble and dew line
     * @param units units of the picture
     * @return the picture
     * @throws IllegalArgumentException if the refrigerant is a single substance, which has no glide
     */
    public static Picture of(SaturationCurve curve, PictureUnits units) {
        String name = curve.refrigerant().designation();
        if (!curve.refrigerant().isBlend()) {
            throw new IllegalArgumentException(
                    name + " is a single substance and has no glide; choose the picture pressure-temperature");
        }
        Range bubble = curve.bubblePressureRange();
        Range dew = curve.dewPressureRange();
        double low = Math.max(LEAST_PA, Math.max(bubble.low(), dew.low()));
        double high = Math.min(bubble.high(), dew.high());
        Points points = new Points();
        double largest = 0;
        double largestAt = low;
        for (int i = 0; i <= STEPS; i++) {
            double p = i == 0 ? low : i == STEPS ? high : low * Math.pow(high / low, (double) i / STEPS);
            double glide = curve.dewTemperatureK(p) - curve.bubbleTemperatureK(p);
            points.add(units.pressure(p), units.difference(glide));
            if (glide > largest) {
                largest = glide;
                largestAt = p;
            }
        }
        Chart chart = new Chart(
                units.text("glide.title", Figure.of("refrigerant", name)),
                units.pressureAxis(low, high),
                new Axis(
                        units.text("axis.glide", PictureUnits.unit(units.differenceUnit())),
                        0,
                        units.difference(largest) * 1.12,
                        Axis.Scale.EVEN));
        chart.add(Series.line(units.text("line.glide"), points, Pen.SOLID, Ink.BLACK));
        String note = units.text(
                "glide.note",
                Figure.of("refrigerant", name),
                Figure.of("largest", Printed.figure("%.2f %s", units.difference(largest), units.differenceUnit())),
                Figure.of("at", units.pressureText(largestAt)),
                Figure.of("normal", atAtmosphere(curve, units, low, high)));
        return new Picture(chart, note, Sources.notes(curve, List.of(note), units));
    }

    private static String atAtmosphere(SaturationCurve curve, PictureUnits units, double low, double high) {
        double p = Atmosphere.standard().pressure().pascals();
        if (!(p >= low && p <= high)) {
            return units.text("glide.none");
        }
        return Printed.figure(
                "%.2f %s",
                units.difference(curve.dewTemperatureK(p) - curve.bubbleTemperatureK(p)), units.differenceUnit());
    }
}
