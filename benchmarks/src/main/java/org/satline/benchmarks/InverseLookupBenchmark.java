package org.satline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Question: how much does dew temperature at a pressure cost, beside the input alone and other ways to interpolate the same data? */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class InverseLookupBenchmark {
    private final Refrigerant refrigerant = Catalogue.standard().find("R-410A");
    private final SaturationCurve table = SaturationCurves.of(refrigerant);
    private final SaturationCurve equation = SaturationCurves.solving(refrigerant);
    private final double[] inputs = Inputs.pressures(table);
    private final double[] x = Inputs.nodePressures(table);
    private final double[] y = Inputs.nodeTemperatures();
    private final PolynomialSplineFunction spline = new SplineInterpolator().interpolate(x, y);
    private final PolynomialSplineFunction akima = new AkimaSplineInterpolator().interpolate(x, y);
    private final Rivals rivals = new Rivals(x, y);
    private int next;

    /** Loads table and rivals. */
    public InverseLookupBenchmark() {}

    private double input() {
        return inputs[next++ & (Inputs.COUNT - 1)];
    }

    /** {@return the input alone} */
    @Benchmark
    public double baseline() {
        return input();
    }

    /** {@return from the table} */
    @Benchmark
    public double table() {
        return table.dewTemperatureK(input());
    }

    /** {@return from a cubic spline of Commons Math} */
    @Benchmark
    public double commonsMathSpline() {
        return spline.value(input());
    }

    /** {@return from an Akima spline of Commons Math} */
    @Benchmark
    public double commonsMathAkima() {
        return akima.value(input());
    }

    /** {@return from a sorted array, interpolated linearly} */
    @Benchmark
    public double binarySearch() {
        return rivals.binarySearch(input());
    }

    /** {@return from a tree map, interpolated linearly} */
    @Benchmark
    public double treeMap() {
        return rivals.tree(input());
    }

    /** {@return solved from the equation of state} */
    @Benchmark
    public double equation() {
        return equation.dewTemperatureK(input());
    }
}
