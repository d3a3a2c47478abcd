package org.satline.simulation;

import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.refrigerant.Refrigerant;

/**
 * A refrigerant prepared for simulation: bubble line, dew line and superheated vapour, solved once from the equation of state at
 * {@value #NODES} pressures and interpolated with cubic splines in {@code ln p}; along the superheat, Newton's interpolation polynomial
 * through five solved states. From 0.3 to 4.2 MPa, and to 0.85 of the highest pressure, interpolation stays within 0.01 K of the equation,
 * within 0.1 kJ/kg for the bubble liquid and 1 kJ/kg for vapour of up to 40 K of superheat. Immutable, thread-safe; making one costs some
 * tens of milliseconds in a warm JVM, so keep it.
 *
 * <p>Liquid colder than its bubble point is taken as incompressible with the heat capacity of the bubble point.
 */
public final class WorkingFluid {
    private static final int NODES = 33;
    /** Solved superheats as shares of the largest. */
    private static final double[] SHARES = {0, 0.11, 0.31, 0.61, 1};
    /** Largest solved superheat, K, where the equation of the refrigerant reaches that far. */
    private static final double LARGEST_SUPERHEAT = 90;

    /** Coldest evaporation and largest share of the pressure at the end of the two-phase region that a simulated system may reach. */
    private static final double COLDEST_K = 233.15;

    private static final double LARGEST_SHARE = 0.86;

    private final Refrigerant refrigerant;
    private final double[] superheats;
    private final double lowPa;
    private final double highPa;
    private final double logLow;
    private final double logHigh;
    private final PolynomialSplineFunction bubbleTemperature;
    private final PolynomialSplineFunction dewTemperature;
    private final PolynomialSplineFunction liquidEnthalpy;
    private final PolynomialSplineFunction logLiquidDensity;
    private final PolynomialSplineFunction logLiquidDensityOfTemperature;
    private final double coldestLiquidK;
    private final double hottestLiquidK;
    private final PolynomialSplineFunction liquidHeatCapacity;
    private final PolynomialSplineFunction[] vapourEnthalpy;
    private final PolynomialSplineFunction[] vapourEntropy;
    private final PolynomialSplineFunction[] logVapourDensity;

    private WorkingFluid(FluidModel model) {
        refrigerant = model.refrigerant();
        lowPa = model.dewAtTemperature(
                        Math.max(COLDEST_K, model.dewTemperatureRange().low() + 0.5))
                .pressurePa();
        highPa = LARGEST_SHARE
                * Math.min(
                        model.bubblePressureRange().high(),
                        model.dewPressureRange().high());
        double reach = Math.min(
                LARGEST_SUPERHEAT, hottestK(model) - model.dewAtPressure(highPa).temperatureK() - 1);
        superheats = Arrays.stream(SHARES).map(share -> share * reach).toArray();
        double[] logs = new double[NODES];
        double[] tb = new double[NODES];
        double[] td = new double[NODES];
        double[] hl = new double[NODES];
        double[] dl = new double[NODES];
        double[] cl = new double[NODES];
        double[][] h = new double[superheats.length][NODES];
        double[][] s = new double[superheats.length][NODES];
        double[][] d = new double[superheats.length][NODES];
        for (int i = 0; i < NODES; i++) {
            logs[i] = Math.log(lowPa) + i * Math.log(highPa / lowPa) / (NODES - 1);
            double pa = Math.exp(logs[i]);
            BoundaryPoint bubble = model.bubbleAtPressure(pa);
            BoundaryPoint dew = model.dewAtPressure(pa);
            tb[i] = bubble.temperatureK();
            td[i] = dew.temperatureK();
            hl[i] = bubble.saturated().specificEnthalpy();
            dl[i] = Math.log(bubble.saturated().density());
            cl[i] = bubble.saturated().isobaricHeatCapacity();
            for (int j = 0; j < superheats.length; j++) {
                FluidState state = j == 0 ? dew.saturated() : model.stateAt(td[i] + superheats[j], pa);
                h[j][i] = state.specificEnthalpy();
                s[j][i] = state.specificEntropy();
                d[j][i] = Math.log(state.density());
            }
        }
        logLow = logs[0];
        logHigh = logs[NODES - 1];
        bubbleTemperature = spline(logs, tb);
        dewTemperature = spline(logs, td);
        liquidEnthalpy = spline(logs, hl);
        logLiquidDensity = spline(logs, dl);
        logLiquidDensityOfTemperature = spline(tb, dl);
        coldestLiquidK = tb[0];
        hottestLiquidK = tb[NODES - 1];
        liquidHeatCapacity = spline(logs, cl);
        vapourEnthalpy = divided(logs, h);
        vapourEntropy = divided(logs, s);
        logVapourDensity = divided(logs, d);
    }

    private static double hottestK(FluidModel model) {
        return model.equation().mixture().components().stream()
                .mapToDouble(component -> component.constants().maxTemperature())
                .min()
                .orElseThrow();
    }

    /**
     * Prepares a refrigerant.
     *
     * @param refrigerant substance or blend
     * @return the prepared fluid
     * @throws org.satline.equation.MissingEquationException if a component has no equation
     */
    public static WorkingFluid of(Refrigerant refrigerant) {
        return new WorkingFluid(FluidModel.of(Objects.requireNonNull(refrigerant, "refrigerant")));
    }

