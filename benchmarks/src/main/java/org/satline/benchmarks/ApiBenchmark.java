package org.satline.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/**
 * Question: what do the typed methods, the array methods, superheat and subcooling add to the primitive lookup? Nothing allocated is
 * expected.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(3)
public class ApiBenchmark {
    /** Refrigerant. */
    @Param({"R-410A", "R-134a", "R-32", "R-407C", "R-744"})
    public String designation = "R-410A";

    private SaturationCurve table = SaturationCurves.of(Catalogue.standard().find(designation));
    private double[] temperatures = {};
    private double[] pressures = {};
    private final double[] out = new double[Inputs.COUNT];
    private int next;

    /** Loads the table. */
    public ApiBenchmark() {}

    /** Reads the table and prepares inputs. */
    @Setup
    public void prepare() {
        table = SaturationCurves.of(Catalogue.standard().find(designation));
        temperatures = Inputs.temperatures(table);
        pressures = Inputs.pressures(table);
    }

    private int index() {
        return next++ & (Inputs.COUNT - 1);
    }

    /** {@return dew pressure, primitive} */
    @Benchmark
    public double primitiveForward() {
        return table.dewPressurePa(temperatures[index()]);
    }

    /** {@return dew pressure through the quantity types} */
    @Benchmark
    public double typedForward() {
        return table.dewPressure(Temperature.ofKelvins(temperatures[index()])).pascals();
    }

    /** {@return dew temperature through the quantity types} */
    @Benchmark
    public double typedInverse() {
        return table.dewTemperature(Pressure.ofPascals(pressures[index()])).kelvins();
    }

    /** {@return superheat from a pressure and a line temperature} */
    @Benchmark
    public double superheat() {
        int i = index();
        return table.superheat(Pressure.ofPascals(pressures[i]), Temperature.ofKelvins(temperatures[i] + 5))
                .kelvins();
    }

    /** {@return subcooling from a pressure and a line temperature} */
    @Benchmark
    public double subcooling() {
        int i = index();
        return table.subcooling(Pressure.ofPascals(pressures[i]), Temperature.ofKelvins(temperatures[i] - 5))
                .kelvins();
    }

    /** {@return dew temperature, primitive} */
    @Benchmark
    public double primitiveInverse() {
        return table.dewTemperatureK(pressures[index()]);
    }

    /** {@return dew pressures of an array, time for each element} */
    @Benchmark
    @OperationsPerInvocation(Inputs.COUNT)
    public double[] bulkForward() {
        table.values(SaturationProperty.DEW_PRESSURE, temperatures, out);
        return out;
    }

    /** {@return dew temperatures of an array, time for each element} */
    @Benchmark
    @OperationsPerInvocation(Inputs.COUNT)
    public double[] bulkInverse() {
        table.values(SaturationProperty.DEW_TEMPERATURE, pressures, out);
        return out;
    }
}
