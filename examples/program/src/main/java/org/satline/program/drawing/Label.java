package org.satline.program.drawing;

/**
 * A short text at a point of a chart, on a white rim so that lines behind it do not cross it out.
 *
 * @param words the text
 * @param x along the horizontal axis
 * @param y along the vertical axis
 * @param side on which side of the point it stands
 * @param weight weight of the type
 * @param place whether it stands in any case
 */
public record Label(String words, double x, double y, Side side, Shape.Weight weight, Place place) {
    /** Size of the type. */
    static final int SIZE = 15;

    private static final int GAP = 7;

    /** Whether a label stands in any case. */
    public enum Place {
        /** It does. */
        ALWAYS,
        /** Only where it lies whole in the plot and on no other label: one of a family. */
        WHERE_FREE
    }

    /** On which side of its point a label stands. */
    public enum Side {
        /** Beginning right of it. */
        RIGHT,
        /** Ending left of it. */
        LEFT,
        /** Above it, in the middle. */
        ABOVE,
        /** Below it, in the middle. */
        BELOW,
        /** Below, beginning at the point. */
        BELOW_ONWARDS,
        /** Above, ending at the point. */
        ABOVE_UP_TO,
        /** On it. */
        CENTRE
    }

    /**
     * A label in ordinary type.
     *
     * @param words the text
     * @param x along the horizontal axis
     * @param y along the vertical axis
     * @param side on which side of the point it stands
     * @return the label
     */
    public static Label of(String words, double x, double y, Side side) {
        return new Label(words, x, y, side, Shape.Weight.PLAIN, Place.ALWAYS);
    }

    /**
     * A label in bold type.
     *
     * @param words the text
     * @param x along the horizontal axis
     * @param y along the vertical axis
     * @param side on which side of the point it stands
     * @return the label
     */
    public static Label bold(String words, double x, double y, Side side) {
        return new Label(words, x, y, side, Shape.Weight.BOLD, Place.ALWAYS);
    }

    /**
     * A label on its point, one of a family: it is left out where another stands.
     *
     * @param words the text
     * @param x along the horizontal axis
     * @param y along the vertical axis
     * @return the label
     */
    public static Label whereFree(String words, double x, double y) {
        return new Label(words, x, y, Side.CENTRE, Shape.Weight.PLAIN, Place.WHERE_FREE);
    }

    Shape.Text text(Point at) {
        double middle = 0.27 * SIZE;
        double across = switch (side) {
            case RIGHT, BELOW_ONWARDS -> GAP;
            case LEFT, ABOVE_UP_TO -> -GAP;
            case ABOVE, BELOW, CENTRE -> 0;
        };
        double down = switch (side) {
            case RIGHT, LEFT, CENTRE -> middle;
            case ABOVE, ABOVE_UP_TO -> -GAP;
            case BELOW, BELOW_ONWARDS -> GAP + 0.76 * SIZE;
        };
        Shape.Anchor anchor = switch (side) {
            case RIGHT, BELOW_ONWARDS -> Shape.Anchor.START;
            case LEFT, ABOVE_UP_TO -> Shape.Anchor.END;
            case ABOVE, BELOW, CENTRE -> Shape.Anchor.MIDDLE;
        };
        return new Shape.Text(
                words,
                new Point(at.x() + across, at.y() + down),
                anchor,
                weight == Shape.Weight.BOLD ? SIZE + 2 : SIZE,
                weight,
                Shape.Turn.LEVEL,
                Shape.Rim.WHITE);
    }
}
