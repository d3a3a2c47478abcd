package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Saturation pressure against temperature, with the readings of a visit where there are some. */
public final class PressureTemperaturePicture {
    private static final double COLDEST_SHOWN_K = 233.15;
    /** Air around the readings, K. */
    private static final double AROUND_K = 12;

    private static final int STEPS = 160;

    private final SaturationCurve curve;
    private final PictureUnits units;
    private final boolean blend;
    private Optional<Atmosphere> air = Optional.empty();

    private PressureTemperaturePicture(SaturationCurve curve, PictureUnits units) {
        this.curve = curve;
        this.units = units;
        this.blend = curve.refrigerant().isBlend();
    }

    /**
     * Draws the lines from about -40 degC to where they end.
     *
     * @param curve bubble and dew line
     * @param units units of the picture
     * @return the picture
     */
    public static Picture of(SaturationCurve curve, PictureUnits units) {
        return new PressureTemperaturePicture(curve, units).whole();
    }

    /**
     * Draws the lines with a second scale of gauge pressures.
     *
     * @param curve bubble and dew line
     * @param units units of the picture
     * @param air atmosphere of the gauge
     * @return the picture
     */
    public static Picture of(SaturationCurve curve, PictureUnits units, Atmosphere air) {
        PressureTemperaturePicture picture = new PressureTemperaturePicture(curve, units);
        picture.air = Optional.of(air);
        return picture.whole();
    }

    /**
     * Draws a part of the lines with an even scale of pressures, to read figures from.
     *
     * @param curve bubble and dew line
     * @param units units of the picture
     * @param lowK where it begins, K
     * @param highK where it ends, K
     * @return the picture
     */
    public static Picture toRead(SaturationCurve curve, PictureUnits units, double lowK, double highK) {
        PressureTemperaturePicture picture = new PressureTemperaturePicture(curve, units);
        Chart chart = new Chart(
                units.text(
                        "saturation.title",
                        Figure.of("refrigerant", curve.refrigerant().designation())),
                units.temperatureAxis(lowK, highK),
                new Axis(
                        units.pressureTitle(),
                        units.pressure(curve.dewPressurePa(lowK)),
                        units.pressure(curve.bubblePressurePa(highK)),
                        Axis.Scale.EVEN));
        picture.lines(chart, lowK, highK);
        String described = units.text(
                "saturation.toRead",
                Figure.of("refrigerant", curve.refrigerant().designation()));
        return new Picture(chart, described, Sources.notes(curve, List.of(described), units));
    }

    /**
     * Draws the lines around the readings of a visit, with superheat and subcooling as distances.
     *
     * @param curve bubble and dew line
     * @param readings readings on the system
     * @param units units of the picture
     * @return the picture; nothing if no pressure comes with the temperature of its line
     */
    public static Optional<Picture> of(SaturationCurve curve, SystemReadings readings, PictureUnits units) {
        return new PressureTemperaturePicture(curve, units).around(readings);
    }

    private Picture whole() {
        double low = Math.max(curve.minTemperatureK(), Math.min(COLDEST_SHOWN_K, 0.75 * curve.maxTemperatureK()));
        double high = Math.max(
                curve.bubbleTemperatureRange().high(),
                curve.dewTemperatureRange().high());
        BoundaryEnd end = FluidModel.of(curve.refrigerant()).twoPhaseEnd();
        double top = Math.max(
                curve.bubblePressureRange().high(), curve.dewPressureRange().high());
        Chart chart = empty(low, high + 6, curve.dewPressurePa(low) * 0.9, top * 1.4);
        lines(chart, low, high);
        double endT = units.temperature(end.temperatureK());
        double endP = units.pressure(end.pressurePa());
        chart.add(Series.marks("end", Points.of(endT, endP), Mark.CIRCLE, Ink.BLACK)
                .unnamed());
        chart.add(Label.of(
                units.text(end.kind() == BoundaryEnd.Kind.CRITICAL_POINT ? "end.critical-point" : "end.lines"),
                endT,
                endP,
                Label.Side.ABOVE_UP_TO));
        String described = units.text(
                "saturation.note",
                Figure.of("refrigerant", curve.refrigerant().designation()),
                Figure.of("low", units.pressureText(curve.dewPressurePa(low))),
                Figure.of("cold", units.temperatureText(low)),
                Figure.of("high", units.pressureText(end.pressurePa())),
                Figure.of("warm", units.temperatureText(end.temperatureK())),
                Figure.of("end", units.text("end." + PictureUnits.key(end.kind()))));
        List<String> notes = new ArrayList<>(List.of(described));
        air.ifPresent(each -> notes.add(units.text(
                "saturation.gauge",
                Figure.of("pressure", units.pressureText(each.pressure().pascals())))));
        return new Picture(chart, described, Sources.notes(curve, notes, units));
    }

