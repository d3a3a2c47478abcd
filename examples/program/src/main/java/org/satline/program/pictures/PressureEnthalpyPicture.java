package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.saturation.SaturationCurve;

/** Pressure against specific enthalpy: the dome, isotherms, and the cycle of a visit where its readings describe one. */
public final class PressureEnthalpyPicture {
    private static final double COLDEST_SHOWN_K = 233.15;
    private static final int STEPS = 160;

    private final SaturationCurve curve;
    private final FluidModel model;
    private final PictureUnits units;
    private final double lowK;
    private final BoundaryEnd end;

    private PressureEnthalpyPicture(SaturationCurve curve, PictureUnits units, double coldestK) {
        this.curve = curve;
        FluidModel plain = FluidModel.of(curve.refrigerant());
        this.model = plain.has(units.usualZero()) ? plain.with(units.usualZero()) : plain;
        this.units = units;
        this.end = model.twoPhaseEnd();
        double wanted = Math.min(Math.min(COLDEST_SHOWN_K, coldestK), 0.8 * end.temperatureK());
        this.lowK = Math.max(model.minTemperatureK() + 1e-6, wanted);
    }

    /**
     * Draws dome and isotherms.
     *
     * @param curve names refrigerant and source
     * @param units units of the picture
     * @return the picture
     */
    public static Picture of(SaturationCurve curve, PictureUnits units) {
        return new PressureEnthalpyPicture(curve, units, COLDEST_SHOWN_K).drawn(Optional.empty());
    }

    /**
     * Draws dome, isotherms and the cycle that the readings of a visit describe; where they describe none, a note says why.
     *
     * @param curve names refrigerant and source
     * @param readings readings on the system
     * @param units units of the picture
     * @return the picture
     */
    public static Picture of(SaturationCurve curve, SystemReadings readings, PictureUnits units) {
        double coldest = readings.pressure(Place.SUCTION_PRESSURE)
                .map(p -> curve.bubbleTemperatureK(p.value().pascals()) - 10)
                .orElse(COLDEST_SHOWN_K);
        PressureEnthalpyPicture picture = new PressureEnthalpyPicture(curve, units, coldest);
        return picture.drawn(Optional.of(CycleOutcome.of(picture.model, readings)));
    }

    private Picture drawn(Optional<CycleOutcome> cycle) {
        double lowPa = model.dewAtTemperature(lowK).pressurePa() * 0.8;
        double highPa = end.pressurePa() * 1.6;
        double left = model.bubbleAtTemperature(lowK).saturated().specificEnthalpy();
        double right = right(cycle);
        double margin = (right - left) * 0.06;
        Chart chart = new Chart(
                units.text(
                        cycle.filter(CycleOutcome.Drawn.class::isInstance).isPresent()
                                ? "enthalpy.titleCycle"
                                : "enthalpy.title",
                        Figure.of("refrigerant", curve.refrigerant().designation())),
                new Axis(
                        units.text("axis.enthalpy", PictureUnits.unit(units.enthalpyUnit())),
                        units.enthalpy(left - margin),
                        units.enthalpy(right + margin),
                        Axis.Scale.EVEN),
                units.pressureAxis(lowPa, highPa));
        new Isotherms(model, units, lowPa, highPa).draw(chart, lowK, left - margin, right + margin);
        if (cycle.isEmpty()) {
            new VapourLines(model, units, lowPa, highPa, right).draw(chart); // beside a cycle they would be a thicket
        }
        dome(chart);
        List<String> notes = new ArrayList<>();
        cycle.ifPresent(found -> notes.addAll(CycleLines.draw(chart, found, units)));
        String description = units.text(
                end.kind() == BoundaryEnd.Kind.CRITICAL_POINT ? "enthalpy.noteMeeting" : "enthalpy.noteEnding",
                Figure.of("end", units.text("end." + PictureUnits.key(end.kind()))),
                Figure.of("pressure", units.pressureText(end.pressurePa())),
                Figure.of("temperature", units.temperatureText(end.temperatureK())));
        List<String> under = new ArrayList<>(List.of(description));
        under.addAll(notes);
        under.add(units.text("enthalpy.zero", Figure.of("zero", units.zeroText(model.referenceState()))));
        return new Picture(chart, String.join(" ", under), Sources.notes(curve, under, units));
    }

    /** The vapour well above the warm end of the dome, and whatever the cycle reaches. */
    private double right(Optional<CycleOutcome> cycle) {
        double dome = domeMaximum();
        double reach = model.dewAtTemperature(lowK).saturated().specificEnthalpy()
                + 0.45 * (dome - model.bubbleAtTemperature(lowK).saturated().specificEnthalpy());
        double corners = cycle.filter(CycleOutcome.Drawn.class::isInstance)
                .map(CycleOutcome.Drawn.class::cast)
                .map(found -> found.corners().stream()
                        .mapToDouble(CycleCorner::specificEnthalpy)
                        .max()
                        .orElse(reach))
                .orElse(reach);
        return Math.max(reach, corners);
    }

    private double domeMaximum() {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 20; i++) {
            double t = lowK + (model.maxTemperatureK() - lowK) * i / 20;
            most = Math.max(
                    most,
                    model.dewAtTemperature(Math.min(t, model.maxTemperatureK()))
                            .saturated()
                            .specificEnthalpy());
        }
        return most;
    }

    private void dome(Chart chart) {
        Points bubble = new Points();
        Points dew = new Points();
        each(model.bubbleTemperatureRange(), t -> add(bubble, model.bubbleAtTemperature(t)));
        each(model.dewTemperatureRange(), t -> add(dew, model.dewAtTemperature(t)));
        chart.add(Series.line(units.text("line.liquid"), bubble, Pen.SOLID, Ink.BLACK));
        chart.add(Series.line(units.text("line.vapour"), dew, Pen.DASHED, Ink.BLUE));
        BoundaryPoint top =
                model.bubbleAtTemperature(model.bubbleTemperatureRange().high());
        chart.add(Series.marks(
                        "end of the dome",
                        Points.of(units.enthalpy(top.saturated().specificEnthalpy()), units.pressure(top.pressurePa())),
                        Mark.CIRCLE,
                        Ink.BLACK)
                .unnamed());
    }

    private void add(Points points, BoundaryPoint point) {
        points.add(units.enthalpy(point.saturated().specificEnthalpy()), units.pressure(point.pressurePa()));
    }

    /** Closer together towards the end, where the dome bends. */
    private void each(Range range, DoubleConsumer at) {
        double low = Math.max(range.low(), lowK);
        for (int i = 0; i <= STEPS; i++) {
            double rest = 1 - (double) i / STEPS;
            at.accept(i == STEPS ? range.high() : range.high() - (range.high() - low) * rest * rest);
        }
    }
}