    /**
     * Returns the refrigerant.
     *
     * @return the refrigerant
     */
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    double lowPa() {
        return lowPa;
    }

    double highPa() {
        return highPa;
    }

    double bubbleK(double pa) {
        return bubbleTemperature.value(log(pa));
    }

    double dewK(double pa) {
        return dewTemperature.value(log(pa));
    }

    double liquidEnthalpy(double pa) {
        return liquidEnthalpy.value(log(pa));
    }

    double liquidDensity(double pa) {
        return Math.exp(logLiquidDensity.value(log(pa)));
    }

    /** Density of liquid at or below its bubble point: that of the bubble point at its temperature. */
    double liquidDensityAt(double temperatureK) {
        return Math.exp(
                logLiquidDensityOfTemperature.value(Math.min(Math.max(temperatureK, coldestLiquidK), hottestLiquidK)));
    }

    double liquidHeatCapacity(double pa) {
        return liquidHeatCapacity.value(log(pa));
    }

    double vapourEnthalpy(double pa, double superheatK) {
        return newton(vapourEnthalpy, log(pa), superheatK);
    }

    double vapourEntropy(double pa, double superheatK) {
        return newton(vapourEntropy, log(pa), superheatK);
    }

    double vapourDensity(double pa, double superheatK) {
        return Math.exp(newton(logVapourDensity, log(pa), superheatK));
    }

    /** Superheat at which the vapour has an enthalpy; 0 for one not above that of the dew point. */
    double superheatOfEnthalpy(double pa, double enthalpy) {
        double heatCapacity = (vapourEnthalpy(pa, 10) - vapourEnthalpy(pa, 0)) / 10;
        return invert(x -> vapourEnthalpy(pa, x) - enthalpy, heatCapacity);
    }

    /** Superheat at which the vapour has an entropy; 0 for one not above that of the dew point. */
    double superheatOfEntropy(double pa, double entropy) {
        double slope = (vapourEntropy(pa, 10) - vapourEntropy(pa, 0)) / 10;
        return invert(x -> vapourEntropy(pa, x) - entropy, slope);
    }

    /** Pressure at which the dew point is a temperature. */
    double dewPressure(double temperatureK) {
        return pressure(dewTemperature, temperatureK);
    }

    /** Pressure at which the bubble point is a temperature. */
    double bubblePressure(double temperatureK) {
        return pressure(bubbleTemperature, temperatureK);
    }

    private double pressure(PolynomialSplineFunction line, double temperatureK) {
        double low = logLow;
        double high = logHigh;
        if (!(temperatureK > line.value(low) && temperatureK < line.value(high))) {
            throw new NoSteadyStateException(String.format(
                    Locale.ROOT,
                    "saturation at %.1f K is outside [%.1f, %.1f] K, the range of the simulation of %s",
                    temperatureK,
                    line.value(low),
                    line.value(high),
                    refrigerant.designation()));
        }
        for (int i = 0; i < 60; i++) { // halving: robust, and off the hot path
            double middle = (low + high) / 2;
            if (line.value(middle) < temperatureK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp((low + high) / 2);
    }

    /** Secant with a good first slope: enthalpy and entropy are nearly straight in superheat. */
    private double invert(DoubleUnaryOperator excess, double slope) {
        double x = 0;
        double at = excess.applyAsDouble(0);
        if (at >= 0) {
            return 0;
        }
        double local = slope;
        for (int i = 0; i < 12; i++) {
            double next = Math.min(Math.max(x - at / local, 0), 1.3 * superheats[superheats.length - 1]);
            double value = excess.applyAsDouble(next);
            if (Math.abs(next - x) < 1e-9) {
                return next;
            }
            double secant = (value - at) / (next - x);
            local = secant > 0 ? secant : slope;
            x = next;
            at = value;
        }
        return x;
    }

    /** Pressures beyond the nodes are answered at the nearest one: the solver never ends there, it only looks. */
    private double log(double pa) {
        return Math.min(Math.max(Math.log(pa), logLow), logHigh);
    }

    private double newton(PolynomialSplineFunction[] divided, double log, double superheat) {
        double sum = 0;
        for (int j = divided.length - 1; j >= 0; j--) {
            sum = sum * (superheat - superheats[j]) + divided[j].value(log);
        }
        return sum;
    }

    private PolynomialSplineFunction[] divided(double[] logs, double[][] values) {
        double[][] table = values.clone();
        PolynomialSplineFunction[] splines = new PolynomialSplineFunction[values.length];
        for (int order = 0; order < values.length; order++) {
            splines[order] = spline(logs, table[0]);
            double[][] next = new double[Math.max(0, table.length - 1)][logs.length];
            for (int j = 0; j < next.length; j++) {
                for (int i = 0; i < logs.length; i++) {
                    next[j][i] = (table[j + 1][i] - table[j][i]) / (superheats[j + order + 1] - superheats[j]);
                }
            }
            table = next;
        }
        return splines;
    }

    private static PolynomialSplineFunction spline(double[] x, double[] y) {
        return new SplineInterpolator().interpolate(x, y);
    }
}
