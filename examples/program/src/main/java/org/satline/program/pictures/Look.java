package org.satline.program.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * What all pictures have in common: size, type, and kinds of lines that can be told apart without colour. The letters are large for the
 * size, so that they can still be read where the whole is as narrow as a phone.
 */
final class Look {
    static final int WIDTH = 560;
    static final int HEIGHT = 430;

    static final Color INK = new Color(0x1a, 0x1a, 0x1a);
    static final Color BLUE = new Color(0x0b, 0x3c, 0x8c);
    static final Color RUST = new Color(0xa3, 0x3b, 0x0b);
    static final Color GREY = new Color(0x70, 0x70, 0x70);

    /** Size of the labels inside a picture. */
    static final int LABEL_SIZE = 15;

    private static final int TICK_SIZE = 16;
    private static final int TITLE_SIZE = 18;
    private static final Color GRID = new Color(0xdc, 0xdc, 0xdc);

    /** No separators between thousands. */
    static final String PLAIN = "###0.####";

    private static final double MANY_DECADES = 1e4;

    private Look() {}

    /** Kinds of lines; each has its own dash. */
    enum Line {
        SOLID,
        THIN,
        HEAVY,
        DASHED,
        HEAVY_DASHED,
        DOTTED,
        DASH_DOT;

        BasicStroke stroke() {
            return switch (this) {
                case SOLID -> stroke(2.2f);
                case THIN -> stroke(1f);
                case HEAVY -> stroke(3.2f);
                case DASHED -> stroke(2.2f, 10, 5);
                case HEAVY_DASHED -> stroke(3.2f, 9, 5);
                case DOTTED -> stroke(2f, 2, 4);
                case DASH_DOT -> stroke(1.6f, 12, 4, 2, 4);
            };
        }

        private static BasicStroke stroke(float width, float... dash) {
            return new BasicStroke(
                    width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dash.length == 0 ? null : dash, 0f);
        }
    }

    static Font font(int style, int size) {
        return new Font(Font.SANS_SERIF, style, size);
    }

    /** An empty chart. */
    static XYChart chart(String title, String xAxis, String yAxis) {
        XYChart chart = new XYChartBuilder()
                .width(WIDTH)
                .height(HEIGHT)
                .title(title)
                .xAxisTitle(xAxis)
                .yAxisTitle(yAxis)
                .build();
        XYStyler style = chart.getStyler();
        style.setLocale(Locale.ROOT);
        style.setAntiAlias(true);
        style.setPlotContentSize(1.0);
        style.setXAxisDecimalPattern(PLAIN);
        style.setChartPadding(6);
        style.setChartTitleFont(font(Font.BOLD, TITLE_SIZE));
        style.setAxisTitleFont(font(Font.PLAIN, TICK_SIZE));
        style.setAxisTickLabelsFont(font(Font.PLAIN, TICK_SIZE));
        style.setLegendFont(font(Font.PLAIN, LABEL_SIZE));
        style.setChartFontColor(INK);
        style.setAxisTickLabelsColor(INK);
        style.setChartBackgroundColor(Color.WHITE);
        style.setPlotBackgroundColor(Color.WHITE);
        style.setPlotBorderColor(GREY);
        style.setPlotGridLinesColor(GRID);
        style.setPlotGridLinesStroke(new BasicStroke(1f));
        style.setXAxisTickMarkSpacingHint(70);
        style.setYAxisTickMarkSpacingHint(50);
        style.setLegendVisible(false);
        return chart;
    }

    /** A line without markers. */
    static XYSeries line(XYChart chart, String name, Points points, Line kind, Color colour) {
        XYSeries series = chart.addSeries(name, points.x(), points.y());
        series.setMarker(SeriesMarkers.NONE);
        series.setLineStyle(kind.stroke());
        series.setLineColor(colour);
        return series;
    }

    /** Markers without a line. */
    static XYSeries marks(XYChart chart, String name, Points points, Marker marker, Color colour) {
        XYSeries series = chart.addSeries(name, points.x(), points.y());
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(marker);
        series.setMarkerColor(colour);
        return series;
    }

    static void xRange(XYChart chart, double low, double high) {
        chart.getStyler().setXAxisMin(low);
        chart.getStyler().setXAxisMax(high);
    }

    static void yRange(XYChart chart, double low, double high) {
        chart.getStyler().setYAxisMin(low);
        chart.getStyler().setYAxisMax(high);
    }

    /** Makes the vertical axis logarithmic, with enough labelled ticks to read between the decades. */
    static void logarithmicY(XYChart chart, double low, double high) {
        yRange(chart, low, high);
        chart.getStyler().setYAxisLogarithmic(true);
        chart.getStyler().setYAxisLogarithmicDecadeOnly(true);
        if (high / low > MANY_DECADES) {
            chart.getStyler().setYAxisDecimalPattern("0E0");
            chart.getStyler().setPlotGridHorizontalLinesVisible(false);
            return;
        }
        chart.getStyler().setYAxisDecimalPattern(PLAIN);
        for (double tick : LogTicks.between(low, high)) {
            chart.addAnnotation(Label.atLeftEdge(tick, TICK_SIZE));
        }
    }

    /** Makes the horizontal axis logarithmic, with enough labelled ticks to read between the decades. */
    static void logarithmicX(XYChart chart, double low, double high) {
        xRange(chart, low, high);
        chart.getStyler().setXAxisLogarithmic(true);
        chart.getStyler().setXAxisLogarithmicDecadeOnly(true);
        chart.getStyler().setXAxisDecimalPattern(PLAIN);
        for (double tick : LogTicks.between(low, high)) {
            chart.addAnnotation(Label.atLowerEdge(tick, TICK_SIZE));
        }
    }
}
