package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.saturation.SaturationCurve;

/** Saturation pressures of several refrigerants against temperature on one sheet: of blends the dew line. */
public final class ComparisonPicture {
    /** As many as differ in their pens. */
    public static final int MOST = 6;

    private static final double COLDEST_SHOWN_K = 233.15;
    private static final int STEPS = 160;
    private static final List<Pen> PENS =
            List.of(Pen.SOLID, Pen.DASHED, Pen.DOTTED, Pen.HEAVY, Pen.HEAVY_DASHED, Pen.DASH_DOT);
    private static final List<Ink> INKS = List.of(Ink.BLACK, Ink.BLUE, Ink.RUST, Ink.GREY, Ink.BLACK, Ink.BLUE);

    private ComparisonPicture() {}

    /**
     * Draws them from about -40 degC to where each ends.
     *
     * @param curves two to six
     * @param units units of the picture
     * @return the picture
     * @throws IllegalArgumentException if there are fewer or more
     */
    public static Picture of(List<SaturationCurve> curves, PictureUnits units) {
        if (!(curves.size() >= 2 && curves.size() <= MOST)) {
            throw new IllegalArgumentException(
                    curves.size() + " refrigerants are outside [2, " + MOST + "] for one sheet");
        }
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (SaturationCurve curve : curves) {
            double from = from(curve);
            low = Math.min(low, from);
            high = Math.max(high, curve.dewTemperatureRange().high());
            least = Math.min(least, curve.dewPressurePa(from));
            most = Math.max(most, curve.dewPressureRange().high());
        }
        Chart chart = new Chart(
                units.text("compared.title"),
                units.temperatureAxis(low, high + 6),
                units.pressureAxis(0.9 * least, 1.3 * most));
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            SaturationCurve curve = curves.get(i);
            String name = curve.refrigerant().designation();
            chart.add(Series.line(name, points(curve, units), PENS.get(i), INKS.get(i)));
            notes.addAll(Sources.notes(curve, List.of(), units).stream()
                    .map(note -> name + ": " + note)
                    .toList());
        }
        notes.add(0, units.text("compared.note"));
        return new Picture(chart, notes.get(0), notes);
    }

    private static double from(SaturationCurve curve) {
        return Math.max(curve.dewTemperatureRange().low(), Math.min(COLDEST_SHOWN_K, 0.75 * curve.maxTemperatureK()));
    }

    private static Points points(SaturationCurve curve, PictureUnits units) {
        Points points = new Points();
        double low = from(curve);
        double high = curve.dewTemperatureRange().high();
        for (int i = 0; i <= STEPS; i++) {
            double t = i == STEPS ? high : low + (high - low) * i / STEPS;
            points.add(units.temperature(t), units.pressure(curve.dewPressurePa(t)));
        }
        return points;
    }
}
