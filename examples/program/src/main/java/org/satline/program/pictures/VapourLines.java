package org.satline.program.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.page.Printed;

/** Lines of constant entropy, density and quality in a picture of pressure against enthalpy. */
final class VapourLines {
    private static final int STEPS = 90;
    private static final List<Double> QUALITIES = List.of(0.2, 0.4, 0.6, 0.8);
    /** Steps of density, each decade, kg/m3 or lb/ft3. */
    private static final double[] DENSITY_STEPS = {1, 2, 5};

    private final FluidModel model;
    private final PictureUnits units;
    private final double lowPa;
    private final double highPa;
    private final double rightEnthalpy;

    VapourLines(FluidModel model, PictureUnits units, double lowPa, double highPa, double rightEnthalpy) {
        this.model = model;
        this.units = units;
        this.lowPa = lowPa;
        this.highPa = highPa;
        this.rightEnthalpy = rightEnthalpy;
    }

    void draw(Chart chart) {
        qualities(chart);
        isentropes(chart);
        isochores(chart);
    }

    private double pressure(int step) {
        return lowPa * Math.pow(highPa / lowPa, (double) step / STEPS);
    }

    private void qualities(Chart chart) {
        Points all = new Points();
        double top = Math.min(
                model.bubblePressureRange().high(), model.dewPressureRange().high());
        for (double quality : QUALITIES) {
            all.gap();
            for (int i = 0; i < STEPS; i++) {
                // closer together towards the top, where the lines bend
                double rest = 1 - (double) i / STEPS;
                double p = top * Math.pow(lowPa / top, rest * rest);
                add(all, p, each -> model.states().atPressureAndVapourFraction(each, quality), split -> true);
            }
        }
        if (!all.isEmpty()) {
            chart.add(Series.line(units.text("line.quality"), all, Pen.THIN_DOTTED, Ink.GREY));
        }
    }

    private void isentropes(Chart chart) {
        double from = model.dewAtPressure(
                        Math.sqrt(lowPa * model.dewPressureRange().high()))
                .saturated()
                .specificEntropy();
        double to = entropyAtRight();
        if (!(to > from)) {
            return;
        }
        double step = Rounded.step(units.entropy(to - from) / 5);
        Points all = new Points();
        List<Label> labels = new ArrayList<>();
        for (double s = Math.ceil(units.entropy(from) / step) * step; s < units.entropy(to); s += step) {
            double entropy = units.joulesPerKilogramKelvin(s);
            all.gap();
            Points line = new Points();
            for (int i = 0; i <= STEPS; i++) {
                add(
                        line,
                        pressure(i),
                        each -> model.states().atPressureAndEntropy(each, entropy),
                        split -> split.vapourFraction() >= 1);
            }
            append(all, line);
            label(line, 0.78, Rounded.text(s, step)).ifPresent(labels::add);
        }
        finish(chart, units.text("line.entropy", PictureUnits.unit(units.entropyUnit())), all, Pen.THIN_DASHED, labels);
    }

    private double entropyAtRight() {
        try {
            return model.states().atPressureAndEnthalpy(lowPa, rightEnthalpy).specificEntropy();
        } catch (IllegalArgumentException | ConvergenceException e) {
            return Double.NaN; // the equation ends before the picture does
        }
    }

    private void isochores(Chart chart) {
        double least = units.density(
                model.dewAtPressure(Math.max(lowPa, model.dewPressureRange().low()))
                        .saturated()
                        .density());
        double most =
                units.density(model.dewAtPressure(0.8 * model.dewPressureRange().high())
                        .saturated()
                        .density());
        Points all = new Points();
        List<Label> labels = new ArrayList<>();
        for (int exponent = (int) Math.floor(Math.log10(least)); exponent <= Math.log10(most); exponent++) {
            for (double factor : DENSITY_STEPS) {
                double density = factor * Math.pow(10, exponent);
                if (density > least && density < most) {
                    Points line = isochore(units.kilogramsPerCubicMetre(density));
                    all.gap();
                    append(all, line);
                    label(line, 0.93, Rounded.text(density, density)).ifPresent(labels::add);
                }
            }
        }
        finish(
                chart,
                units.text("line.density", PictureUnits.unit(units.densityUnit())),
                all,
                Pen.THIN_DASH_DOT,
                labels);
    }

    private Points isochore(double density) {
        Points line = new Points();
        double warmest = model.twoPhaseEnd().temperatureK() * 1.6;
        for (int i = 0; i <= 2 * STEPS; i++) {
            double t = model.minTemperatureK() + (warmest - model.minTemperatureK()) * i / (2 * STEPS);
            try {
                PhaseSplit split = model.states().atTemperatureAndDensity(t, density);
                if (split.vapourFraction() >= 1
                        && split.specificEnthalpy() < rightEnthalpy
                        && split.pressurePa() < highPa) {
                    line.add(units.enthalpy(split.specificEnthalpy()), units.pressure(split.pressurePa()));
                }
            } catch (IllegalArgumentException | ConvergenceException e) {
                line.gap();
            }
        }
        return line;
    }

    private static void finish(Chart chart, String name, Points all, Pen pen, List<Label> labels) {
        if (!all.isEmpty()) {
            chart.add(Series.line(name, all, pen, Ink.GREY));
            labels.forEach(chart::add);
        }
    }

    /** A label on the line, at a share of its points. */
    private static Optional<Label> label(Points line, double share, String words) {
        double[] x = line.x();
        if (x.length < 12) {
            return Optional.empty();
        }
        int at = (int) (share * (x.length - 1));
        return Optional.of(Label.whereFree(words, x[at], line.y()[at]));
    }

    private static void append(Points all, Points line) {
        double[] x = line.x();
        double[] y = line.y();
        for (int i = 0; i < x.length; i++) {
            if (Double.isNaN(y[i])) {
                all.gap();
            } else {
                all.add(x[i], y[i]);
            }
        }
    }

    /** A state that the equation refuses, another line, or one beyond the picture lifts the pen. */
    private void add(Points points, double pressurePa, DoubleFunction<PhaseSplit> state, Predicate<PhaseSplit> wanted) {
        try {
            PhaseSplit split = state.apply(pressurePa);
            if (wanted.test(split) && split.specificEnthalpy() < rightEnthalpy) {
                points.add(units.enthalpy(split.specificEnthalpy()), units.pressure(pressurePa));
                return;
            }
        } catch (IllegalArgumentException | ConvergenceException e) {
            // drawn as a gap
        }
        points.gap();
    }

    /** Steps and figures that people write. */
    private static final class Rounded {
        static double step(double raw) {
            double decade = Math.pow(10, Math.floor(Math.log10(raw)));
            double share = raw / decade;
            return decade * (share < 1.5 ? 1 : share < 3.5 ? 2 : share < 7.5 ? 5 : 10);
        }

        static String text(double value, double step) {
            int decimals = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
            return Printed.figure("%." + decimals + "f", value);
        }
    }
}
