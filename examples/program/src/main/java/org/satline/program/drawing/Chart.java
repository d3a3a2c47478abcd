package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** A chart while it is put together: axes, lines, marks, labels. For one thread. */
public final class Chart {
    /** Width of every chart, in units of the drawing. */
    public static final int WIDTH = 560;

    /** Height of a chart without its legend. */
    public static final int HEIGHT = 430;

    private final String title;
    private final Axis x;
    private final Axis y;
    private Optional<Axis> right = Optional.empty();
    private final Map<String, Series> series = new LinkedHashMap<>();
    private final List<Label> labels = new ArrayList<>();
    private double markSize = 8;

    /**
     * An empty chart.
     *
     * @param title what it shows
     * @param x horizontal axis
     * @param y vertical axis
     */
    public Chart(String title, Axis x, Axis y) {
        this.title = Objects.requireNonNull(title, "title");
        this.x = Objects.requireNonNull(x, "x");
        this.y = Objects.requireNonNull(y, "y");
    }

    /**
     * Adds a vertical axis on the right.
     *
     * @param axis the axis
     */
    public void right(Axis axis) {
        right = Optional.of(axis);
    }

    /**
     * Adds a line or marks; the later are drawn over the earlier.
     *
     * @param each what is drawn; its name is its own
     */
    public void add(Series each) {
        if (series.putIfAbsent(each.name(), each) != null) {
            throw new IllegalArgumentException("there are two series \"" + each.name() + "\"");
        }
    }

    /**
     * Adds a label, over all lines.
     *
     * @param label the label
     */
    public void add(Label label) {
        labels.add(label);
    }

    /**
     * Sets the size of marks.
     *
     * @param size in units of the drawing; 8 if not set
     */
    public void markSize(double size) {
        markSize = size;
    }

    /**
     * Returns what it shows.
     *
     * @return title
     */
    public String title() {
        return title;
    }

    /**
     * Returns the horizontal axis.
     *
     * @return axis
     */
    public Axis x() {
        return x;
    }

    /**
     * Returns the vertical axis.
     *
     * @return axis
     */
    public Axis y() {
        return y;
    }

    Optional<Axis> right() {
        return right;
    }

    double markSize() {
        return markSize;
    }

    List<Label> labels() {
        return List.copyOf(labels);
    }

    /**
     * Returns what was added.
     *
     * @return series by name, in order
     */
    public Map<String, Series> series() {
        return new LinkedHashMap<>(series);
    }

    /**
     * Lays it out.
     *
     * @param description what it shows, for those who cannot see it
     * @param notes what stands below it
     * @return the drawing
     */
    public Drawing drawing(String description, List<String> notes) {
        return new ChartLayout(this).drawing(description, notes);
    }
}
