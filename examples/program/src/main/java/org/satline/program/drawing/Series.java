package org.satline.program.drawing;

import java.util.Objects;
import java.util.Optional;

/**
 * Points of a chart, drawn as a line or as marks.
 *
 * @param name what they are; the legend says it
 * @param points in units of the axes
 * @param pen kind of line; empty for marks
 * @param mark kind of marks; empty for a line
 * @param ink colour
 * @param scale which vertical axis they are read on
 * @param legend whether the legend names them
 */
public record Series(
        String name, Points points, Optional<Pen> pen, Optional<Mark> mark, Ink ink, Side scale, Legend legend) {
    /** Vertical axes. */
    public enum Side {
        /** The one on the left. */
        LEFT,
        /** The one on the right. */
        RIGHT
    }

    /** Whether the legend names it. */
    public enum Legend {
        /** It does. */
        NAMED,
        /** A label, or the title, says what it is. */
        UNNAMED
    }

    /** {@inheritDoc} */
    public Series {
        Objects.requireNonNull(points, "points");
    }

    /**
     * A line.
     *
     * @param name what it is
     * @param points in units of the axes
     * @param pen kind of line
     * @param ink colour
     * @return the series, named in the legend, read on the left
     */
    public static Series line(String name, Points points, Pen pen, Ink ink) {
        return new Series(name, points, Optional.of(pen), Optional.empty(), ink, Side.LEFT, Legend.NAMED);
    }

    /**
     * Marks without a line.
     *
     * @param name what they are
     * @param points in units of the axes
     * @param mark kind of marks
     * @param ink colour
     * @return the series, named in the legend, read on the left
     */
    public static Series marks(String name, Points points, Mark mark, Ink ink) {
        return new Series(name, points, Optional.empty(), Optional.of(mark), ink, Side.LEFT, Legend.NAMED);
    }

    /**
     * The same without a name in the legend.
     *
     * @return the series
     */
    public Series unnamed() {
        return new Series(name, points, pen, mark, ink, scale, Legend.UNNAMED);
    }

    /**
     * The same read on the right.
     *
     * @return the series
     */
    public Series onTheRight() {
        return new Series(name, points, pen, mark, ink, Side.RIGHT, legend);
    }
}
