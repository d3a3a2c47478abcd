package org.satline.program.pictures;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;

/**
 * Says below a picture which line is which: a sample long enough to show its dash, then its name, in as many rows as it takes. The legend
 * of the chart library keeps to one row and lets it run off the picture.
 */
final class Legend extends AnnotationText {
    private static final int ROW = 22;
    private static final int SAMPLE = 40;
    private static final int GAP = 8;
    private static final int BETWEEN = 24;
    private static final int MARKER = 8;

    private final List<List<Entry>> rows;

    private record Entry(XYSeries series, TextLayout name) {
        double width() {
            return (isLine() ? SAMPLE : MARKER) + GAP + name.getAdvance();
        }

        boolean isLine() {
            return series.getXYSeriesRenderStyle() != XYSeries.XYSeriesRenderStyle.Scatter;
        }
    }

    private Legend(List<List<Entry>> rows) {
        super("", 0, 0, true);
        this.rows = rows;
    }

    static Legend of(XYChart chart) {
        List<List<Entry>> rows = new ArrayList<>(List.of(new ArrayList<>()));
        for (XYSeries series : chart.getSeriesMap().values()) {
            if (series.isShowInLegend()) {
                Entry entry = new Entry(series, text(series.getLabel()));
                List<Entry> row = rows.get(rows.size() - 1);
                if (width(row) + BETWEEN + entry.width() > Look.WIDTH - 20) {
                    row = new ArrayList<>();
                    rows.add(row);
                }
                row.add(entry);
            }
        }
        return new Legend(rows);
    }

    /** Height that it takes below the chart. */
    int height() {
        return ROW * rows.size() + 6;
    }

    private static TextLayout text(String words) {
        return new TextLayout(words, Look.font(Font.PLAIN, Look.LABEL_SIZE), new FontRenderContext(null, true, true));
    }

    private static double width(List<Entry> row) {
        return row.stream().mapToDouble(entry -> entry.width() + BETWEEN).sum() - BETWEEN;
    }

    @Override
    public void paint(Graphics2D g) {
        double y = Look.HEIGHT + ROW / 2.0;
        for (List<Entry> row : rows) {
            double x = (Look.WIDTH - width(row)) / 2;
            for (Entry entry : row) {
                paint(g, entry, x, y);
                x += entry.width() + BETWEEN;
            }
            y += ROW;
        }
    }

    private static void paint(Graphics2D g, Entry entry, double x, double y) {
        XYSeries series = entry.series();
        double end = x + (entry.isLine() ? SAMPLE : MARKER);
        if (entry.isLine()) {
            g.setColor(series.getLineColor());
            g.setStroke(series.getLineStyle());
            g.draw(new Line2D.Double(x, y, end, y));
        } else {
            g.setColor(series.getMarkerColor());
            series.getMarker().paint(g, x + MARKER / 2.0, y, MARKER);
        }
        g.setColor(Look.INK);
        g.fill(entry.name().getOutline(AffineTransform.getTranslateInstance(end + GAP, y + 5)));
    }
}
