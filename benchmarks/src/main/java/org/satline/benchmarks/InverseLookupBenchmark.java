package org.satline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.refrigerant.Catalogue;
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
    private static final int NODES = 512;

    /** Refrigerant. */
    @Param({"R-410A", "R-134a", "R-32", "R-407C", "R-744"})
    public String designation = "R-410A";

    private SaturationCurve table = SaturationCurves.of(Catalogue.standard().find(designation));
    private SaturationCurve equation = table;
    private double[] inputs = {};
    private Rivals rivals = rivals(NODES);
    private int next;

    /** Loads table and rivals. */
    public InverseLookupBenchmark() {}

    /** Prepares table, rivals and inputs of the refrigerant. */
    @Setup
    public void prepare() {
        table = SaturationCurves.of(Catalogue.standard().find(designation));
        equation = SaturationCurves.solving(table.refrigerant());
        inputs = Inputs.pressures(table);
        rivals = rivals(NODES);
    }

    private Rivals rivals(int nodes) {
        double[] temperatures = Inputs.nodeTemperatures(table, nodes);
        double[] pressures = Inputs.dewPressures(table, temperatures);
        return new Rivals(pressures, temperatures);
    }

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
        return rivals.spline(input());
    }

    /** {@return from an Akima spline of Commons Math} */
    @Benchmark
    public double commonsMathAkima() {
        return rivals.akima(input());
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
