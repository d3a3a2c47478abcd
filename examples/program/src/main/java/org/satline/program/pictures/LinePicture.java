package org.satline.program.pictures;

import java.awt.Color;
import java.util.List;
import java.util.Objects;
import org.knowm.xchart.XYChart;

/** A picture of some lines over one axis, in the look of all pictures, each line with a dash of its own. */
public final class LinePicture {
    private static final List<Color> COLOURS = List.of(Look.INK, Look.BLUE, Look.RUST);

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
        Look.Line[] kinds = Look.Line.values();
        if (lines.isEmpty() || lines.size() > kinds.length) {
            throw new IllegalArgumentException(
                    lines.size() + " lines are outside [1, " + kinds.length + "]; draw fewer in one picture");
        }
        XYChart chart = Look.chart(title, xAxis, yAxis);
        chart.getStyler().setYAxisDecimalPattern(Look.PLAIN);
        for (int i = 0; i < lines.size(); i++) {
            Points points = new Points();
            lines.get(i).points().forEach(point -> points.add(point[0], point[1]));
            Look.line(chart, lines.get(i).name(), points, kinds[i], COLOURS.get(i % COLOURS.size()));
        }
        return new Picture(chart, description, notes);
    }
}
