package org.satline.equilibrium;

import java.util.Locale;
import org.satline.equation.FixedComposition;
import org.satline.equation.PureConstants;
import org.satline.equation.PureEquation;
import org.satline.quantity.OutOfValidityException;

/** Density of the stable one-phase state at a temperature and pressure. Immutable and thread-safe. */
final class SinglePhase {
    /** Traced lines are read to better than this, so farther from them no equilibrium needs to be solved to know the side. */
    private static final double SURELY = 0.02;

    private final String designation;
    private final FixedComposition composition;
    private final PhaseBoundary bubble;
    private final PhaseBoundary dew;
    private final double minTemperature;
    private final double maxTemperature;
    private final double maxPressure;

    SinglePhase(String designation, FixedComposition composition, PhaseBoundary bubble, PhaseBoundary dew) {
        this.designation = designation;
        this.composition = composition;
        this.bubble = bubble;
        this.dew = dew;
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double pressure = Double.POSITIVE_INFINITY;
        for (PureEquation component : composition.mixture().components()) {
            PureConstants c = component.constants();
            low = Math.max(low, c.saturationStart());
            high = Math.min(high, c.maxTemperature());
            pressure = Math.min(pressure, c.maxPressure());
        }
        // colder than both lines nothing tells which phases are present
        minTemperature = Math.max(low, Math.max(bubble.minTemperature(), dew.minTemperature()));
        // the equation of R-236ea is stated up to a temperature just below its critical point
        maxTemperature = Math.max(high, Math.min(bubble.maxTemperature(), dew.maxTemperature()));
        maxPressure = Math.max(pressure, Math.max(bubble.maxPressure(), dew.maxPressure()));
    }

    double minTemperature() {
        return minTemperature;
    }

    double maxTemperature() {
        return maxTemperature;
    }

    double maxPressure() {
        return maxPressure;
    }

    double molarDensity(double temperature, double pressure) {
        if (!(temperature >= minTemperature && temperature <= maxTemperature)) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperature,
                    "K",
                    minTemperature,
                    maxTemperature,
                    whose(),
                    "choose a temperature within the range");
        }
        if (!(pressure > 0 && pressure <= maxPressure)) {
            throw OutOfValidityException.of(
                    "pressure", pressure, "Pa", 0, maxPressure, whose(), "choose a pressure above 0 within the range");
        }
        double rho = solve(temperature, pressure);
        if (!(rho > 0)) {
            throw new ConvergenceException(String.format(
                    Locale.ROOT,
                    "density of %s at %s K and %s Pa: no convergence",
                    designation,
                    temperature,
                    pressure));
        }
        return rho;
    }

    private String whose() {
        return "the equation of " + designation
                + (bubble.beginsAtSplit() || dew.beginsAtSplit() ? "; colder its liquid would split in two" : "");
    }

    private double solve(double temperature, double pressure) {
        if (temperature <= dew.maxTemperature() && temperature <= bubble.maxTemperature()) {
            return belowTheEnd(temperature, pressure);
        }
        if (temperature < Math.max(dew.end().temperatureK(), bubble.end().temperatureK())) {
            return besideTheEnd(temperature, pressure);
        }
        return supercritical(temperature, pressure);
    }

    private double belowTheEnd(double temperature, double pressure) {
        PhaseBoundary.Estimate liquid = bubble.estimate(temperature);
        PhaseBoundary.Estimate vapour = dew == bubble ? liquid : dew.estimate(temperature);
        double vapourDensity = dew == bubble ? vapour.incipientDensity() : vapour.feedDensity();
        if (pressure > liquid.pressure() * (1 + SURELY)) {
            return compressed(temperature, pressure, liquid.feedDensity());
        }
        if (pressure < vapour.pressure() * (1 - SURELY)) {
            return expanded(temperature, pressure, vapourDensity);
        }
        IncipientPhase bubblePoint = bubble.atTemperature(temperature);
        IncipientPhase dewPoint = dew == bubble ? bubblePoint : dew.atTemperature(temperature);
        if (pressure > bubblePoint.pressure()) {
            return compressed(temperature, pressure, bubblePoint.feedDensity());
        }
        if (pressure < dewPoint.pressure()) {
            double saturated = dew == bubble ? dewPoint.incipientDensity() : dewPoint.feedDensity();
            return expanded(temperature, pressure, saturated);
        }
        throw new TwoPhaseStateException(
                designation, temperature, pressure, dewPoint.pressure(), bubblePoint.pressure());
    }

    /** Between the ends of the two lines the vapour side is known below the dew pressure and the dense side above both ends. */
    private double besideTheEnd(double temperature, double pressure) {
        if (temperature <= dew.maxTemperature()) {
            IncipientPhase point = dew.atTemperature(temperature);
            if (pressure < point.pressure()) {
                double saturated = dew == bubble ? point.incipientDensity() : point.feedDensity();
                return expanded(temperature, pressure, saturated);
            }
        }
        double top = Math.max(dew.end().pressurePa(), bubble.end().pressurePa());
        if (pressure > top * (1 + SURELY)) {
            return supercritical(temperature, pressure);
        }
        if (pressure < Math.min(dew.end().pressurePa(), bubble.end().pressurePa()) * (1 - SURELY)) {
            return supercritical(temperature, pressure);
        }
        throw OutOfValidityException.of(
                "temperature",
                temperature,
                "K",
                minTemperature,
                Math.min(bubble.maxTemperature(), dew.maxTemperature()),
                "the two-phase line of " + designation + " near its end",
                "choose a state farther from the critical point");
    }

    /** Liquid denser than saturated liquid. */
    private double compressed(double temperature, double pressure, double saturated) {
        double rho = new DensitySolver(composition).near(temperature, pressure, saturated * 1.0001);
        if (rho > saturated * 0.97) {
            return rho;
        }
        return new DensitySolver(composition).bracketed(temperature, pressure, saturated * 0.99, saturated * 6);
    }

    private double expanded(double temperature, double pressure, double saturated) {
        DensitySolver solver = new DensitySolver(composition);
        double ideal = pressure / (composition.gasConstant() * temperature);
        double rho = solver.near(temperature, pressure, Math.min(ideal, saturated));
        if (rho > 0 && rho < saturated * 1.03) {
            return rho;
        }
        return solver.bracketed(temperature, pressure, ideal * 0.1, saturated * 1.0001);
    }

    private double supercritical(double temperature, double pressure) {
        DensitySolver solver = new DensitySolver(composition);
        double ideal = pressure / (composition.gasConstant() * temperature);
        double most = composition.reducingDensity() * 6;
        double rho = solver.near(temperature, pressure, Math.min(ideal, composition.reducingDensity() * 2));
        return rho > 0 ? rho : solver.bracketed(temperature, pressure, ideal * 0.05, most);
    }
}
