package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.ClosedVessel;
import org.satline.cylinder.VesselCondition;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Figure;
import org.satline.filling.VesselPoint;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.visit.VisitReport;
import org.satline.wording.Wording;

/** Pressure and liquid level of a closed cylinder against its temperature. */
public final class CylinderPicture {
    private static final double COLDEST_K = 253.15;
    private static final double WARMEST_K = 353.15;
    /** 131 degF, the temperature of the fill rules (49 CFR 173.301a, 173.304). */
    private static final double RULE_K = 328.15;

    private static final int STEPS = 200;

    private final SaturationCurve curve;
    private final FilledCylinder cylinder;
    private final PictureUnits units;
    private final Wording words;
    private final ClosedVessel vessel;
    private final double lowK;
    private final double highK;

    private CylinderPicture(SaturationCurve curve, FilledCylinder cylinder, PictureUnits units) {
        this.curve = curve;
        this.cylinder = cylinder;
        this.units = units;
        this.words = units.words();
        FluidModel model = FluidModel.of(curve.refrigerant());
        this.vessel = ClosedVessel.of(model, cylinder.volume(), cylinder.contents());
        this.lowK = Math.max(COLDEST_K, model.minTemperatureK() + 1e-6);
        this.highK = WARMEST_K;
    }

    /**
     * Draws a cylinder from -20 to 80 degC, as far as the equation reaches.
     *
     * @param curve names refrigerant and source
     * @param cylinder the cylinder and what is in it
     * @param units units of the picture
     * @return the picture
     * @throws IllegalArgumentException if contents or volume are not above zero, or no condition can be computed
     */
    public static Picture of(SaturationCurve curve, FilledCylinder cylinder, PictureUnits units) {
        return new CylinderPicture(curve, cylinder, units).drawn();
    }

    /**
     * Draws the cylinder of a visit.
     *
     * @param visit what was found about the visit
     * @param units units of the picture
     * @return the picture; nothing if there is no cylinder, or it is empty or not weighed
     */
    public static Optional<Picture> of(VisitReport visit, PictureUnits units) {
        return FilledCylinder.of(visit)
                .flatMap(cylinder -> visit.connected()
                        .flatMap(CheckedCylinder::holds)
                        .map(held -> of(SaturationCurves.of(held), cylinder, units)));
    }

    private Picture drawn() {
        Points pressure = new Points();
        Points level = new Points();
        List<VesselCondition> all = conditions(vessel);
        for (VesselCondition each : all) {
            double t = units.temperature(each.temperature().kelvins());
            pressure.add(t, units.pressure(each.pressure().pascals()));
            each.liquidVolumeFraction().filter(share -> share > 0).ifPresent(share -> level.add(t, 100 * share));
        }
        if (pressure.isEmpty()) {
            throw new IllegalArgumentException(
                    "no state of " + curve.refrigerant().designation() + " at "
                            + Printed.figure("%.1f", vessel.overallDensity())
                            + " kg/m3 can be computed between -20 and 80 degC; check contents and water capacity");
        }
        double top = units.pressure(ceiling(all));
        Chart chart = new Chart(
                units.text(
                        "cylinder.title",
                        Figure.of("refrigerant", curve.refrigerant().designation())),
                new Axis(
                        units.text("axis.wholeCylinder", PictureUnits.unit(units.temperatureUnit())),
                        units.temperature(lowK),
                        units.temperature(highK),
                        Axis.Scale.EVEN),
                new Axis(units.pressureTitle(), 0, top, Axis.Scale.EVEN));
        chart.right(new Axis(units.text("axis.level"), 0, 110, Axis.Scale.EVEN));
        chart.add(Series.line(units.text("line.pressureLeft"), pressure, Pen.SOLID, Ink.BLACK));
        if (!level.isEmpty()) {
            chart.add(Series.line(units.text("line.levelRight"), level, Pen.DASHED, Ink.BLUE)
                    .onTheRight());
        }
        List<String> notes = new ArrayList<>();
        notes.add(units.text(
                "cylinder.rigid", Figure.of("contents", cylinder.contents()), Figure.of("volume", cylinder.volume())));
        cylinder.fillLimit().ifPresent(limit -> limit(chart, limit, notes));
        cylinder.servicePressure().ifPresent(p -> pressureMark(chart, "service", p, notes));
        cylinder.testPressure().ifPresent(p -> pressureMark(chart, "test", p, notes));
        cylinder.now().ifPresent(t -> now(chart, t, notes));
        liquidFull(chart, top, notes);
        upright(
                chart,
                "rule",
                units.temperature(RULE_K),
                top * 0.965,
                top,
                Label.Side.CENTRE,
                "55 \u00b0C / 131 \u00b0F");
        all.stream()
                .filter(each -> each.temperature().kelvins() <= RULE_K
                        && !each.cautions().isEmpty())
                .reduce((first, last) -> last)
                .ifPresent(warmest -> warmest.cautions()
                        .forEach(caution -> notes.add(caution(words.of(caution) + " [" + caution.basis() + "]"))));
        notes.add(caution(units.text("cylinder.rules")));
        return new Picture(chart, String.join(" ", notes), Sources.notes(curve, notes, units));
    }

