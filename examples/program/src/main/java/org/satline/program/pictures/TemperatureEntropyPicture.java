package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Mark;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;
import org.satline.saturation.SaturationCurve;

/** Temperature against specific entropy: the dome, isobars, and lines of constant quality. */
public final class TemperatureEntropyPicture {
    private static final double COLDEST_SHOWN_K = 233.15;
    /** Shown above the warm end of the dome, K. */
    private static final double ABOVE_K = 45;

    private static final int STEPS = 160;
    /** Room that the label of an isobar needs at the right, as a share of the width. */
    private static final double LABEL_SHARE = 0.05;

    private static final double[] PRESSURE_STEPS = {1, 2, 5};
    private static final List<Double> QUALITIES = List.of(0.2, 0.4, 0.6, 0.8);

    private final SaturationCurve curve;
    private final FluidModel model;
    private final PictureUnits units;
    private final double lowK;
    private final double highK;

    private TemperatureEntropyPicture(SaturationCurve curve, PictureUnits units) {
        this.curve = curve;
        FluidModel plain = FluidModel.of(curve.refrigerant());
        this.model = plain.has(units.usualZero()) ? plain.with(units.usualZero()) : plain;
        this.units = units;
        double end = model.twoPhaseEnd().temperatureK();
        this.lowK = Math.max(model.minTemperatureK() + 1e-6, Math.min(COLDEST_SHOWN_K, 0.8 * end));
        this.highK = end + ABOVE_K;
    }

    /**
     * Draws dome, isobars and qualities.
     *
     * @param curve names refrigerant and source
     * @param units units of the picture
     * @return the picture
     */
    public static Picture of(SaturationCurve curve, PictureUnits units) {
        return new TemperatureEntropyPicture(curve, units).drawn();
    }

    private Picture drawn() {
        Points bubble = new Points();
        Points dew = new Points();
        each(model.bubbleTemperatureRange()).forEach(t -> add(bubble, model.bubbleAtTemperature(t)));
        each(model.dewTemperatureRange()).forEach(t -> add(dew, model.dewAtTemperature(t)));
        double left = least(bubble);
        double right = most(dew);
        double margin = 0.12 * (right - left);
        Chart chart = new Chart(
                units.text(
                        "entropy.title",
                        Figure.of("refrigerant", curve.refrigerant().designation())),
                new Axis(
                        units.text("axis.entropy", PictureUnits.unit(units.entropyUnit())),
                        left - margin,
                        right + margin,
                        Axis.Scale.EVEN),
                units.temperatureAxis(lowK, highK));
        isobars(chart, right + margin);
        qualities(chart);
        chart.add(Series.line(units.text("line.liquid"), bubble, Pen.SOLID, Ink.BLACK));
        chart.add(Series.line(units.text("line.vapour"), dew, Pen.DASHED, Ink.BLUE));
        BoundaryPoint top =
                model.bubbleAtTemperature(model.bubbleTemperatureRange().high());
        chart.add(Series.marks(
                        "end of the dome",
                        Points.of(
                                units.entropy(top.saturated().specificEntropy()),
                                units.temperature(top.temperatureK())),
                        Mark.CIRCLE,
                        Ink.BLACK)
                .unnamed());
        BoundaryEnd end = model.twoPhaseEnd();
        List<String> notes = List.of(
                units.text(
                        "entropy.note",
                        Figure.of("end", units.text("end." + PictureUnits.key(end.kind()))),
                        Figure.of("temperature", units.temperatureText(end.temperatureK())),
                        Figure.of("pressure", units.pressureText(end.pressurePa())),
                        PictureUnits.unit(units.pressureUnit())),
                units.text("entropy.zero", Figure.of("zero", units.zeroText(model.referenceState()))));
        return new Picture(chart, String.join(" ", notes), Sources.notes(curve, notes, units));
    }

    private void add(Points points, BoundaryPoint point) {
        points.add(units.entropy(point.saturated().specificEntropy()), units.temperature(point.temperatureK()));
    }

    /** Closer together towards the end, where the dome bends. */
    private List<Double> each(Range range) {
        List<Double> found = new ArrayList<>();
        double low = Math.max(range.low(), lowK);
        for (int i = 0; i <= STEPS; i++) {
            double rest = 1 - (double) i / STEPS;
            found.add(i == STEPS ? range.high() : range.high() - (range.high() - low) * rest * rest);
        }
        return found;
    }