    private Optional<Picture> around(SystemReadings readings) {
        List<Margin> margins = new ArrayList<>();
        readings.pressure(Place.SUCTION_PRESSURE)
                .ifPresent(p -> readings.temperature(Place.SUCTION_LINE)
                        .ifPresent(t -> margins.add(superheat(p.value(), t.value()))));
        readings.pressure(Place.LIQUID_PRESSURE)
                .ifPresent(p -> readings.temperature(Place.LIQUID_LINE)
                        .ifPresent(t -> margins.add(subcooling(p.value(), t.value()))));
        if (margins.isEmpty()) {
            return Optional.empty();
        }
        double low = margins.stream().mapToDouble(Margin::coldest).min().orElseThrow() - AROUND_K;
        double high = margins.stream().mapToDouble(Margin::warmest).max().orElseThrow() + AROUND_K;
        double lowest = margins.stream().mapToDouble(Margin::pressurePa).min().orElseThrow() * 0.75;
        double highest = margins.stream().mapToDouble(Margin::pressurePa).max().orElseThrow() * 1.35;
        Chart chart = empty(low, high, lowest, highest);
        lines(chart, Math.max(low, curve.minTemperatureK()), high);
        List<String> notes = new ArrayList<>();
        margins.forEach(margin -> notes.add(draw(chart, margin)));
        return Optional.of(new Picture(chart, String.join(" ", notes), Sources.notes(curve, notes, units)));
    }

    private Chart empty(double lowK, double highK, double lowPa, double highPa) {
        Chart chart = new Chart(
                units.text(
                        "saturation.title",
                        Figure.of("refrigerant", curve.refrigerant().designation())),
                units.temperatureAxis(lowK, highK),
                units.pressureAxis(lowPa, highPa));
        air.ifPresent(each -> chart.right(units.gaugeAxis(lowPa, highPa, each)));
        return chart;
    }

    private void lines(Chart chart, double lowK, double highK) {
        if (blend) {
            Points bubble = new Points();
            each(curve.bubbleTemperatureRange(), lowK, highK, t -> bubble.add(t, curve.bubblePressurePa(t)));
            chart.add(Series.line(units.text("line.bubble"), inUnits(bubble), Pen.SOLID, Ink.BLACK));
        }
        Points dew = new Points();
        each(curve.dewTemperatureRange(), lowK, highK, t -> dew.add(t, curve.dewPressurePa(t)));
        chart.add(Series.line(
                units.text(blend ? "line.dew" : "line.boiling"),
                inUnits(dew),
                blend ? Pen.DASHED : Pen.SOLID,
                blend ? Ink.BLUE : Ink.BLACK));
    }

    private Points inUnits(Points si) {
        Points points = new Points();
        for (int i = 0; i < si.x().length; i++) {
            points.add(units.temperature(si.x()[i]), units.pressure(si.y()[i]));
        }
        return points;
    }

    private static void each(Range range, double lowK, double highK, DoubleConsumer at) {
        double low = Math.max(range.low(), lowK);
        double high = Math.min(range.high(), highK);
        for (int i = 0; i <= STEPS; i++) {
            at.accept(i == STEPS ? high : low + (high - low) * i / STEPS);
        }
    }

    /** A reading, its saturation temperature, and the distance between them. */
    private record Margin(boolean suction, String from, double lineK, double saturatedK, double pressurePa) {
        double coldest() {
            return Math.min(lineK, saturatedK);
        }

        double warmest() {
            return Math.max(lineK, saturatedK);
        }
    }

    private Margin superheat(Pressure p, Temperature line) {
        return new Margin(
                true, units.text("line.dew"), line.kelvins(), curve.dewTemperatureK(p.pascals()), p.pascals());
    }

    private Margin subcooling(Pressure p, Temperature line) {
        return new Margin(
                false, units.text("line.bubble"), line.kelvins(), curve.bubbleTemperatureK(p.pascals()), p.pascals());
    }

    private String draw(Chart chart, Margin margin) {
        boolean suction = margin.suction();
        String name = units.text(suction ? "superheat" : "subcooling");
        Mark marker = suction ? Mark.SQUARE : Mark.DIAMOND;
        Ink colour = Ink.RUST;
        double line = units.temperature(margin.lineK());
        double saturated = units.temperature(margin.saturatedK());
        double p = units.pressure(margin.pressurePa());
        chart.add(Series.line(
                        name + ", " + units.text("line.distance"), Points.of(saturated, p, line, p), Pen.HEAVY, colour)
                .unnamed());
        chart.add(Series.marks(
                units.text(suction ? "corner.suction" : "corner.liquid"), Points.of(line, p), marker, colour));
        double difference =
                units.difference(suction ? margin.lineK() - margin.saturatedK() : margin.saturatedK() - margin.lineK());
        String words = Printed.figure("%s %.1f %s", name, difference, units.differenceUnit());
        chart.add(Label.of(words, saturated, p, suction ? Label.Side.BELOW_ONWARDS : Label.Side.ABOVE_UP_TO));
        return units.text(
                "saturation.margin",
                Figure.of("margin", words),
                Figure.of("line", units.temperatureText(margin.lineK())),
                Figure.of("from", margin.from()),
                Figure.of("saturated", units.temperatureText(margin.saturatedK())),
                Figure.of("pressure", Printed.figure("%.1f %s", p, units.pressureUnit())));
    }
}