    private String caution(String text) {
        return units.text("caution", Figure.of("caution", text));
    }

    /**
     * Where the equation reaches: a liquid-full cylinder soon leaves its range of pressure, and close to the critical point none is told.
     */
    private List<VesselCondition> conditions(ClosedVessel vessel) {
        List<VesselCondition> found = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            try {
                found.add(vessel.at(
                        Temperature.ofKelvins(lowK + (highK - lowK) * i / STEPS), cylinder.servicePressure()));
            } catch (IllegalArgumentException | ConvergenceException e) {
                // no point there; warmer ones may be told again
            }
        }
        return found;
    }

    /** High enough for the service pressure and for saturation at the warm end; a liquid-full cylinder runs off the picture. */
    private double ceiling(List<VesselCondition> all) {
        double highest = all.stream()
                .mapToDouble(each -> each.pressure().pascals())
                .max()
                .orElseThrow();
        double warm = Math.min(highK, curve.maxTemperatureK());
        double marked = Math.max(
                cylinder.servicePressure().map(Pressure::pascals).orElse(0.0),
                cylinder.testPressure().map(Pressure::pascals).orElse(0.0));
        double saturated = Math.max(curve.bubblePressurePa(warm), marked);
        return 1.15 * Math.max(marked, Math.min(highest, 1.3 * saturated));
    }

    /** How high the liquid would stand if the cylinder held all that it may. */
    private void limit(Chart chart, Mass limit, List<String> notes) {
        ClosedVessel full = ClosedVessel.of(FluidModel.of(curve.refrigerant()), cylinder.volume(), limit);
        Points level = new Points();
        for (VesselCondition each : conditions(full)) {
            each.liquidVolumeFraction()
                    .filter(share -> share > 0)
                    .ifPresent(share ->
                            level.add(units.temperature(each.temperature().kelvins()), 100 * share));
        }
        if (!level.isEmpty()) {
            chart.add(Series.line(units.text("cylinder.limitLevel"), level, Pen.DOTTED, Ink.BLUE)
                    .onTheRight());
        }
        boolean overfilled = cylinder.contents().kilograms() > limit.kilograms();
        notes.add(units.text(overfilled ? "cylinder.overLimit" : "cylinder.limit", Figure.of("limit", limit)));
    }

    private void pressureMark(Chart chart, String name, Pressure marked, List<String> notes) {
        double p = units.pressure(marked.pascals());
        chart.add(Series.line(
                        name + " pressure",
                        Points.of(units.temperature(lowK), p, units.temperature(highK), p),
                        Pen.DASH_DOT,
                        Ink.GREY)
                .unnamed());
        chart.add(Label.of(units.text("cylinder." + name), units.temperature(lowK + 28), p, Label.Side.ABOVE));
        notes.add(units.text("cylinder." + name + "Reached", Figure.of("where", where(vessel.reaches(marked)))));
    }

    private void now(Chart chart, Temperature now, List<String> notes) {
        VesselCondition condition = vessel.at(now, cylinder.servicePressure());
        double t = units.temperature(now.kelvins());
        double p = units.pressure(condition.pressure().pascals());
        chart.add(Series.marks(units.text("mark.now"), Points.of(t, p), Mark.DIAMOND, Ink.RUST));
        notes.add(units.text(
                "cylinder.now",
                Figure.of("temperature", units.temperatureText(now.kelvins())),
                Figure.of("pressure", units.pressureText(condition.pressure().pascals())),
                Figure.of(
                        "level",
                        condition
                                .liquidVolumeFraction()
                                .map(share -> units.text(
                                        "cylinder.fills", Figure.of("share", Printed.figure("%.0f %%", 100 * share))))
                                .orElseGet(() -> units.text("cylinder.noLevel")))));
    }

    private void liquidFull(Chart chart, double top, List<String> notes) {
        VesselPoint point = vessel.liquidFull();
        notes.add(units.text("cylinder.full", Figure.of("where", where(point))));
        if (point instanceof VesselPoint.At at && at.temperature().kelvins() < highK) {
            upright(
                    chart,
                    "full",
                    units.temperature(at.temperature().kelvins()),
                    top * 0.04,
                    top,
                    Label.Side.LEFT,
                    units.text("cylinder.liquidFull"));
        }
    }

    private void upright(Chart chart, String name, double t, double height, double top, Label.Side side, String words) {
        chart.add(
                Series.line(name, Points.of(t, 0, t, top), Pen.DOTTED, Ink.GREY).unnamed());
        chart.add(Label.of(words, t, height, side));
    }

    private String where(VesselPoint point) {
        if (point instanceof VesselPoint.At at) {
            return units.text(
                    "where.at",
                    Figure.of(
                            "temperature",
                            units.temperatureText(at.temperature().kelvins())));
        }
        if (point instanceof VesselPoint.Always always) {
            return units.text(
                    "where.always",
                    Figure.of(
                            "temperature",
                            units.temperatureText(always.coldest().kelvins())));
        }
        return units.text("where.never", Figure.of("bound", words.of(((VesselPoint.Never) point).bound())));
    }
}
