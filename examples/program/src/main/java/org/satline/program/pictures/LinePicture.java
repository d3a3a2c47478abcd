package org.satline.program.pictures;

import java.util.List;
import java.util.Objects;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;

/** A picture of some lines over one axis, in the look of all pictures, each line with a dash of its own. */
public final class LinePicture {
    private static final List<Pen> PENS =
            List.of(Pen.SOLID, Pen.DASHED, Pen.DOTTED, Pen.HEAVY, Pen.HEAVY_DASHED, Pen.DASH_DOT, Pen.THIN);
    private static final List<Ink> INKS = List.of(Ink.BLACK, Ink.BLUE, Ink.RUST);

    private LinePicture() {}

    /**
     * A line.
     *
     * @param name what the legend calls it
     * @param points where it goes, each as x and y in units of the picture; rising in x, at least one
     */
    public record Line(String name, List<double[]> points) {
        /** {@inheritDoc} */
        public Line {
            Objects.requireNonNull(name, "name");
            points = List.copyOf(points);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("line " + name + " has no points; leave it out");
            }
        }
    }

    /**
     * Draws lines.
     *
     * @param title title
     * @param xAxis name and unit of the horizontal axis
     * @param yAxis name and unit of the vertical axis
     * @param lines one to seven lines: so many kinds can be told apart without colour
     * @param description what it shows, for those who cannot see it
     * @param notes figures and sources that stand below
     * @return the picture
     * @throws IllegalArgumentException if there are no lines or more than seven
     */
    public static Picture of(
            String title, String xAxis, String yAxis, List<Line> lines, String description, List<String> notes) {
        if (lines.isEmpty() || lines.size() > PENS.size()) {
            throw new IllegalArgumentException(
                    lines.size() + " lines are outside [1, " + PENS.size() + "]; draw fewer in one picture");
        }
        Chart chart = new Chart(title, axis(xAxis, lines, 0), axis(yAxis, lines, 1));
        for (int i = 0; i < lines.size(); i++) {
            Points points = new Points();
            lines.get(i).points().forEach(point -> points.add(point[0], point[1]));
            chart.add(Series.line(lines.get(i).name(), points, PENS.get(i), INKS.get(i % INKS.size())));
        }
        return new Picture(chart, description, notes);
    }

    /** From zero, or from the least value where one lies below, to the largest. */
    private static Axis axis(String title, List<Line> lines, int coordinate) {
        double low = 0;
        double high = Double.NEGATIVE_INFINITY;
        for (Line line : lines) {
            for (double[] point : line.points()) {
                low = Math.min(low, point[coordinate]);
                high = Math.max(high, point[coordinate]);
            }
        }
        return new Axis(title, low, high > low ? low + 1.05 * (high - low) : low + 1, Axis.Scale.EVEN);
    }
}
