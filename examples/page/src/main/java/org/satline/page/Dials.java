package org.satline.page;

import java.util.Optional;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.SteadyState;

/**
 * The instruments of the simulated unit as a picture: a dial for each port, a thermometer for each line. The dial is that of EN 837-1, a
 * scale over three quarters of a circle with zero at the lower left.
 */
final class Dials {
    private static final double SWEEP = 270;
    private static final double START = -135;
    private static final double RADIUS = 62;
    private static final int PARTS = 5;
    /** Half the width of a digit. */
    private static final double DIGIT = 3.2;

    /** What the ends of the scales must show: saturation at these temperatures, degC; our choice. */
    private static final double LOW_SIDE_MOST = 25;

    private static final double HIGH_SIDE_MOST = 70;
    private static final double COLDEST = -10;
    private static final double HOTTEST = 70;
    private static final double TUBE_TOP = 16;
    private static final double TUBE_BOTTOM = 120;

    private final boolean si;
    private final double lowFull;
    private final double highFull;
    private final Node low = Node.svg("path");
    private final Node high = Node.svg("path");
    private final Node suction = Node.svg("rect");
    private final Node liquid = Node.svg("rect");
    private final Node svg = Node.svg("svg");

    Dials(PageTexts texts, boolean si, SaturationCurve curve) {
        this.si = si;
        lowFull = full(curve.dewPressure(Temperature.ofCelsius(LOW_SIDE_MOST)));
        highFull = full(curve.bubblePressure(Temperature.ofCelsius(HIGH_SIDE_MOST)));
        svg.set("viewBox", "0 0 360 158")
                .set("class", "dials")
                .set("role", "img")
                .set("aria-label", texts.of("picture.dials"));
        dial(65, lowFull, low, texts.of("picture.suction"));
        thermometer(142, suction);
        dial(241, highFull, high, texts.of("picture.liquidPort"));
        thermometer(318, liquid);
    }

    Node node() {
        return svg;
    }

    /** Turns the needles; without a state they lie at zero. */
    void show(Optional<SteadyState> state) {
        turn(low, state.map(each -> shown(each.suctionPressure()) / lowFull).orElse(0.0));
        turn(high, state.map(each -> shown(each.liquidPressure()) / highFull).orElse(0.0));
        fill(suction, state.map(each -> each.suctionLine().celsius()).orElse(COLDEST));
        fill(liquid, state.map(each -> each.liquidLine().celsius()).orElse(COLDEST));
    }

    /** As a gauge at sea level shows it. */
    private double shown(Pressure pressure) {
        double over = pressure.pascals() - Atmosphere.standard().pressure().pascals();
        return si ? over / 1000 : over / Pressure.ofPsia(1).pascals();
    }

    /** The end of a scale of which each part is a round number. */
    private double full(Pressure least) {
        double part = shown(least) / PARTS;
        double size = Math.pow(10, Math.floor(Math.log10(part)));
        for (double round : new double[] {1, 2, 3, 4, 5, 6, 8}) {
            if (round * size >= part) {
                return PARTS * round * size;
            }
        }
        return PARTS * 10 * size;
    }

    private void dial(double x, double full, Node needle, String name) {
        Node dial = Node.svg("g").set("transform", "translate(" + x + " 76)");
        dial.add(Node.svg("circle").set("class", "face").set("r", RADIUS));
        StringBuilder ticks = new StringBuilder();
        for (int i = 0; i <= PARTS * 5; i++) {
            double angle = Math.toRadians(START + SWEEP * i / (PARTS * 5.0));
            double from = i % 5 == 0 ? RADIUS - 10 : RADIUS - 6;
            ticks.append('M').append(at(Math.sin(angle) * from)).append(' ').append(at(-Math.cos(angle) * from));
            ticks.append('L').append(at(Math.sin(angle) * (RADIUS - 2))).append(' ');
            ticks.append(at(-Math.cos(angle) * (RADIUS - 2)));
        }
        dial.add(Node.svg("path").set("class", "ticks").set("d", ticks.toString()));
        for (int i = 0; i <= PARTS; i++) {
            double angle = Math.toRadians(START + SWEEP * i / PARTS);
            String number = String.valueOf(Math.round(full * i / PARTS));
            dial.add(text(
                    Math.sin(angle) * (RADIUS - 12 - DIGIT * number.length()),
                    4 - Math.cos(angle) * (RADIUS - 19),
                    number));
        }
        dial.add(
                text(0, 36, si ? "kPa" : "psig").set("class", "small"),
                needle.set("class", "needle").set("d", "M-3 12 L0 " + (10 - RADIUS) + " L3 12 Z"),
                Node.svg("circle").set("class", "hub").set("r", 5),
                text(0, RADIUS + 17, name).set("class", "named"));
        turn(needle, 0);
        svg.add(dial);
    }

    private static void turn(Node needle, double share) {
        double angle = START + SWEEP * Math.max(-0.02, Math.min(1.03, share));
        needle.set("style", "transform: rotate(" + at(angle) + "deg)");
    }

    private void thermometer(double x, Node column) {
        Node glass = Node.svg("rect")
                .set("class", "face")
                .set("x", x - 5)
                .set("y", TUBE_TOP - 4)
                .set("width", 10)
                .set("height", TUBE_BOTTOM - TUBE_TOP + 8)
                .set("rx", 5);
        svg.add(
                glass,
                Node.svg("circle")
                        .set("class", "bulb")
                        .set("cx", x)
                        .set("cy", TUBE_BOTTOM + 8)
                        .set("r", 9),
                column.set("class", "bulb").set("x", x - 3).set("width", 6));
        for (int step = si ? -10 : 20; step <= (si ? 70 : 150); step += si ? 20 : 40) {
            double celsius = si ? step : Temperature.ofFahrenheit(step).celsius();
            svg.add(
                    Node.svg("path").set("class", "ticks").set("d", "M" + at(x + 6) + " " + at(height(celsius)) + "h4"),
                    text(x + 12, height(celsius) + 4, String.valueOf(step)).set("text-anchor", "start"));
        }
        svg.add(text(x, 150, si ? "\u00b0C" : "\u00b0F").set("class", "small"));
    }

    private static double height(double celsius) {
        double share = (celsius - COLDEST) / (HOTTEST - COLDEST);
        return TUBE_BOTTOM - Math.max(0, Math.min(1, share)) * (TUBE_BOTTOM - TUBE_TOP);
    }

    private static void fill(Node column, double celsius) {
        double top = height(celsius);
        column.set("y", top).set("height", TUBE_BOTTOM - top + 2);
    }

    private static String at(double value) {
        return String.valueOf(Math.round(value * 10) / 10.0);
    }

    private static Node text(double x, double y, String text) {
        return Node.svg("text")
                .set("x", x)
                .set("y", y)
                .set("text-anchor", "middle")
                .text(text);
    }
}
