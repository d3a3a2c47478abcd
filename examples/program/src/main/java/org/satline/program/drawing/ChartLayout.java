package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lays a chart out: title, plot with its grid, axes, series, labels, legend, notes. Used once. */
final class ChartLayout {
    private static final int MARGIN = 8;
    private static final int TITLE = 18;
    private static final int TYPE = 16;
    private static final int TICK = 5;
    private static final int GAP = 5;
    private static final int X_SPACING = 74;
    private static final int Y_SPACING = 46;

    private final Chart chart;
    private final List<Shape> shapes = new ArrayList<>();
    private final Box plot;

    ChartLayout(Chart chart) {
        this.chart = chart;
        double top = MARGIN + TITLE + 12;
        double bottom = Chart.HEIGHT - MARGIN - TYPE - GAP - TYPE - GAP - TICK;
        double left = MARGIN + TYPE + GAP + widest(chart.y(), bottom - top) + GAP + TICK;
        double right = chart.right()
                .map(axis -> MARGIN + TYPE + GAP + widest(axis, bottom - top) + GAP + TICK)
                .orElse(2.5 * MARGIN);
        this.plot = new Box(left, top, Chart.WIDTH - right - left, bottom - top);
    }

    private static double widest(Axis axis, double length) {
        return axis.ticks(length, Y_SPACING).stream()
                .mapToDouble(tick -> TextWidth.atMost(tick.text(), TYPE, Shape.Weight.PLAIN))
                .max()
                .orElse(0);
    }

    Drawing drawing(String description, List<String> notes) {
        int place = shapes.size();
        text(chart.title(), Chart.WIDTH / 2.0, MARGIN + 0.8 * TITLE, Shape.Anchor.MIDDLE, TITLE, Shape.Weight.BOLD);
        horizontalAxis();
        verticalAxis(chart.y(), Series.Side.LEFT);
        chart.right().ifPresent(axis -> verticalAxis(axis, Series.Side.RIGHT));
        series();
        labels();
        Legend legend = new Legend(chart.series().values(), chart.markSize());
        shapes.addAll(legend.shapes(Chart.HEIGHT));
        Notes below = new Notes(notes);
        int height = Chart.HEIGHT + legend.height() + below.height();
        shapes.addAll(below.shapes(Chart.HEIGHT + legend.height()));
        shapes.add(
                place,
                new Shape.Area(
                        List.of(
                                new Point(0, 0),
                                new Point(Chart.WIDTH, 0),
                                new Point(Chart.WIDTH, height),
                                new Point(0, height)),
                        Ink.WHITE,
                        Ink.WHITE,
                        0));
        return new Drawing(chart.title(), description, Chart.WIDTH, height, shapes);
    }

    private void labels() {
        List<Box> taken = new ArrayList<>();
        for (Label.Place place : Label.Place.values()) {
            for (Label label : chart.labels()) {
                if (label.place() == place) {
                    Shape.Text text = inside(label.text(at(label.x(), label.y(), Series.Side.LEFT)));
                    Box box = text.box();
                    boolean free = plot.holds(box) && taken.stream().noneMatch(box::meets);
                    if (place == Label.Place.ALWAYS || free) {
                        shapes.add(text);
                        taken.add(box);
                    }
                }
            }
        }
    }

    private Point at(double x, double y, Series.Side side) {
        Axis vertical = side == Series.Side.LEFT ? chart.y() : chart.right().orElse(chart.y());
        return new Point(
                plot.left() + plot.width() * chart.x().share(x), plot.bottom() - plot.height() * vertical.share(y));
    }

    /** A label near an edge moves inwards as far as it must. */
    private Shape.Text inside(Shape.Text text) {
        Box box = text.box();
        double right = Math.min(0, Chart.WIDTH - 2 - box.right());
        double left = Math.max(0, 2 - box.left());
        double up = Math.max(0, plot.top() + 2 - box.top());
        return new Shape.Text(
                text.words(),
                new Point(text.at().x() + right + left, text.at().y() + up),
                text.anchor(),
                text.size(),
                text.weight(),
                text.turn(),
                text.rim());
    }

    private void text(String words, double x, double y, Shape.Anchor anchor, int size, Shape.Weight weight) {
        shapes.add(new Shape.Text(words, new Point(x, y), anchor, size, weight, Shape.Turn.LEVEL, Shape.Rim.NONE));
    }

