package org.satline.program.pictures;

import java.util.List;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;
import org.satline.tables.Certificate;
import org.satline.tables.Region;

/** Error of the stored saturation pressures against temperature, measured against the equation while drawing. */
public final class TableErrorPicture {
    private static final int STATES = 400;
    /** Fraction of the golden section: states spread by it never fall on the even spacing of nodes. */
    private static final double GOLDEN = 0.6180339887498949;

    private static final double FLOOR = 1e-17;

    private TableErrorPicture() {}

    /**
     * Measures and draws.
     *
     * @param refrigerant refrigerant with a stored table
     * @param units units of the picture
     * @return the picture
     * @throws IllegalArgumentException if no table is stored for it
     */
    public static Picture of(Refrigerant refrigerant, PictureUnits units) {
        Certificate certificate = Certificate.of(refrigerant)
                .orElseThrow(() -> new IllegalArgumentException("no table of " + refrigerant.designation()
                        + " is stored; its answers come from the equation, if it has one"));
        SaturationCurve table = SaturationCurves.of(refrigerant);
        SaturationCurve equation = SaturationCurves.solving(refrigerant);
        double low = table.minTemperatureK();
        double high = table.maxTemperatureK();
        double bound = certificate.entries().stream()
                .filter(entry -> entry.property() == SaturationProperty.DEW_PRESSURE)
                .mapToDouble(entry -> entry.region().bound(entry.property()))
                .max()
                .orElseThrow();
        Chart chart = new Chart(
                units.text("error.title", Figure.of("refrigerant", refrigerant.designation())),
                units.temperatureAxis(low, high + 0.02 * (high - low)),
                new Axis(units.text("axis.error"), FLOOR, bound * 10, Axis.Scale.LOGARITHMIC));
        chart.markSize(5);
        double worstBubble = 0;
        if (refrigerant.isBlend()) {
            worstBubble = draw(chart, table, equation, SaturationProperty.BUBBLE_PRESSURE, units);
        }
        double worstDew = draw(chart, table, equation, SaturationProperty.DEW_PRESSURE, units);
        bounds(chart, certificate, FluidModel.of(refrigerant).twoPhaseEnd().temperatureK(), units);
        String note = units.text(
                refrigerant.isBlend() ? "error.noteBlend" : "error.note",
                Figure.of("states", String.valueOf(STATES)),
                Figure.of("bubble", Printed.figure("%.1e", worstBubble)),
                Figure.of("dew", Printed.figure("%.1e", worstDew)),
                Figure.of("floor", Printed.figure("%.0e", FLOOR)));
        return new Picture(
                chart,
                note,
                Sources.notes(
                        table,
                        List.of(note, units.text("error.table", Figure.of("table", certificate.tableChecksum()))),
                        units));
    }

    private static double draw(
            Chart chart,
            SaturationCurve table,
            SaturationCurve equation,
            SaturationProperty property,
            PictureUnits units) {
        Range range = property == SaturationProperty.BUBBLE_PRESSURE
                ? table.bubbleTemperatureRange()
                : table.dewTemperatureRange();
        Points points = new Points();
        double worst = 0;
        double share = 0;
        for (int i = 0; i < STATES; i++) {
            share = (share + GOLDEN) % 1;
            double t = range.low() + (range.high() - range.low()) * share;
            if (table.engineAt(property, t) == Engine.TABLE) {
                double exact = equation.value(property, t);
                double error = Math.abs(table.value(property, t) - exact) / exact;
                worst = Math.max(worst, error);
                points.add(units.temperature(t), Math.max(error, FLOOR));
            }
        }
        boolean bubble = property == SaturationProperty.BUBBLE_PRESSURE;
        chart.add(Series.marks(
                units.text(bubble ? "line.bubble" : "line.dew"),
                points,
                bubble ? Mark.PLUS : Mark.OPEN_CIRCLE,
                bubble ? Ink.RUST : Ink.BLUE));
        return worst;
    }

    private static void bounds(Chart chart, Certificate certificate, double endK, PictureUnits units) {
        Points stairs = new Points();
        for (Certificate.Entry entry : certificate.entries()) {
            if (entry.property() == SaturationProperty.DEW_PRESSURE) {
                Region region = entry.region();
                double bound = region.bound(entry.property());
                stairs.add(units.temperature(Math.max(entry.from(), region.from() * endK)), bound);
                stairs.add(units.temperature(Math.min(entry.to(), region.to() * endK)), bound);
            }
        }
        chart.add(Series.line(units.text("line.bound"), stairs, Pen.HEAVY_DASHED, Ink.BLACK));
    }
}
