package org.satline.program.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Says below a chart which line is which: a sample long enough to show its dash, then its name, in as many rows as it takes. */
final class Legend {
    private static final int ROW = 22;
    private static final int SAMPLE = 40;
    private static final int GAP = 8;
    private static final int BETWEEN = 24;

    private final double markSize;
    private final List<List<Series>> rows = new ArrayList<>(List.of(new ArrayList<>()));

    Legend(Collection<Series> all, double markSize) {
        this.markSize = markSize;
        for (Series each : all) {
            if (each.legend() == Series.Legend.NAMED) {
                List<Series> row = rows.get(rows.size() - 1);
                if (!row.isEmpty() && width(row) + BETWEEN + width(each) > Chart.WIDTH - 20) {
                    row = new ArrayList<>();
                    rows.add(row);
                }
                row.add(each);
            }
        }
    }

    /** Height that it takes below the chart. */
    int height() {
        return ROW * rows.size() + 6;
    }

    private double width(Series each) {
        return sample(each) + GAP + TextWidth.atMost(each.name(), Label.SIZE, Shape.Weight.PLAIN);
    }

    private double sample(Series each) {
        return each.pen().isPresent() ? SAMPLE : markSize;
    }

    private double width(List<Series> row) {
        return row.stream().mapToDouble(each -> width(each) + BETWEEN).sum() - BETWEEN;
    }

    List<Shape> shapes(double top) {
        List<Shape> shapes = new ArrayList<>();
        double y = top + ROW / 2.0;
        for (List<Series> row : rows) {
            double x = (Chart.WIDTH - width(row)) / 2;
            for (Series each : row) {
                double end = x + sample(each);
                double from = x;
                double at = y;
                each.pen()
                        .ifPresent(pen -> shapes.add(
                                new Shape.Line(List.of(new Point(from, at), new Point(end, at)), pen, each.ink())));
                each.mark()
                        .ifPresent(mark ->
                                shapes.addAll(mark.at(new Point(from + markSize / 2, at), markSize, each.ink())));
                shapes.add(new Shape.Text(
                        each.name(),
                        new Point(end + GAP, y + 0.27 * Label.SIZE),
                        Shape.Anchor.START,
                        Label.SIZE,
                        Shape.Weight.PLAIN,
                        Shape.Turn.LEVEL,
                        Shape.Rim.NONE));
                x += width(each) + BETWEEN;
            }
            y += ROW;
        }
        return shapes;
    }
}
