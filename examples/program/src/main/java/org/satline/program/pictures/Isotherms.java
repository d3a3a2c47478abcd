package org.satline.program.pictures;

import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Label;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;

/** Lines of constant temperature in a picture of pressure against enthalpy. */
final class Isotherms {
    private static final double STEP_SI = 20;
    private static final double STEP_US = 40;
    /** A dome that spans more than this, K, gets its isotherms farther apart. */
    private static final double WIDE_K = 250;

    private static final int STEPS = 240;
    private static final int INSIDE = 12;
    /** Room that a label needs, as a share of the width. */
    private static final double LABEL_SHARE = 0.06;

    private final FluidModel model;
    private final PictureUnits units;
    private final double lowPa;
    private final double highPa;

    Isotherms(FluidModel model, PictureUnits units, double lowPa, double highPa) {
        this.model = model;
        this.units = units;
        this.lowPa = lowPa;
        this.highPa = highPa;
    }

    /** All of them in one series, as far as the equation reaches, every other one labelled at its lower end. */
    void draw(Chart chart, double fromK, double leftEnthalpy, double rightEnthalpy) {
        double narrow = units.isSi() ? STEP_SI : STEP_US;
        double step = model.maxTemperatureK() - fromK > WIDE_K ? 2.5 * narrow : narrow;
        Points all = new Points();
        double labelPa = lowPa * Math.pow(highPa / lowPa, 0.05);
        double apart = LABEL_SHARE * (rightEnthalpy - leftEnthalpy);
        double last = leftEnthalpy - 2 * apart;
        for (double t = Math.ceil(units.temperature(fromK) / step) * step; ; t += step) {
            double kelvins = units.kelvins(t);
            double atFoot = foot(kelvins, labelPa);
            if (!(atFoot < rightEnthalpy)) {
                break;
            }
            all.gap();
            isotherm(all, kelvins);
            if (Math.round(t / step) % 2 == 0 && atFoot > last + apart && atFoot < rightEnthalpy - apart / 2) {
                chart.add(Label.of(
                        String.valueOf(Math.round(t)),
                        units.enthalpy(atFoot),
                        units.pressure(labelPa),
                        Label.Side.CENTRE));
                if (last < leftEnthalpy) {
                    chart.add(Label.of(
                            units.text("line.isotherms", PictureUnits.unit(units.temperatureUnit())) + ":",
                            units.enthalpy(atFoot - apart / 2),
                            units.pressure(labelPa),
                            Label.Side.LEFT));
                }
                last = atFoot;
            }
        }
        chart.add(Series.line(
                        units.text("line.isotherms", PictureUnits.unit(units.temperatureUnit())),
                        all,
                        Pen.THIN,
                        Ink.GREY)
                .unnamed());
    }

    /** Infinite where the equation ends, so that no warmer line is tried. */
    private double foot(double kelvins, double pressurePa) {
        try {
            return model.stateAt(kelvins, pressurePa).specificEnthalpy();
        } catch (IllegalArgumentException | ConvergenceException e) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private void isotherm(Points points, double kelvins) {
        if (kelvins < model.maxTemperatureK()) {
            BoundaryPoint bubble = model.bubbleAtTemperature(kelvins);
            BoundaryPoint dew = model.dewAtTemperature(kelvins);
            onePhase(points, kelvins, highPa, bubble.pressurePa(), 0, STEPS - 1);
            inside(points, kelvins, bubble, dew);
            onePhase(points, kelvins, dew.pressurePa(), lowPa, 1, STEPS);
        } else {
            onePhase(points, kelvins, highPa, lowPa, 0, STEPS);
        }
    }

    /** From the higher pressure down, without the saturated end; a state that the equation refuses lifts the pen. */
    private void onePhase(Points points, double kelvins, double fromPa, double toPa, int first, int last) {
        for (int i = first; i <= last; i++) {
            double p = fromPa * Math.pow(toPa / fromPa, (double) i / STEPS);
            try {
                points.add(units.enthalpy(model.stateAt(kelvins, p).specificEnthalpy()), units.pressure(p));
            } catch (IllegalArgumentException | ConvergenceException e) {
                points.gap();
            }
        }
    }

    /** Through both phases, which at one temperature is level only for a pure substance. */
    private void inside(Points points, double kelvins, BoundaryPoint bubble, BoundaryPoint dew) {
        points.add(units.enthalpy(bubble.saturated().specificEnthalpy()), units.pressure(bubble.pressurePa()));
        if (bubble.pressurePa() != dew.pressurePa()) {
            double liquid = 1 / bubble.saturated().density();
            double vapour = 1 / dew.saturated().density();
            for (int i = 1; i < INSIDE; i++) {
                double volume = liquid + (vapour - liquid) * i / INSIDE;
                try {
                    PhaseSplit split = model.states().atTemperatureAndDensity(kelvins, 1 / volume);
                    points.add(units.enthalpy(split.specificEnthalpy()), units.pressure(split.pressurePa()));
                } catch (IllegalArgumentException | ConvergenceException e) {
                    points.gap();
                }
            }
        }
        points.add(units.enthalpy(dew.saturated().specificEnthalpy()), units.pressure(dew.pressurePa()));
    }
}