    private void line(double x1, double y1, double x2, double y2, Ink ink) {
        shapes.add(new Shape.Line(List.of(new Point(x1, y1), new Point(x2, y2)), Pen.THIN, ink));
    }

    private void horizontalAxis() {
        double last = Double.NEGATIVE_INFINITY;
        for (Axis.Tick tick : chart.x().ticks(plot.width(), X_SPACING)) {
            double x = plot.left() + plot.width() * chart.x().share(tick.value());
            double half = TextWidth.atMost(tick.text(), TYPE, Shape.Weight.PLAIN) / 2;
            line(x, plot.top(), x, plot.bottom() + TICK, Ink.PALE);
            if (x - half > last && x + half < Chart.WIDTH) {
                text(
                        tick.text(),
                        x,
                        plot.bottom() + TICK + GAP + 0.76 * TYPE,
                        Shape.Anchor.MIDDLE,
                        TYPE,
                        Shape.Weight.PLAIN);
                last = x + half + GAP;
            }
        }
        text(
                chart.x().title(),
                plot.left() + plot.width() / 2,
                Chart.HEIGHT - MARGIN - 0.24 * TYPE,
                Shape.Anchor.MIDDLE,
                TYPE,
                Shape.Weight.PLAIN);
        line(plot.left(), plot.bottom(), plot.right(), plot.bottom(), Ink.GREY);
        line(plot.left(), plot.top(), plot.right(), plot.top(), Ink.GREY);
    }

    private void verticalAxis(Axis axis, Series.Side side) {
        boolean onLeft = side == Series.Side.LEFT;
        double edge = onLeft ? plot.left() : plot.right();
        double outwards = onLeft ? -1 : 1;
        double last = Double.POSITIVE_INFINITY;
        for (Axis.Tick tick : axis.ticks(plot.height(), Y_SPACING)) {
            double y = plot.bottom() - plot.height() * axis.share(tick.value());
            line(onLeft ? plot.right() : edge, y, edge + outwards * TICK, y, onLeft ? Ink.PALE : Ink.GREY);
            if (y + TYPE / 2.0 < last) {
                text(
                        tick.text(),
                        edge + outwards * (TICK + GAP),
                        y + 0.27 * TYPE,
                        onLeft ? Shape.Anchor.END : Shape.Anchor.START,
                        TYPE,
                        Shape.Weight.PLAIN);
                last = y - TYPE / 2.0;
            }
        }
        line(edge, plot.top(), edge, plot.bottom(), Ink.GREY);
        shapes.add(new Shape.Text(
                axis.title(),
                new Point(onLeft ? MARGIN + 0.76 * TYPE : Chart.WIDTH - MARGIN, plot.top() + plot.height() / 2),
                Shape.Anchor.MIDDLE,
                TYPE,
                Shape.Weight.PLAIN,
                Shape.Turn.UPWARDS,
                Shape.Rim.NONE));
    }

    private void series() {
        List<Shape> lines = new ArrayList<>();
        List<Shape> marks = new ArrayList<>();
        for (Series each : chart.series().values()) {
            each.pen().ifPresent(pen -> lines.addAll(lines(each, pen)));
            each.mark().ifPresent(mark -> {
                double[] x = each.points().x();
                double[] y = each.points().y();
                for (int i = 0; i < x.length; i++) {
                    marks.addAll(mark.at(at(x[i], y[i], each.scale()), chart.markSize(), each.ink()));
                }
            });
        }
        shapes.add(new Shape.Clipped(plot, lines));
        shapes.addAll(marks);
    }

    private List<Shape> lines(Series each, Pen pen) {
        List<Shape> found = new ArrayList<>();
        List<Point> piece = new ArrayList<>();
        double[] x = each.points().x();
        double[] y = each.points().y();
        for (int i = 0; i <= x.length; i++) {
            if (i == x.length || Double.isNaN(y[i])) {
                if (piece.size() > 1) {
                    found.add(new Shape.Line(piece, pen, each.ink()));
                }
                piece = new ArrayList<>();
            } else {
                piece.add(at(x[i], y[i], each.scale()));
            }
        }
        return found;
    }
}
