package org.satline.page;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.satline.equilibrium.Range;
import org.satline.measurement.Place;
import org.satline.quantity.Pressure;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.VisitReport;
import org.satline.wording.Wording;

/**
 * Saturation of the refrigerant with the readings on it: how far a reading stands from its line is superheat or
 * subcooling.
 */
final class ChartScreen {
    private static final double LEFT = 46;
    private static final double RIGHT = 330;
    private static final double TOP = 14;
    private static final double BOTTOM = 250;
    private static final int PIECES = 60;
    private static final double KELVIN_AT_0_C = Temperature.ofCelsius(0).kelvins();

    private final Page page;
    private final Node svg = Node.svg("svg");
    private double lowT;
    private double highT;
    private double lowLog;
    private double highLog;

    ChartScreen(Page page) {
        this.page = page;
    }

    Node node() {
        Node screen = Node.of("section", "card").set("aria-labelledby", "heading");
        screen.add(Node.of("h2").set("id", "heading").set("tabindex", "-1").text(page.text("way.chart")));
        Optional<VisitReport> report = page.answer().report();
        if (report.isEmpty()) {
            return screen.add(Node.of("p").text(page.text("answer.begin")));
        }
        draw(report.get());
        screen.add(svg, Node.of("p").text(page.text("chart.key")));
        Facts facts = new Facts();
        var margins = report.get().judgement().evidence().margins();
        margins.superheat().ifPresent(margin -> fact(facts, "superheat", margin.value()));
        margins.subcooling().ifPresent(margin -> fact(facts, "subcooling", margin.value()));
        return screen.add(facts.node(), new CyclePicture(page, report.get()).node());
    }

    private void fact(Facts facts, String name, Quantity<?> value) {
        Wording wording = page.texts().wording();
        facts.add(
                page,
                wording.message("charge.criterion." + name),
                wording.numbers().print(value),
                List.of(name));
    }

    private void draw(VisitReport report) {
        SaturationCurve curve = SaturationCurves.of(report.visit().system().refrigerant());
        Range bubble = curve.bubbleTemperatureRange();
        lowT = Math.max(Math.max(bubble.low(), curve.dewTemperatureRange().low()), KELVIN_AT_0_C - 40);
        highT = Math.min(Math.min(bubble.high(), curve.dewTemperatureRange().high()), KELVIN_AT_0_C + 80);
        lowLog = Math.log(curve.dewPressurePa(lowT));
        highLog = Math.log(curve.bubblePressurePa(highT));
        svg.set("viewBox", "0 0 345 290")
                .set("class", "chart")
                .set("role", "img")
                .set("aria-label", page.text("picture.chart"));
        axes();
        line("bubble", curve::bubblePressurePa);
        line("dew", curve::dewPressurePa);
        reading(report, Place.SUCTION_PRESSURE, Place.SUCTION_LINE, "S");
        reading(report, Place.LIQUID_PRESSURE, Place.LIQUID_LINE, "L");
    }

    private double x(double kelvins) {
        return LEFT + (kelvins - lowT) / (highT - lowT) * (RIGHT - LEFT);
    }

    private double y(double pascals) {
        return BOTTOM - (Math.log(pascals) - lowLog) / (highLog - lowLog) * (BOTTOM - TOP);
    }

    private void axes() {
        boolean si = page.look().isSi();
        svg.add(Node.svg("path").set("class", "axis").set("d", "M46 14 V250 H330"));
        for (int step = -40; step <= 180; step += si ? 20 : 40) {
            double kelvins =
                    si ? step + KELVIN_AT_0_C : Temperature.ofFahrenheit(step).kelvins();
            if (kelvins >= lowT && kelvins <= highT) {
                svg.add(mark("M" + x(kelvins) + " 250 v-236"), text(x(kelvins), 266, String.valueOf(step), "middle"));
            }
        }
        for (int each : new int[] {10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000}) {
            double pascals = si ? each * 1000.0 : Pressure.ofPsia(each).pascals();
            if (Math.log(pascals) >= lowLog && Math.log(pascals) <= highLog) {
                svg.add(mark("M46 " + y(pascals) + " h284"), text(42, y(pascals) + 4, String.valueOf(each), "end"));
            }
        }
        svg.add(text(188, 284, si ? "\u00b0C" : "\u00b0F", "middle"), text(50, 26, si ? "kPa" : "psia", "start"));
    }

    private void line(String style, DoubleUnaryOperator pressure) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i <= PIECES; i++) {
            double kelvins = lowT + (highT - lowT) * i / PIECES;
            path.append(i == 0 ? 'M' : 'L').append(x(kelvins)).append(' ').append(y(pressure.applyAsDouble(kelvins)));
        }
        svg.add(Node.svg("path").set("class", "line " + style).set("d", path.toString()));
    }

    /** A cross of our own at the reading, and a bar from it to the saturation of its pressure. */
    private void reading(VisitReport report, Place pressure, Place line, String letter) {
        var read = report.visit().readings().pressure(pressure);
        var pipe = report.visit().readings().temperature(line);
        if (read.isEmpty() || pipe.isEmpty()) {
            return;
        }
        SaturationCurve curve = SaturationCurves.of(report.visit().system().refrigerant());
        double pascals = read.get().value().pascals();
        double at = pipe.get().value().kelvins();
        Range range = pressure == Place.SUCTION_PRESSURE ? curve.dewPressureRange() : curve.bubblePressureRange();
        if (!(pascals >= range.low() && pascals <= range.high() && at >= lowT && at <= highT)) {
            return;
        }
        double saturation =
                pressure == Place.SUCTION_PRESSURE ? curve.dewTemperatureK(pascals) : curve.bubbleTemperatureK(pascals);
        double height = y(pascals);
        svg.add(
                Node.svg("path").set("class", "margin").set("d", "M" + x(saturation) + " " + height + " H" + x(at)),
                Node.svg("circle")
                        .set("class", "point")
                        .set("cx", x(at))
                        .set("cy", height)
                        .set("r", 6),
                text(x(at), pressure == Place.SUCTION_PRESSURE ? height + 20 : height - 10, letter, "middle"));
    }

    static Node mark(String path) {
        return Node.svg("path").set("class", "grid").set("d", path);
    }

    static Node text(double x, double y, String text, String anchor) {
        return Node.svg("text")
                .set("x", x)
                .set("y", y)
                .set("text-anchor", anchor)
                .text(text);
    }
}
