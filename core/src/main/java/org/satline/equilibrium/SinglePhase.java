package org.satline.equilibrium;

import java.util.Locale;
import org.satline.equation.FixedComposition;
import org.satline.equation.PureConstants;
import org.satline.equation.PureEquation;
import org.satline.quantity.OutOfValidityException;

/**
 * Range of the one-phase states of one composition, and densities on a side of the two-phase region that is known. Immutable and
 * thread-safe.
 */
final class SinglePhase {
    /** Densities beyond this multiple of the reducing density are no liquid of any equation. */
    private static final double DENSEST = 6;
    /** A value computed at a limit may be asked back. */
    private static final double ROUND_OFF = 1e-9;

    private final String designation;
    private final FixedComposition composition;
    private final Envelope envelope;
    private final double minTemperature;
    private final double maxTemperature;
    private final double maxPressure;

    SinglePhase(String designation, Envelope envelope) {
        this.designation = designation;
        this.envelope = envelope;
        this.composition = envelope.composition;
        PhaseBoundary bubble = envelope.bubble;
        PhaseBoundary dew = envelope.dew;
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
        // saturation is answered to its end, warmer than some equations are stated to hold: so are the states beside it
        maxTemperature = Math.max(high, envelope.warmest().temperatureK());
        maxPressure = Math.max(pressure, envelope.highest().pressurePa());
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

    double checkTemperature(double temperature) {
        if (!(temperature >= minTemperature * (1 - ROUND_OFF) && temperature <= maxTemperature * (1 + ROUND_OFF))) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperature,
                    "K",
                    minTemperature,
                    maxTemperature,
                    whose(),
                    "choose a temperature within the range");
        }
        return temperature;
    }

    double checkPressure(double pressure) {
        if (!(pressure > 0 && pressure <= maxPressure * (1 + ROUND_OFF))) {
            throw OutOfValidityException.of(
                    "pressure", pressure, "Pa", 0, maxPressure, whose(), "choose a pressure above 0 within the range");
        }
        return pressure;
    }

    /** Holds the pressure found at a temperature and density against the equation's limit and the melting line. */
    double checkFound(double temperature, double pressure) {
        checkPressure(pressure);
        MeltingLine.of(composition).ifPresent(line -> line.check(designation, temperature, pressure));
        return pressure;
    }

    private String whose() {
        String fault = "the equation of " + designation
                + (envelope.bubble.beginsAtSplit() || envelope.dew.beginsAtSplit()
                        ? "; colder its liquid would split in two"
                        : "");
        return fault;
    }

    /** Density of a liquid at a pressure above that of a saturated liquid of given density. */
    double compressed(double temperature, double pressure, double saturated) {
        double rho = new DensitySolver(composition).near(temperature, pressure, saturated * 1.0001);
        if (!(rho > saturated * 0.97)) {
            rho = new DensitySolver(composition)
                    .bracketed(temperature, pressure, saturated * 0.99, saturated * DENSEST);
        }
        if (!(rho > 0)) {
            rho = new DensitySolver(composition).stable(temperature, pressure, saturated / 2, saturated * DENSEST);
        }
        return found(rho, temperature, pressure);
    }

    /** Density of a vapour at a pressure below that of a saturated vapour of given density. */
    double expanded(double temperature, double pressure, double saturated) {
        DensitySolver solver = new DensitySolver(composition);
        double ideal = pressure / (composition.gasConstant() * temperature);
        double rho = solver.near(temperature, pressure, Math.min(ideal, saturated));
        if (!(rho > 0 && rho < saturated * 1.03)) {
            rho = solver.bracketed(temperature, pressure, ideal * 0.1, saturated * 1.0001);
        }
        return found(rho, temperature, pressure);
    }

    /** Density where the isotherm does not meet the two-phase region. */
    double supercritical(double temperature, double pressure) {
        DensitySolver solver = new DensitySolver(composition);
        double ideal = pressure / (composition.gasConstant() * temperature);
        double most = composition.reducingDensity() * DENSEST;
        double rho = solver.near(temperature, pressure, Math.min(ideal, composition.reducingDensity() * 2));
        if (!(rho > 0)) {
            rho = solver.bracketed(temperature, pressure, ideal * 0.05, most);
        }
        return found(rho > 0 ? rho : solver.stable(temperature, pressure, ideal * 0.05, most), temperature, pressure);
    }

    private double found(double rho, double temperature, double pressure) {
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
}
