package org.satline.program.drawing;

import java.util.List;

/** What a drawing is made of. Immutable. */
public sealed interface Shape {
    /**
     * A line through points.
     *
     * @param points two or more
     * @param pen kind of line
     * @param ink colour
     */
    record Line(List<Point> points, Pen pen, Ink ink) implements Shape {
        /** {@inheritDoc} */
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * A filled area.
     *
     * @param points corners
     * @param fill colour inside
     * @param rim colour of its rim
     * @param rimWidth width of the rim; 0 for none
     */
    record Area(List<Point> points, Ink fill, Ink rim, double rimWidth) implements Shape {
        /** {@inheritDoc} */
        public Area {
            points = List.copyOf(points);
        }
    }

    /**
     * A disc.
     *
     * @param centre middle
     * @param radius radius
     * @param fill colour inside
     * @param rim colour of its rim
     */
    record Disc(Point centre, double radius, Ink fill, Ink rim) implements Shape {}

    /**
     * Text on one line.
     *
     * @param words the text
     * @param at where its base line begins, is in the middle, or ends
     * @param anchor which of the three
     * @param size size of the type
     * @param weight weight of the type
     * @param turn whether it runs upwards
     * @param rim whether a white rim keeps lines behind it from crossing it out
     */
    record Text(String words, Point at, Anchor anchor, int size, Weight weight, Turn turn, Rim rim) implements Shape {
        /**
         * Returns the place that it takes at most, with the widest usual typeface.
         *
         * @return the box
         */
        public Box box() {
            double width = TextWidth.atMost(words, size, weight);
            double before = switch (anchor) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            double up = 0.76 * size;
            double down = 0.24 * size;
            return turn == Turn.LEVEL
                    ? new Box(at.x() - before, at.y() - up, width, up + down)
                    : new Box(at.x() - up, at.y() - width + before, up + down, width);
        }
    }

    /**
     * Shapes of which only what lies in a box is shown.
     *
     * @param box the box
     * @param shapes the shapes
     */
    record Clipped(Box box, List<Shape> shapes) implements Shape {
        /** {@inheritDoc} */
        public Clipped {
            shapes = List.copyOf(shapes);
        }
    }

    /** Which place of a text its position names. */
    enum Anchor {
        /** Where it begins. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Where it ends. */
        END
    }

    /** Weight of type. */
    enum Weight {
        /** Ordinary. */
        PLAIN,
        /** Titles and numbers of corners. */
        BOLD
    }

    /** Direction of a text. */
    enum Turn {
        /** From left to right. */
        LEVEL,
        /** From below upwards. */
        UPWARDS
    }

    /** Rim of a text. */
    enum Rim {
        /** None. */
        NONE,
        /** A white one. */
        WHITE
    }
}
