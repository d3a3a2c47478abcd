package org.satline.program.drawing;

import java.util.List;

/** Marks of single points; each has a form of its own. */
public enum Mark {
    /** A filled circle. */
    CIRCLE,
    /** A white circle with a rim: what is drawn but was not measured. */
    OPEN_CIRCLE,
    /** A filled square. */
    SQUARE,
    /** A filled diamond. */
    DIAMOND,
    /** A cross of two lines. */
    PLUS;

    List<Shape> at(Point p, double size, Ink ink) {
        double r = size / 2;
        return switch (this) {
            case CIRCLE -> List.of(new Shape.Disc(p, r, ink, ink));
            case OPEN_CIRCLE -> List.of(new Shape.Disc(p, r, Ink.WHITE, ink));
            case SQUARE -> List.of(area(p, ink, -r, -r, r, -r, r, r, -r, r));
            case DIAMOND -> List.of(area(p, ink, 0, -1.3 * r, 1.3 * r, 0, 0, 1.3 * r, -1.3 * r, 0));
            case PLUS ->
                List.of(
                        new Shape.Line(List.of(moved(p, -r, 0), moved(p, r, 0)), Pen.THIN, ink),
                        new Shape.Line(List.of(moved(p, 0, -r), moved(p, 0, r)), Pen.THIN, ink));
        };
    }

    private static Shape area(Point p, Ink ink, double... offsets) {
        return new Shape.Area(
                List.of(
                        moved(p, offsets[0], offsets[1]),
                        moved(p, offsets[2], offsets[3]),
                        moved(p, offsets[4], offsets[5]),
                        moved(p, offsets[6], offsets[7])),
                ink,
                ink,
                0);
    }

    private static Point moved(Point p, double dx, double dy) {
        return new Point(p.x() + dx, p.y() + dy);
    }
}
