package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import org.satline.explanation.Figure;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;

/** Draws the cycle of a visit and says in words what was measured and what is assumed. */
final class CycleLines {
    private CycleLines() {}

    /** Returns notes to stand under the picture. */
    static List<String> draw(Chart chart, CycleOutcome outcome, PictureUnits units) {
        if (outcome instanceof CycleOutcome.None none) {
            return List.of(units.text("cycle.none", Figure.of("reason", none.told(units))));
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
            chart.add(Label.bold(number, h, p, i == 1 || i == 2 ? Label.Side.ABOVE : Label.Side.BELOW));
            notes.add(units.text(
                    "cycle.corner",
                    Figure.of("number", number),
                    Figure.of("name", units.text("corner." + corner.place())),
                    Figure.of("pressure", units.pressureText(corner.pressurePa())),
                    Figure.of("temperature", units.temperatureText(corner.temperatureK())),
                    Figure.of("enthalpy", Printed.figure("%.1f %s", h, units.enthalpyUnit())),
                    Figure.of("basis", units.text("basis." + corner.basis()))));
        }
        notes.add(units.text("cycle.assumed"));
        chart.add(
                Series.line(units.text("line.cycle"), path, Pen.HEAVY, Ink.RUST).unnamed());
        chart.add(Series.marks(units.text("mark.read"), measured, Mark.CIRCLE, Ink.RUST));
        if (!assumed.isEmpty()) {
            chart.add(Series.marks(units.text("mark.assumed"), assumed, Mark.OPEN_CIRCLE, Ink.RUST));
        }
        return List.copyOf(notes);
    }
}
