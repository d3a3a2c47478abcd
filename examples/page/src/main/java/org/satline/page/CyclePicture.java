package org.satline.page;

import java.util.List;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.program.pictures.CycleCorner;
import org.satline.program.pictures.CycleOutcome;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.VisitReport;
import org.satline.wording.Wording;

/** Pressure against specific enthalpy: the saturation lines and the cycle that the readings describe, each corner numbered. */
final class CyclePicture {
    private static final double LEFT = 46;
    private static final double RIGHT = 330;
    private static final double TOP = 14;
    private static final double BOTTOM = 250;
    private static final int PIECES = 80;
    private static final List<String> CORNERS = List.of("suction", "discharge", "liquid", "expanded");

    private final Page page;
    private final VisitReport report;
    private final Node part = Node.of("div").set("id", "cycle");
    private final Node svg = Node.svg("svg");
    private final SaturationCurve curve;
    private double lowH;
    private double highH;
    private double lowLog;
    private double highLog;

    CyclePicture(Page page, VisitReport report) {
        this.page = page;
        this.report = report;
        curve = SaturationCurves.of(report.visit().system().refrigerant());
    }

    /** The corners are solved from the equation of state, which takes a moment: the picture comes after the rest. */
    Node node() {
        part.add(
                Node.of("h3").text(page.text("cycle.heading")),
                Node.of("p").set("role", "status").text(page.text("cycle.drawing")));
        Browser.later(this::draw, 30);
        return part;
    }

    private void draw() {
        double start = Browser.stopwatch();
        part.cleared().add(Node.of("h3").text(page.text("cycle.heading")));
        SystemReadings readings = report.visit().readings();
        FluidModel plain = FluidModel.of(curve.refrigerant());
        FluidModel model = plain.has(curve.referenceState()) ? plain.with(curve.referenceState()) : plain;
        CycleOutcome outcome = CycleOutcome.of(model, readings);
        if (!(outcome instanceof CycleOutcome.Drawn drawn)) {
            part.add(Node.of("p").text(page.text("cycle.none")));
            return;
        }
        frame(readings, drawn.corners());
        svg.set("viewBox", "0 0 345 290")
                .set("class", "chart")
                .set("role", "img")
                .set("aria-label", page.text("picture.cycle"));
        axes();
        line("bubble", curve.bubbleTemperatureRange(), true);
        line("dew", curve.dewTemperatureRange(), false);
        cycle(drawn.corners());
        part.add(svg, Node.of("p").text(page.text("cycle.key")), corners(drawn.corners()));
        part.add(Node.of("p").text(page.text("cycle.assumed")));
        Browser.note("cycle", Browser.stopwatch() - start);
    }

    private void frame(SystemReadings readings, List<CycleCorner> corners) {
        double low =
                readings.pressure(Place.SUCTION_PRESSURE).orElseThrow().value().pascals();
        double coldest = Math.max(curve.bubbleTemperatureRange().low(), curve.bubbleTemperatureK(low) - 25);
        double hottest = corners.stream()
                .mapToDouble(CycleCorner::specificEnthalpy)
                .max()
                .orElseThrow();
        double left = curve.bubbleLiquidEnthalpy(coldest);
        double margin = 0.06 * (hottest - left);
        lowH = left - margin;
        highH = hottest + margin;
        lowLog = Math.log(curve.bubblePressurePa(coldest));
        highLog = Math.log(1.15 * curve.bubblePressureRange().high());
    }

    private double x(double enthalpy) {
        return LEFT + (enthalpy - lowH) / (highH - lowH) * (RIGHT - LEFT);
    }

    private double y(double pascals) {
        return BOTTOM - (Math.log(pascals) - lowLog) / (highLog - lowLog) * (BOTTOM - TOP);
    }

