package org.satline.program.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** Kinds of lines; each has a width or dash of its own, so that they can be told apart without colour. */
public enum Pen {
    /** The first line of a picture. */
    SOLID(2.2),
    /** Families of lines that stand back. */
    THIN(1),
    /** Readings and cycles. */
    HEAVY(3.2),
    /** The second line of a picture. */
    DASHED(2.2, 10, 5),
    /** Bounds. */
    HEAVY_DASHED(3.2, 9, 5),
    /** Temperatures that matter. */
    DOTTED(2, 2, 4),
    /** Marks stamped on a cylinder. */
    DASH_DOT(1.6, 12, 4, 2, 4),
    /** A family of thin lines beside another one. */
    THIN_DASHED(1, 6, 4),
    /** A third family of thin lines. */
    THIN_DOTTED(1, 1.5, 3),
    /** A fourth family of thin lines. */
    THIN_DASH_DOT(1, 10, 3, 2, 3);

    private final double width;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of numbers
    private final List<Double> dash;

    Pen(double width, double... dash) {
        this.width = width;
        this.dash = DoubleStream.of(dash).boxed().toList();
    }

    /**
     * Returns how wide it is.
     *
     * @return width in units of the drawing
     */
    public double width() {
        return width;
    }

    /**
     * Returns its dash.
     *
     * @return lengths drawn and left out in turn; empty for a solid line
     */
    public List<Double> dash() {
        return dash;
    }
}
