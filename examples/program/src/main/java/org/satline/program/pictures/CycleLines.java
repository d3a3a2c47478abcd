package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.satline.program.page.Printed;

/** Draws the cycle of a visit and says in words what was measured and what is assumed. */
final class CycleLines {
    private CycleLines() {}

    /** Returns notes to stand under the picture. */
    static List<String> draw(XYChart chart, CycleOutcome outcome, PictureUnits units) {
        if (outcome instanceof CycleOutcome.None none) {
            return List.of("No cycle is drawn: " + none.reason() + ".");
        }
        List<CycleCorner> corners = ((CycleOutcome.Drawn) outcome).corners();
        Points path = new Points();
        Points measured = new Points();
        Points assumed = new Points();
        List<String> notes = new ArrayList<>();
        for (int i = 0; i <= corners.size(); i++) {
            CycleCorner corner = corners.get(i % corners.size());
            path.add(units.enthalpy(corner.specificEnthalpy()), units.pressure(corner.pressurePa()));
        }
        for (int i = 0; i < corners.size(); i++) {
            CycleCorner corner = corners.get(i);
            double h = units.enthalpy(corner.specificEnthalpy());
            double p = units.pressure(corner.pressurePa());
            (corner.measured() ? measured : assumed).add(h, p);
            String number = String.valueOf(i + 1);
            chart.addAnnotation(Label.bold(number, h, p, i == 1 || i == 2 ? Label.Side.ABOVE : Label.Side.BELOW));
            notes.add(Printed.figure(
                    "%s %s: %s, %.1f %s, %.1f %s (%s).",
                    number,
                    corner.name(),
                    units.pressureText(corner.pressurePa()),
                    units.temperature(corner.temperatureK()),
                    units.temperatureUnit(),
                    h,
                    units.enthalpyUnit(),
                    corner.basis()));
        }
        notes.add(CycleOutcome.ASSUMPTIONS + ".");
        Look.line(chart, "cycle", path, Look.Line.HEAVY, Look.RUST).setShowInLegend(false);
        Look.marks(chart, "read", measured, SeriesMarkers.CIRCLE, Look.RUST);
        if (!assumed.isEmpty()) {
            Look.marks(chart, "assumed", assumed, OpenCircle.MARKER, Look.RUST);
        }
        return List.copyOf(notes);
    }
}