    private void axes() {
        boolean si = page.look().isSi();
        svg.add(Node.svg("path").set("class", "axis").set("d", "M46 14 V250 H330"));
        double perUnit = si ? 1000 : SpecificEnthalpy.ofBtuPerPound(1).joulesPerKilogram();
        int step = si ? 50 : 20;
        for (long each = (long) Math.ceil(lowH / perUnit / step) * step; each * perUnit < highH; each += step) {
            double at = x(each * perUnit);
            svg.add(
                    ChartScreen.mark("M" + at + " 250 v-236"),
                    ChartScreen.text(at, 266, String.valueOf(each), "middle"));
        }
        for (int each : new int[] {10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000}) {
            double pascals = si ? each * 1000.0 : Pressure.ofPsia(each).pascals();
            if (Math.log(pascals) >= lowLog && Math.log(pascals) <= highLog) {
                svg.add(
                        ChartScreen.mark("M46 " + y(pascals) + " h284"),
                        ChartScreen.text(42, y(pascals) + 4, String.valueOf(each), "end"));
            }
        }
        svg.add(
                ChartScreen.text(188, 284, si ? "kJ/kg" : "Btu/lb", "middle"),
                ChartScreen.text(50, 26, si ? "kPa" : "psia", "start"));
    }

    /** Closer together towards the warm end, where the line bends. */
    private void line(String style, Range range, boolean liquid) {
        StringBuilder path = new StringBuilder();
        double low = Math.max(range.low(), curve.bubbleTemperatureK(Math.exp(lowLog)));
        for (int i = 0; i <= PIECES; i++) {
            double rest = 1 - (double) i / PIECES;
            double kelvins = range.high() - (range.high() - low) * rest * rest;
            double enthalpy = liquid ? curve.bubbleLiquidEnthalpy(kelvins) : curve.dewVapourEnthalpy(kelvins);
            double pascals = liquid ? curve.bubblePressurePa(kelvins) : curve.dewPressurePa(kelvins);
            if (Math.log(pascals) >= lowLog) {
                path.append(path.length() == 0 ? 'M' : 'L')
                        .append(x(enthalpy))
                        .append(' ')
                        .append(y(pascals));
            }
        }
        svg.add(Node.svg("path").set("class", "line " + style).set("d", path.toString()));
    }

    private void cycle(List<CycleCorner> corners) {
        StringBuilder path = new StringBuilder();
        for (CycleCorner corner : corners) {
            path.append(path.length() == 0 ? 'M' : 'L')
                    .append(x(corner.specificEnthalpy()))
                    .append(' ')
                    .append(y(corner.pressurePa()));
        }
        svg.add(Node.svg("path").set("class", "cycle").set("d", path.append('Z').toString()));
        for (int i = 0; i < corners.size(); i++) {
            CycleCorner corner = corners.get(i);
            boolean above = i == 1 || i == 2;
            double height = y(corner.pressurePa());
            svg.add(
                    Node.svg("circle")
                            .set("class", corner.measured() ? "point" : "point assumed")
                            .set("cx", x(corner.specificEnthalpy()))
                            .set("cy", height)
                            .set("r", 6),
                    ChartScreen.text(
                            x(corner.specificEnthalpy()),
                            above ? height - 10 : height + 20,
                            String.valueOf(i + 1),
                            "middle"));
        }
    }

    /** Each corner with what it was solved from. */
    private Node corners(List<CycleCorner> corners) {
        Wording wording = page.texts().wording();
        Node all = Node.of("div");
        for (int i = 0; i < corners.size(); i++) {
            CycleCorner corner = corners.get(i);
            String enthalpy = wording.numbers().print(SpecificEnthalpy.ofJoulesPerKilogram(corner.specificEnthalpy()));
            Facts facts = new Facts()
                    .add(page.text("cycle.pressure"), wording.numbers().print(Pressure.ofPascals(corner.pressurePa())))
                    .add(
                            page.text("cycle.temperature"),
                            wording.numbers().print(Temperature.ofKelvins(corner.temperatureK())))
                    .add(page.text("cycle.state"), page.text(corner.measured() ? "cycle.read" : "cycle.supposed"))
                    .add(wording.message("page.source"), curve.source());
            all.add(Node.of("details", "derivation")
                    .add(
                            Node.of("summary")
                                    .add(
                                            Node.of("span")
                                                    .text((i + 1) + " " + page.text("cycle." + CORNERS.get(i)) + " "),
                                            Node.of("b").text(enthalpy)),
                            facts.node()));
        }
        return all;
    }
}