    private static double least(Points points) {
        double least = Double.POSITIVE_INFINITY;
        for (double x : points.x()) {
            least = Math.min(least, x);
        }
        return least;
    }

    private static double most(Points points) {
        double most = Double.NEGATIVE_INFINITY;
        for (double x : points.x()) {
            most = Math.max(most, x);
        }
        return most;
    }

    private void isobars(Chart chart, double rightEntropy) {
        double low = units.pressure(Math.max(
                model.dewAtTemperature(lowK).pressurePa(),
                model.dewPressureRange().low()));
        double high = units.pressure(model.twoPhaseEnd().pressurePa());
        Points all = new Points();
        List<Label> labels = new ArrayList<>();
        double labelRoom = LABEL_SHARE * (rightEntropy - chart.x().low());
        for (int exponent = (int) Math.floor(Math.log10(low)); exponent <= Math.log10(high); exponent++) {
            for (double factor : PRESSURE_STEPS) {
                double pressure = factor * Math.pow(10, exponent);
                if (pressure > low && pressure < high) {
                    all.gap();
                    isobar(all, units.pascals(pressure), rightEntropy, labelRoom)
                            .ifPresent(
                                    at -> labels.add(Label.whereFree(Printed.figure("%.0f", pressure), at[0], at[1])));
                }
            }
        }
        chart.add(Series.line(
                        units.text("line.isobars", PictureUnits.unit(units.pressureUnit())), all, Pen.THIN, Ink.GREY)
                .unnamed());
        labels.forEach(chart::add);
    }

    /** From cold to warm; returns where its label goes, shortly before it leaves the picture. */
    private Optional<double[]> isobar(Points all, double pascals, double rightEntropy, double labelRoom) {
        double labelled = rightEntropy - labelRoom;
        double bubble = model.bubbleAtPressure(pascals).temperatureK();
        double dew = model.dewAtPressure(pascals).temperatureK();
        for (double t = lowK; t < bubble; t += (highK - lowK) / STEPS) {
            onePhase(all, t, pascals);
        }
        through(all, pascals);
        double[] last = null;
        double[] before = null;
        for (int i = 1; i <= STEPS; i++) {
            double t = dew + (highK - dew) * i / STEPS;
            Optional<double[]> found = onePhase(all, t, pascals);
            if (found.isPresent()) {
                if (found.get()[0] > labelled) {
                    before = before == null ? last : before;
                }
                last = found.get();
                if (last[0] > rightEntropy) {
                    break;
                }
            }
        }
        return Optional.ofNullable(before == null ? last : before);
    }

    private Optional<double[]> onePhase(Points all, double t, double pascals) {
        try {
            double s = units.entropy(
                    model.states().atTemperatureAndPressure(t, pascals).specificEntropy());
            all.add(s, units.temperature(t));
            return Optional.of(new double[] {s, units.temperature(t)});
        } catch (IllegalArgumentException | ConvergenceException e) {
            all.gap();
            return Optional.empty();
        }
    }

    /** Through both phases, level for one substance and rising for a blend. */
    private void through(Points all, double pascals) {
        for (int i = 0; i <= 10; i++) {
            try {
                PhaseSplit split = model.states().atPressureAndVapourFraction(pascals, i / 10.0);
                all.add(units.entropy(split.specificEntropy()), units.temperature(split.temperatureK()));
            } catch (IllegalArgumentException | ConvergenceException e) {
                all.gap();
            }
        }
    }

    private void qualities(Chart chart) {
        Points all = new Points();
        double top = Math.min(
                model.bubblePressureRange().high(), model.dewPressureRange().high());
        double low = Math.max(
                model.dewAtTemperature(lowK).pressurePa(),
                model.dewPressureRange().low());
        for (double quality : QUALITIES) {
            all.gap();
            for (int i = 0; i < STEPS; i++) {
                double rest = 1 - (double) i / STEPS;
                double p = top * Math.pow(low / top, rest * rest);
                try {
                    PhaseSplit split = model.states().atPressureAndVapourFraction(p, quality);
                    all.add(units.entropy(split.specificEntropy()), units.temperature(split.temperatureK()));
                } catch (IllegalArgumentException | ConvergenceException e) {
                    all.gap();
                }
            }
        }
        if (!all.isEmpty()) {
            chart.add(Series.line(units.text("line.quality"), all, Pen.THIN_DOTTED, Ink.GREY));
        }
    }
}
