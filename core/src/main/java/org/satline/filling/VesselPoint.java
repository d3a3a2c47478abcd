package org.satline.filling;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.quantity.Density;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** A temperature at which something happens to a closed vessel, or that it does not happen. Immutable, thread-safe. */
public sealed interface VesselPoint {
    /**
     * It happens at this temperature.
     *
     * @param temperature the temperature
     */
    record At(Temperature temperature) implements VesselPoint {
        /** {@inheritDoc} */
        public At {
            Parts.required("temperature", temperature);
        }
    }

    /**
     * It has happened already at the coldest temperature that can be computed.
     *
     * @param coldest that temperature
     */
    record Always(Temperature coldest) implements VesselPoint {
        /** {@inheritDoc} */
        public Always {
            Parts.required("coldest", coldest);
        }
    }

    /**
     * It does not happen.
     *
     * @param bound what it stays below: the density of the lightest full liquid, or the temperature up to which it was looked for
     */
    record Never(Figure bound) implements VesselPoint {
        /** {@inheritDoc} */
        public Never {
            Parts.required("bound", bound);
        }
    }

    /**
     * Whether it has happened by a temperature.
     *
     * @param temperature the temperature
     * @return true where it happens at it or below
     */
    default boolean isBy(Temperature temperature) {
        return this instanceof Always
                || (this instanceof At at && at.temperature().compareTo(temperature) <= 0);
    }

    /**
     * Where liquid of what is inside fills a closed vessel.
     *
     * @param curve the curve of what is inside
     * @param overall mass over volume, kg/m3
     * @return the temperature; never for contents that are lighter than the liquid where its line ends, which boils away instead
     */
    static VesselPoint liquidFull(SaturationCurve curve, double overall) {
        Parts.required("curve", curve);
        return liquidFull(curve.bubbleTemperatureRange(), curve::bubbleLiquidDensity, overall);
    }

    /**
     * The same by any equation.
     *
     * @param line the temperatures of the bubble line, K
     * @param liquidDensity density of the liquid there, kg/m3, by temperature, K; falling
     * @param overall mass over volume, kg/m3
     * @return the temperature
     */
    static VesselPoint liquidFull(Range line, DoubleUnaryOperator liquidDensity, double overall) {
        Parts.required("line liquidDensity", line, liquidDensity);
        Parts.numbers("overall", overall);
        if (overall >= liquidDensity.applyAsDouble(line.low())) {
            return new Always(Temperature.ofKelvins(line.low()));
        }
        double least = liquidDensity.applyAsDouble(line.high());
        if (overall < least) {
            return new Never(Figure.of("leastDensity", Density.ofKilogramsPerCubicMetre(least)));
        }
        // 1e-7 K: far below what any rule or thermometer tells apart
        return new At(Temperature.ofKelvins(new BrentSolver(1e-7)
                .solve(200, t -> liquidDensity.applyAsDouble(t) - overall, line.low(), line.high())));
    }
}
